/**
 * Implicit diffusion of vapour along the depth profile with sorption, a film reaction and the balance of a closed room.
 *
 * <p>Entry: {@code DryingSolver}, driven by {@code org.fizzhull.drying.run.Drying}: it takes a step in two stages,
 * {@code DryingStage} solves one by Newton's method, with the coefficients of {@code VapourPath} between cells, of
 * {@code WaterActivity} in a cell, of {@code FilmReaction} for the fizz and of {@code RoomBalance} for the air.
 * {@code RecedingFront} is apart: a closed form without sorbents, for alcohol and as a check. Not offered to strangers.
 * Equations: core/docs/physics/drying.md, 3 to 6. Nothing is allocated per time step.
 */
@NullMarked
package org.fizzhull.drying.solver;

import org.jspecify.annotations.NullMarked;
