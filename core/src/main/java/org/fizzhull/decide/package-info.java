/**
 * Decisions on top of the forecast: which of several moulds, recipes and baths to take; the smallest change that makes a
 * piece float; and why a batch went wrong.
 *
 * <p>Enter at {@link org.fizzhull.decide.Comparison#of}, {@link org.fizzhull.decide.Adviser} and
 * {@link org.fizzhull.decide.Diagnoser}. Everything rests on the critical weight of a draw, the heaviest piece that floats to
 * the end ({@link org.fizzhull.forecast.model.CriticalWeights}). Candidates of a comparison are answered in the same states of the
 * world ({@link org.fizzhull.forecast.joint.JointPredictor}), so that the chance that one beats another, and what the wrong choice
 * costs, are counted draw by draw. Values are SI; pieces are shares of 1; answers hold no word that a program must parse.
 * Left out: words and pictures (the command line has them), and what no forecast computes: looks, feel, sales, skin,
 * children, labelling law.
 */
@NullMarked
package org.fizzhull.decide;

import org.jspecify.annotations.NullMarked;
