/**
 * The kinds of shapes that can be typed, with their parameters and words.
 *
 * <p>Entry: {@link org.fizzhull.shape.listing.ShapeKinds}.
 */
@NullMarked
package org.fizzhull.shape.listing;

import org.jspecify.annotations.NullMarked;
