/**
 * Plane cuts of a mesh: how much of the body lies below a plane, what face does the plane cut, and what shadow is thrown?
 *
 * <p>Entry: {@link org.fizzhull.mesh.cutting.PlaneClip}. Units: metres. Left out: caps on the cut, which no sum needs.
 */
@NullMarked
package org.fizzhull.mesh.cutting;

import org.jspecify.annotations.NullMarked;
