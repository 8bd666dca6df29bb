/**
 * Implicit diffusion of vapour along the depth profile with sorption, a film reaction and the balance of a closed room.
 *
 * <p>Entry: {@code DryingSolver}, driven by {@code org.fizzhull.drying.Drying}. Not offered to strangers. Equations:
 * core/docs/physics/drying.md, 3 to 6. Nothing is allocated per time step.
 */
@NullMarked
package org.fizzhull.drying.solver;

import org.jspecify.annotations.NullMarked;
