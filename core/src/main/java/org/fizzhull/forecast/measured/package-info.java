/**
 * What a maker measured, and what that does to a forecast.
 *
 * <p>Entry: {@link org.fizzhull.forecast.measured.Observations}. A measurement is solved for one weak input in each draw and
 * the draws are weighed by how likely that is, which is exact for any spread ({@code Conditioned}).
 * {@link org.fizzhull.forecast.measured.MeasureNext} tells which measurement would tell most. Left out: fitting many trials.
 */
@NullMarked
package org.fizzhull.forecast.measured;

import org.jspecify.annotations.NullMarked;
