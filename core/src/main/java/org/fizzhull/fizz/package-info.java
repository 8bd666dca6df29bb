/**
 * How fast does a wet surface give off gas, and what does the bath become? Per unit area and per mole, without a shape:
 * recession of the surface, gas flux, the layer of clinging bubbles, the plume above; yield of the mix, equilibria, pH.
 *
 * <p>Entry classes: {@link org.fizzhull.fizz.FizzParameters} for the surface, {@link org.fizzhull.fizz.gas.Yield} and
 * {@link org.fizzhull.fizz.BathChemistry} for the bath. Equations and sources: docs/physics/fizz.md. SI units; speeds in m/s, molalities in
 * mol per kg of water. Left out: ion pairs but that of magnesium and citrate, heat of reaction (it cools a bath by less than 0.1 K), the slow hydration
 * of carbon dioxide.
 */
@NullMarked
package org.fizzhull.fizz;

import org.jspecify.annotations.NullMarked;
