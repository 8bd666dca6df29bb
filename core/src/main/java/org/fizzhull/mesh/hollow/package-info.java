/**
 * Open hollows of a mesh: which air stays in it as it lies, over what rim does it fill, and how thin is its wall?
 *
 * <p>Entry: {@link org.fizzhull.mesh.hollow.OpenHollows}. Units: metres, z up. Left out: closed hollows, which are surfaces
 * of their own.
 */
@NullMarked
package org.fizzhull.mesh.hollow;

import org.jspecify.annotations.NullMarked;
