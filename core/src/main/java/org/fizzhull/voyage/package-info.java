/**
 * What happens to a piece in the bath? Joins fizzing and hydrostatics. So far the first moment: the balance of a piece
 * wholly under water at the drop, clinging gas, wetting and plume included.
 *
 * <p>Entry class: {@link org.fizzhull.voyage.DropBalance}. Reference: the project's physics page, section 6. SI units.
 * Left out so far: everything later than the drop (recession of the shape, rise, soaking, swamping).
 */
@NullMarked
package org.fizzhull.voyage;

import org.jspecify.annotations.NullMarked;
