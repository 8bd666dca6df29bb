/**
 * The union of closed surfaces that run into each other.
 *
 * <p>Entry: {@link org.fizzhull.mesh.uniting.CrossedShells}, which finds out what crosses what and unites it. Whether a
 * point lies on one side of a facet or on the other is asked of bodies that are each grown by a millionth of their size or
 * so and shaken a little, so that no corner lies in a facet and no edge meets another: faces that lie on each other cross
 * cleanly, and bodies that touch overlap. The corners of the union are those of the bodies as they are.
 */
@NullMarked
package org.fizzhull.mesh.uniting;

import org.jspecify.annotations.NullMarked;
