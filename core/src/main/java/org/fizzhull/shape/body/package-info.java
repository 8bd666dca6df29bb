/**
 * Hulls of meshes, and the series and prism meshes that several kinds of shapes share.
 *
 * <p>Entry: {@link org.fizzhull.shape.body.PolyhedronHull}.
 */
@NullMarked
package org.fizzhull.shape.body;

import org.jspecify.annotations.NullMarked;
