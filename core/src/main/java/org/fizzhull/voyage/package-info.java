/**
 * What happens to a piece in the bath? Joins fizzing and hydrostatics: the balance of the first moment, and the whole
 * voyage until nothing is left.
 *
 * <p>Entry classes: {@link org.fizzhull.voyage.DropBalance} for the drop, {@link org.fizzhull.voyage.FullVoyage} for
 * the equation of motion and its {@link org.fizzhull.voyage.Voyage}, {@link org.fizzhull.voyage.QuickVoyage} for many
 * draws. All three share one balance. Equations and sources: core/docs/physics/voyage.md. SI units. Left out: heeling
 * of a boat, waves in the bath, currents, pieces that break.
 */
@NullMarked
package org.fizzhull.voyage;

import org.jspecify.annotations.NullMarked;
