/**
 * Triangle meshes: how is the surface of a piece of any shape read, checked and measured?
 *
 * <p>Entry: {@link org.fizzhull.mesh.TriangleMesh}; {@link org.fizzhull.mesh.reading} for files,
 * {@link org.fizzhull.mesh.repair} for what closes and what does not, {@link org.fizzhull.mesh.distance} for depths,
 * {@link org.fizzhull.mesh.cutting} for plane cuts, {@link org.fizzhull.mesh.hollow} for open hollows. Units: metres inside;
 * a file's unit is named by the caller. Left out: meshes that are not closed (they are refused), and opening files.
 */
@NullMarked
package org.fizzhull.mesh;

import org.jspecify.annotations.NullMarked;
