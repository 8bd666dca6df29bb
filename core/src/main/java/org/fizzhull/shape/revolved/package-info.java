/**
 * Bodies of revolution: a meridian of straight lines and arcs turned about the z axis.
 *
 * <p>Entry: {@link org.fizzhull.shape.revolved.RevolvedHull} for plane cuts of any such body,
 * {@link org.fizzhull.shape.revolved.RevolvedShape} for a piece from an outline that the caller has read
 * ({@link org.fizzhull.shape.revolved.ProfilePoints}). Depth profiles and diffusion are solved in radius and height.
 * SI, m. Left out: outlines that cross themselves or the axis (refused), and opening files.
 */
@NullMarked
package org.fizzhull.shape.revolved;

import org.jspecify.annotations.NullMarked;
