/**
 * Pieces whose surface is a triangle mesh: hull, depth profile, hollow and the notices that a mesh asks for.
 *
 * <p>Entry: {@link org.fizzhull.shape.meshed.MeshShape}; {@link org.fizzhull.shape.body.PolyhedronHull} is the hull
 * of any closed mesh, also of the angular closed forms. Reading, mending and measuring of the triangles is done by
 * {@code mesh}. SI, m, in the axes of the file. Left out: lift of closed hollows, which are reported and counted as
 * full of water.
 */
@NullMarked
package org.fizzhull.shape.meshed;

import org.jspecify.annotations.NullMarked;
