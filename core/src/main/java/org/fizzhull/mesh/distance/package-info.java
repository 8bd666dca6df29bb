/**
 * Distances in a mesh: how far is a point inside from its surface, what is left of the body at each depth, and how fast does it dry?
 *
 * <p>Entry: {@link org.fizzhull.mesh.distance.MeshDepth} for depth profiles, {@link org.fizzhull.mesh.distance.PoissonTime}
 * for diffusion, {@link org.fizzhull.mesh.distance.FacetTree} for the tree that distances and plane cuts share, {@link
 * org.fizzhull.mesh.distance.RayTable} for parallel lines.
 * Units: metres. Left out: closed forms, which the shapes hold themselves.
 */
@NullMarked
package org.fizzhull.mesh.distance;

import org.jspecify.annotations.NullMarked;
