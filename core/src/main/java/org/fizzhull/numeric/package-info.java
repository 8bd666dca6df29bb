/**
 * Thin helpers over the general-purpose numerical libraries: bracketed roots, quadrature, differential equations with
 * events, tridiagonal systems. Knows no physics; arguments are in whatever unit the caller uses.
 *
 * <p>Entry: {@link org.fizzhull.numeric.BracketedRoot}, {@link org.fizzhull.numeric.EventIntegrator}, {@link
 * org.fizzhull.numeric.GaussLegendre}, {@link org.fizzhull.numeric.Tridiagonal}, each on its own.
 */
@NullMarked
package org.fizzhull.numeric;

import org.jspecify.annotations.NullMarked;
