/**
 * How densely a mix packs, damp and under a press: what a piece will weigh, whether it holds, and the reverse, what
 * pressure a weighed piece tells of.
 *
 * <p>Enter at {@link org.fizzhull.pressing.Press}. Relations: sheet "packing" sections 3 (packing of mixtures, pressing)
 * and 4 (damp strength, wall friction, spring-back); PHYSICS section 2 holds over the sheet. SI throughout: Pa, m, kg.
 * Left out: letting go of the mould (adhesion, suction: nothing published was found), plastic deformation of grains
 * (below 2 % under hand pressures), dissolving while pressing.
 */
@NullMarked
package org.fizzhull.pressing;

import org.jspecify.annotations.NullMarked;
