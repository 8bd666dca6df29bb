/**
 * Results over the draws for a piece: chances, critical weights, the share of a batch, attitudes, drying.
 *
 * <p>Entry: {@link org.fizzhull.forecast.result.CriticalWeights} and {@link org.fizzhull.forecast.result.Probability}. Values that the
 * predictors of package {@code forecast} answer with.
 */
@NullMarked
package org.fizzhull.forecast.result;

import org.jspecify.annotations.NullMarked;
