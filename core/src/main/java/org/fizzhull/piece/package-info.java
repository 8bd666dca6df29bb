/**
 * The one value that pressing makes, drying returns a later one of, and a person with a scale makes directly: a
 * {@link org.fizzhull.piece.Piece}. A voyage takes it whatever its past. SI units.
 */
@NullMarked
package org.fizzhull.piece;

import org.jspecify.annotations.NullMarked;
