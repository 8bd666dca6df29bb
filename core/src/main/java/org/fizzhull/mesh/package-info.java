/**
 * Triangle meshes: how is the surface of a piece of any shape read, checked and measured, what is left of it at each
 * depth, and how fast does it dry?
 *
 * <p>Entry: {@link org.fizzhull.mesh.StlReader} for files, {@link org.fizzhull.mesh.TriangleMesh} for the mesh itself,
 * {@link org.fizzhull.mesh.MeshDepth} and {@link org.fizzhull.mesh.PoissonTime} for fronts and diffusion into it.
 * Rules: docs/physics/hydrostatics.md, 4 and 6. Units: metres inside; a file's unit is named
 * by the caller. Left out: meshes that are not closed (they are refused), colours and names in files, and opening files.
 */
@NullMarked
package org.fizzhull.mesh;

import org.jspecify.annotations.NullMarked;
