/**
 * Open hollows of a mesh as it lies: how much air do they hold, at which rim do they spill, and how thin is the wall?
 *
 * <p>Entry: {@link org.fizzhull.mesh.hollow.OpenHollows}. Units: metres, z up. Left out: closed hollows, which are surfaces
 * of their own.
 */
@NullMarked
package org.fizzhull.mesh.hollow;

import org.jspecify.annotations.NullMarked;
