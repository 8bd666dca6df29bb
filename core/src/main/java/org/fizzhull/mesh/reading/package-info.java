/**
 * Files of meshes: is this STL, what facets does it hold, and what is wrong with it and where?
 *
 * <p>Entry: {@link org.fizzhull.mesh.reading.StlReader}. Units: a file has none, the caller names one; metres come out.
 * Left out: opening files, colours and names in them, other formats (they are named and refused).
 */
@NullMarked
package org.fizzhull.mesh.reading;

import org.jspecify.annotations.NullMarked;
