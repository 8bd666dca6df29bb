/**
 * Which pieces a predictor is asked about at all: {@link org.fizzhull.forecast.limit.PieceLimits} for their weights, {@link
 * org.fizzhull.forecast.limit.ShapeCheck} for the numbers of a shape that may be anybody's. Not offered.
 */
@NullMarked
package org.fizzhull.forecast.limit;

import org.jspecify.annotations.NullMarked;
