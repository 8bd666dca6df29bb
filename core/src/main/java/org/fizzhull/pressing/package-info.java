/**
 * How densely a mix packs, damp and under a press: what a piece will weigh, whether it holds, and the reverse, what
 * pressure a weighed piece tells of.
 *
 * <p>An embedder asks {@link org.fizzhull.forecast.PressPredictor}; inside the library the entry class is
 * {@link org.fizzhull.pressing.powder.Press}. Relations: docs/physics/packing.md, 2 to 6 (packing, pressing) and 7
 * (damp strength). SI throughout: Pa, m, kg. Left out: letting go of the mould (adhesion, suction: nothing published
 * was found), plastic deformation of grains (below 2 % under hand pressures), dissolving while pressing.
 */
@NullMarked
package org.fizzhull.pressing;

import org.jspecify.annotations.NullMarked;
