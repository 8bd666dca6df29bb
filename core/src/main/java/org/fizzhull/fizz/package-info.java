/**
 * How fast does a wet surface give off gas? Per unit area and per mole, without a shape: recession of the surface, gas
 * flux, the layer of clinging bubbles, the plume above.
 *
 * <p>Entry class: {@link org.fizzhull.fizz.FizzParameters}. Reference: the project's physics page, section 6. SI units;
 * speeds in m/s. Left out so far: bath chemistry.
 */
@NullMarked
package org.fizzhull.fizz;

import org.jspecify.annotations.NullMarked;
