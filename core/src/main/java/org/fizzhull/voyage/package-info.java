/**
 * What happens to a piece in the bath? Joins fizzing and hydrostatics: the balance of the first moment, and the whole
 * voyage until nothing is left.
 *
 * <p>Entry classes: {@link org.fizzhull.voyage.DropBalance} for the drop, {@link org.fizzhull.voyage.FullVoyage} for
 * the equation of motion and its {@link org.fizzhull.voyage.result.Voyage}, {@link org.fizzhull.voyage.QuickVoyage} for many
 * draws. All three share one balance, and the two voyages one set of rules for the outcome. Equations and sources:
 * core/docs/physics/voyage.md. SI units. Left out: heeling of a boat, waves in the bath, currents, pieces that break.
 *
 * <p><b>Lengths, areas and volumes of a draw.</b> A shape is tabulated once, as computed
 * ({@link org.fizzhull.voyage.VoyageForm}). A draw has a mould that is larger by a volume ratio r and a surface that is
 * rougher by a ratio s ({@link org.fizzhull.voyage.Launch}); its numbers follow from the table:
 *
 * <pre>
 *   length  x r^(1/3)            volume  x r            area  x r^(2/3) s
 *   speed of the front in the depth of the table = v s/r^(1/3)
 * </pre>
 *
 * <p>so that no table is made anew for a draw, and the grid of the quick voyage is the same for all of them.
 *
 * <p><b>The quick voyage, step by step.</b>
 *
 * <ol>
 *   <li>Take the launch: speed of the receding face, gas flux, layer, plume and wet skin at its temperature, gas and
 *       trapped air at two pressures, just below the surface and on the bottom.
 *   <li>A hollow that holds air has a stage of its own: open side up it is a boat until the rim goes under or the wall
 *       is pierced, upside down it keeps its air until the wall is pierced. The flooded stage then begins at the depth
 *       at which as much volume is left.
 *   <li>At the drop the sign of the balance just below the surface says whether the piece is up or down: motion takes
 *       no time, but for the way up.
 *   <li>Each cell of the grid (1/200 of the depth to 1 % of the volume) lasts as long as the front needs to cross it:
 *       step over speed times wet share. Down, all that the bath covers is wet; up, the wet share is that of the draft
 *       at which lift meets weight, worked out anew each fourth cell, or with a flat face up the front is that of the
 *       other faces ({@code AfloatFront}).
 *   <li>At the end of the cell the balance is taken again, at the surface or at the bottom; while it is far from zero
 *       only after each fourth cell. Where its sign has turned, the moment is found by false position. A sinking counts
 *       from that moment, a rise from the lag of the way up later, whose closed form has inertia and drag.
 *   <li>The piece goes on from the end of that cell, up or down: fizz times are thus of order 1 in the number of cells.
 *   <li>The rules of the outcome hear of each rise, each sinking and each time; the voyage stops at 1 % of the volume,
 *       or once what was asked is known.
 * </ol>
 */
@NullMarked
package org.fizzhull.voyage;

import org.jspecify.annotations.NullMarked;
