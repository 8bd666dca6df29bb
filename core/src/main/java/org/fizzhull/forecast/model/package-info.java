/**
 * The chain walked for one draw of the uncertain inputs, and what is counted over all draws.
 *
 * <p>Offered to strangers: {@link org.fizzhull.forecast.model.CriticalWeights},
 * {@link org.fizzhull.forecast.model.BatchShare} and {@link org.fizzhull.forecast.model.Probability}; all else serves
 * the predictors. A model of one thread holds what a draw fixes and writes its results to columns of its own row, so
 * that threads change no byte. Left out: sampling ({@code uncertainty}) and the physics of each stage.
 */
@NullMarked
package org.fizzhull.forecast.model;

import org.jspecify.annotations.NullMarked;
