/**
 * How a body lies in still water: how deep, which way up, how firmly, and when an open one ships water.
 *
 * <p>Enter by {@link org.fizzhull.hydrostatics.Attitudes} for every stable way a body floats, by
 * {@link org.fizzhull.hydrostatics.Draft} where the attitude is given, by {@link org.fizzhull.hydrostatics.Stability}
 * for metacentric heights and righting arms, by {@link org.fizzhull.hydrostatics.Boat} for a dry hollow. Equations and
 * methods: docs/physics/hydrostatics.md, 2 to 4. SI; directions are unit vectors of the body frame that
 * point up.
 *
 * <p>Left out: surface tension (below 0.1 % for pieces of 45 mm and more), waves, a body that touches the bottom, water
 * that seeps into the wall. A body is here a hull, a mass and a centre of mass; where these come from is not known
 * here.
 */
@NullMarked
package org.fizzhull.hydrostatics;

import org.jspecify.annotations.NullMarked;
