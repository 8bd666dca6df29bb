/**
 * The geometry that every body offers, whatever it is made of: a closed surface that a plane can cut, and what is left
 * of the body at each depth.
 *
 * <p>Entry: {@link org.fizzhull.geometry.Hull} (hydrostatics, wetted area, diffusion) and
 * {@link org.fizzhull.geometry.DepthProfile} (fizzing and drying as fronts along the inward depth).
 * {@link org.fizzhull.geometry.Hollow} describes an open cavity that may float dry, {@link
 * org.fizzhull.geometry.DepthProfile.Exposure} which faces are open. SI; body frame with z up as the shape is listed. Left out: how
 * a hull or a profile is made, which is the business of {@code mesh} and of the packages of {@code shape}.
 */
@NullMarked
package org.fizzhull.geometry;

import org.jspecify.annotations.NullMarked;
