/**
 * Where a piece dries: on what it lies, which faces are open, in which wrap, in what air.
 *
 * <p>Entry: {@link org.fizzhull.drying.place.Standing} and {@link org.fizzhull.drying.place.DryingPhase}.
 * {@link org.fizzhull.drying.factor.DryingShapeFactor} corrects diffusion along the depth profile for the shape. SI.
 */
@NullMarked
package org.fizzhull.drying.place;

import org.jspecify.annotations.NullMarked;
