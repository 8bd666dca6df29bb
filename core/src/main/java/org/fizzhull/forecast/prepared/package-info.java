/**
 * A question worked out once for all draws: its attitude, its form in the water, its columns, the scatter of its batch.
 *
 * <p>Entry: {@link org.fizzhull.forecast.prepared.PreparedQuestion}.
 */
@NullMarked
package org.fizzhull.forecast.prepared;

import org.jspecify.annotations.NullMarked;
