/**
 * What became of a piece in the bath: outcome, events, series over time.
 *
 * <p>Entry: {@link org.fizzhull.voyage.result.Voyage}.
 */
@NullMarked
package org.fizzhull.voyage.result;

import org.jspecify.annotations.NullMarked;
