/**
 * The chain walked for one draw of the uncertain inputs, and what is counted over all draws.
 *
 * <p>Offered to strangers: {@link org.fizzhull.forecast.result.CriticalWeights},
 * {@link org.fizzhull.forecast.result.CriticalWeights.BatchShare} and {@link org.fizzhull.forecast.result.Probability}; all else serves
 * the predictors:
 *
 * <ul>
 *   <li>{@code DropModel}: makes the piece of a draw and its balance at the drop; inside the next four.
 *   <li>{@code VoyageModel} and {@code StillModel}: outcome and critical weight of each draw, for
 *       {@code FloatPredictor} and {@code JointPredictor}; {@code CriticalSearch} finds the weight.
 *   <li>{@code FizzModel} and {@code GasModel}: fizz time and rate of gas, for {@code FizzPredictor}.
 *   <li>{@code PressModel} and {@code CurveModel}: the damp piece, for {@code PressPredictor}.
 *   <li>{@code DryModel}: the course of drying, for {@code DryPredictor}.
 * </ul>
 *
 * <p>A model of one thread holds what a draw fixes and writes its results to columns, one array a number and one place
 * a draw, so that threads change no byte. Left out: sampling ({@code uncertainty}) and the physics of each stage.
 */
@NullMarked
package org.fizzhull.forecast.model;

import org.jspecify.annotations.NullMarked;
