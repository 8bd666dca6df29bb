/**
 * What should a maker do: which mould, which mix, and what is the smallest change that makes a piece float?
 *
 * <p>Entry: {@link org.fizzhull.decide.Adviser}. Everything rests on the critical weight of a draw, the heaviest piece that
 * floats to the end ({@link org.fizzhull.forecast.CriticalWeights}). Answers are values without a word that a program must
 * parse. Left out: skin, children, labelling law and anything else that needs a qualified assessor.
 */
@NullMarked
package org.fizzhull.decide;

import org.jspecify.annotations.NullMarked;
