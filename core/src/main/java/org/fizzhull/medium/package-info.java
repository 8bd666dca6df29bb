/**
 * What is the water of the bath like: how dense, how thick, how strong its skin? And the air of the room: how dry?
 *
 * <p>Entry class: {@link org.fizzhull.medium.Bath}, an immutable value; {@link org.fizzhull.medium.Bath#parse} reads it
 * from what a person types. Each published relation is a class of static plain arithmetic: {@link
 * org.fizzhull.medium.relation.Kell1975}, {@link org.fizzhull.medium.relation.LaliberteCooper2004}, {@link
 * org.fizzhull.medium.relation.Patek2009Viscosity}, {@link org.fizzhull.medium.relation.IapwsSurfaceTension}, {@link
 * org.fizzhull.medium.relation.WagnerPruss2002}. SI throughout: K, m, m3, kg, Pa. Sources: docs/physics/fizz.md, 2 (water) and
 * docs/physics/drying.md, 1 (air).
 *
 * <p>Room air: {@link org.fizzhull.medium.RoomAir}, read by {@link org.fizzhull.medium.RoomAir#parse}; {@link
 * org.fizzhull.medium.relation.Massman1998} carries vapour through it.
 *
 * <p>Left out: dissolved carbon dioxide, soap and oil in the water (they change the surface tension), the effect
 * of salt on viscosity, surface tension and vapour pressure, and the rise of density with depth (0.0005 % per metre).
 */
@NullMarked
package org.fizzhull.medium;

import org.jspecify.annotations.NullMarked;
