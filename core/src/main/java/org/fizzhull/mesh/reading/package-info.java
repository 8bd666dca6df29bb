/**
 * Files of meshes: is this STL or 3MF, what facets does it hold, and what is wrong with it and where?
 *
 * <p>Entry: {@link org.fizzhull.mesh.reading.MeshReader}. Units: STL has none and the caller names one, 3MF
 * names its own; metres come out.
 * Left out: opening files, colours and names in them, other formats (they are named and refused).
 */
@NullMarked
package org.fizzhull.mesh.reading;

import org.jspecify.annotations.NullMarked;
