/**
 * The ways in which a piece lies in the water, as a maker sees them: which face shows, how deep, how steady.
 *
 * <p>Entry: {@link org.fizzhull.forecast.result.FloatingAttitude}. The search itself is that of {@code hydrostatics}.
 * Lengths in m.
 */
@NullMarked
package org.fizzhull.forecast.attitude;

import org.jspecify.annotations.NullMarked;
