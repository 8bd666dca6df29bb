/**
 * What a maker measured, and what that does to a forecast.
 *
 * <p>Entry: {@link org.fizzhull.forecast.measured.Observations}. A measurement is solved for one weak input in each
 * draw and the draws are weighted by how likely that is, which is exact for any spread ({@code Conditioned}):
 *
 * <ul>
 *   <li>a weighed pressed piece for the press scale ({@code PressedWeightSolver}),
 *   <li>a fizz time for the speed of recession ({@code FizzTimeSolver}),
 *   <li>a rise time for the bubble size ({@code RiseTimeSolver}),
 *   <li>a reading under water for the bubble size or the size of the mould ({@code LiftReadingSolver}, {@code DunkReadings}),
 *   <li>any further measurement solves nothing: it weights the draws by its likelihood ({@code FurtherMeasurements}).
 * </ul>
 *
 * <p>{@link org.fizzhull.forecast.measured.MeasureNext} tells which measurement would tell most. Left out: fitting many
 * trials ({@code learn}).
 */
@NullMarked
package org.fizzhull.forecast.measured;

import org.jspecify.annotations.NullMarked;
