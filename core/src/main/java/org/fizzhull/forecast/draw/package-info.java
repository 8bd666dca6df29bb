/**
 * One draw of everything uncertain, as the physics takes it: from values of inputs to the parameter records.
 *
 * <p>Entry: {@link org.fizzhull.forecast.draw.Draw}.
 */
@NullMarked
package org.fizzhull.forecast.draw;

import org.jspecify.annotations.NullMarked;
