/**
 * How does one piece fare from the bowl to the bath, by the central values?
 *
 * <p>Entry class: {@link org.fizzhull.chain.Mix}. {@code Mix.of(recipe).fill(ball, grams(137)).dry(conditions)
 * .voyage(bath)}: each stage is an immutable value, equal to another that was made of equal things, and hands on
 * everything the next one asks: water, fizz, oil, starch, foaming powder, crystals and toppings. Its numbers are those
 * of a forecast without draws. SI units. Left out: chances and bands, which {@code question()} of a stage asks of a
 * predictor.
 */
@NullMarked
package org.fizzhull.chain;

import org.jspecify.annotations.NullMarked;
