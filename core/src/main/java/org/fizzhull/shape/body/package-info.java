/**
 * Hulls of meshes, and series and prisms that several kinds of shapes share.
 *
 * <p>Entry: {@link org.fizzhull.shape.body.PolyhedronHull}.
 */
@NullMarked
package org.fizzhull.shape.body;

import org.jspecify.annotations.NullMarked;
