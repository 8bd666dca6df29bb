/**
 * When is a pressed piece dry, in this room's air and wrapped when; what never dries; and how much fizz is gone by
 * then?
 *
 * <p>An embedder asks {@link org.fizzhull.forecast.DryPredictor}. Inside the library the entry class is
 * {@link org.fizzhull.drying.run.Drying}, which takes a {@link org.fizzhull.drying.mix.DryingInput} through its
 * {@link org.fizzhull.drying.place.DryingPhase}s and returns a {@link org.fizzhull.drying.DryingCourse}. Vapour diffuses
 * through the pores along the depth profile of any shape; a slow reaction in the films eats fizz and makes water.
 * Equations and sources: docs/physics/drying.md. SI throughout: s, m, kg, K, mol; humidities and
 * water activities from 0 to 1.
 *
 * <p>Inside, from the whole to the part: a run lays out the phases, the time stepping takes a piece through them and
 * sees when it is ready, the solver takes one step in two stages, a stage solves its equations by Newton's method.
 *
 * <p>Left out: capillary flow (pieces wetter than a third of their pores), the cooling of a wet skin, how fast hydrated
 * salts change, the buffering of a room by its walls, cracks and shrinkage.
 */
@NullMarked
package org.fizzhull.drying;

import org.jspecify.annotations.NullMarked;
