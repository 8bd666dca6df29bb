/**
 * Draws and what is made of them: Sobol points, the loop over draws, weights of measurements, indices of sensitivity, ranks.
 *
 * <p>Entry: {@link org.fizzhull.uncertainty.sampling.MonteCarlo}. Knows no physics.
 */
@NullMarked
package org.fizzhull.uncertainty.sampling;

import org.jspecify.annotations.NullMarked;
