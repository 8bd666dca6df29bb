/**
 * Thin helpers over the general-purpose numerical libraries: bracketed roots, quadrature, differential equations with
 * events, small vectors. Knows no physics; arguments are in whatever unit the caller uses.
 */
@NullMarked
package org.fizzhull.numeric;

import org.jspecify.annotations.NullMarked;
