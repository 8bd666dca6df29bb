/**
 * Checks of what a predictor accepts: {@link org.fizzhull.forecast.limit.PieceLimits} for the weights of pieces,
 * {@link org.fizzhull.forecast.limit.ShapeCheck} for the numbers of a shape, which an embedder may have written. Not
 * offered.
 */
@NullMarked
package org.fizzhull.forecast.limit;

import org.jspecify.annotations.NullMarked;
