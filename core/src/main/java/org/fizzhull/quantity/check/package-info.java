/**
 * Checks of arguments that every constructor and reader of the library shares.
 *
 * <p>Entry: {@link org.fizzhull.quantity.check.Given} for arguments, {@link org.fizzhull.quantity.check.BareNumber} for a number
 * without a unit, {@link org.fizzhull.quantity.check.SerialForm} for records that are read from a stream. Not offered.
 */
@NullMarked
package org.fizzhull.quantity.check;

import org.jspecify.annotations.NullMarked;
