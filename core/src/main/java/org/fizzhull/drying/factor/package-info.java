/**
 * How a shape dries against a ball of the same volume and open area.
 *
 * <p>Entry: {@link org.fizzhull.drying.factor.DryingShapeFactor}.
 */
@NullMarked
package org.fizzhull.drying.factor;

import org.jspecify.annotations.NullMarked;
