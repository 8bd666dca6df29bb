/**
 * Will it float, which way up, how sure is that and what decides it? Evaluates the chain of values many times with the
 * uncertain inputs drawn from stated priors.
 *
 * <p>Two kinds of uncertain inputs are kept apart ({@link org.fizzhull.forecast.prior.Input.Kind}): what differs from
 * piece to piece makes a share of a batch, what is common to the batch but not known makes a chance ({@link
 * org.fizzhull.forecast.result.CriticalWeights.BatchShare}). Both are read off the critical weight of each draw ({@link
 * org.fizzhull.forecast.result.CriticalWeights}); what it all comes to is one value, the {@link
 * org.fizzhull.forecast.FloatVerdict}.
 *
 * <p>Entry classes: {@link org.fizzhull.forecast.FloatPredictor}; {@link org.fizzhull.forecast.PressPredictor} for the
 * piece in its mould, {@link org.fizzhull.forecast.DryPredictor} for what happens between press and bath, {@link
 * org.fizzhull.forecast.FizzPredictor} for the gas and the bath. What a person measured is passed as {@link
 * org.fizzhull.forecast.measured.Observations} and narrows the draws. Uncertain parameters: {@link
 * org.fizzhull.forecast.question.Factors}, the only joint between physics and distributions. SI units inside.
 */
@NullMarked
package org.fizzhull.forecast;

import org.jspecify.annotations.NullMarked;
