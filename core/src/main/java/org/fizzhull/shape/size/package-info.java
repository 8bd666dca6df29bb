/**
 * Checks and words of sizes and file names of shapes.
 *
 * <p>Entry: {@link org.fizzhull.shape.size.SizeCheck}.
 */
@NullMarked
package org.fizzhull.shape.size;

import org.jspecify.annotations.NullMarked;
