/**
 * Facet lists: do they enclose a body, and what small faults can be mended and said?
 *
 * <p>Entry: {@link org.fizzhull.mesh.repair.MeshCheck}. Units: metres. Left out: what has no inside, which is refused.
 */
@NullMarked
package org.fizzhull.mesh.repair;

import org.jspecify.annotations.NullMarked;
