/**
 * What the decisions have in common: a mould, a design (mould, recipe, press, drying, bath) and the piece made of it.
 *
 * <p>The decisions themselves: {@link org.fizzhull.decide.compare.Comparison} (which of several moulds, recipes and baths),
 * {@link org.fizzhull.decide.advise.Adviser} (the smallest change that makes a piece float) and
 * {@link org.fizzhull.decide.why.Diagnoser} (why a batch went wrong). Everything rests on the critical weight of a draw, the
 * heaviest piece that floats to the end ({@link org.fizzhull.forecast.result.CriticalWeights}). Values are SI; pieces are shares
 * of 1; answers hold no word that a program must parse. Left out: words and pictures (the command line has them), and what no
 * forecast computes: looks, feel, sales, skin, children, labelling law.
 */
@NullMarked
package org.fizzhull.decide;

import org.jspecify.annotations.NullMarked;
