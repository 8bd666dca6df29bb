/**
 * {@code float}: does it float to the end, which way up, how sure, and what decides it? Start at
 * {@link org.fizzhull.cli.floating.FloatCommand}. The words for chances, attitudes and measurements stand here too, since the
 * other commands say the same of the same forecast.
 */
@NullMarked
package org.fizzhull.cli.floating;

import org.jspecify.annotations.NullMarked;
