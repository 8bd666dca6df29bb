/**
 * How sure is a number? Priors, scrambled Sobol points, a Monte Carlo run that knows no physics (a function of
 * {@code double[]} to {@code double}), its 95 % intervals after JCGM 101:2008 and its Sobol indices.
 *
 * <p>An embedder meets {@link org.fizzhull.uncertainty.Workers}, which says what computes the draws; inside the library the
 * entry class is {@link org.fizzhull.uncertainty.sampling.MonteCarlo}. Everything depends on (seed, index) only, so threads
 * never change a byte. Measurements condition the inputs in {@link org.fizzhull.uncertainty.sampling.Posterior}. Left out:
 * correlation between inputs other than by shared factors and by measurements.
 */
@NullMarked
package org.fizzhull.uncertainty;

import org.jspecify.annotations.NullMarked;
