/**
 * The text of a shape, {@code dome(diameter=80 mm)}: what may stand in it, how it is read, how it is refused where it
 * cannot be read.
 *
 * <p>Entry: {@link org.fizzhull.shape.text.ShapeText#read} and {@link org.fizzhull.shape.listing.ShapeKinds} for the kinds
 * with their parameters. {@link org.fizzhull.shape.text.ShapeFiles} is what the caller passes in for shapes that name a
 * file. Left out: opening files.
 */
@NullMarked
package org.fizzhull.shape.text;

import org.jspecify.annotations.NullMarked;
