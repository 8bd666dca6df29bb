/**
 * Triangle meshes: how is the surface of a piece of any shape read, checked and measured?
 *
 * <p>Entry: {@link org.fizzhull.mesh.StlReader} for files, {@link org.fizzhull.mesh.TriangleMesh} for the mesh itself;
 * {@link org.fizzhull.mesh.distance} for depths, {@link org.fizzhull.mesh.cutting} for plane cuts,
 * {@link org.fizzhull.mesh.hollow} for open hollows. Units: metres inside; a file's unit is named by the caller. Left out:
 * meshes that are not closed (they are refused), colours and names in files, and opening files.
 */
@NullMarked
package org.fizzhull.mesh;

import org.jspecify.annotations.NullMarked;
