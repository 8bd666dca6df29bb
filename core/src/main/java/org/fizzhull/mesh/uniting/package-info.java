/**
 * The union of closed surfaces that cross or touch.
 *
 * <p>Entry: {@link org.fizzhull.mesh.uniting.CrossedShells}, which finds the surfaces that cross and unites them. On
 * which side of a facet a point lies is decided on perturbed bodies, each grown by a few millionths of its size and
 * its corners moved a little at random, so that no corner lies in a facet and no edge meets another: coincident faces
 * then cross cleanly, and bodies that touch overlap. The corners of the union have their true places.
 */
@NullMarked
package org.fizzhull.mesh.uniting;

import org.jspecify.annotations.NullMarked;
