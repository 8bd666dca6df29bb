/**
 * Draws weighted by what was measured, inputs solved from a reading, and which measurement would tell most.
 *
 * <p>Entry: {@link org.fizzhull.forecast.conditioning.Conditioned}. What was measured stands in package {@code forecast.measured}.
 */
@NullMarked
package org.fizzhull.forecast.conditioning;

import org.jspecify.annotations.NullMarked;
