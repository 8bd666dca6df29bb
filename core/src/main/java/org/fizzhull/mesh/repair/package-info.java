/**
 * Facet lists: do they enclose a body, and which small faults are repaired (and reported as notices)?
 *
 * <p>Entry: {@link org.fizzhull.mesh.repair.MeshCheck}. Units: metres. Left out: surfaces without an inside, which
 * are refused.
 */
@NullMarked
package org.fizzhull.mesh.repair;

import org.jspecify.annotations.NullMarked;
