/**
 * What did the person write, and what is it in SI?
 *
 * <p>Entry: {@link org.fizzhull.quantity.QuantityText} reads {@code 2 1/2 in}, {@code 138 g +- 4 g} or
 * {@code 4 to 8 g} into an {@link org.fizzhull.quantity.Amount} and writes it back so that reading it again gives the
 * same bits; {@link org.fizzhull.quantity.Allowed} adds the range a field may have, and
 * {@link org.fizzhull.quantity.Decimals} writes plain numbers for JSON and for people. Every {@code Amount} is SI: m,
 * kg, m3, kg/m3, Pa, K, s, and a fraction of one.
 *
 * <p>Whatever cannot be read is a {@link org.fizzhull.quantity.Refusal} with one of these codes:
 * {@code missing-value}, {@code missing-unit}, {@code unknown-unit}, {@code wrong-dimension}, {@code not-a-number},
 * {@code comma-decimal}, {@code not-representable}, {@code unit-order}, {@code extra-text}, {@code range-dash},
 * {@code range-order}, {@code negative-spread}, {@code spread-not-allowed}, {@code out-of-range},
 * {@code unknown-measures}.
 *
 * <p>Sources: NIST SP 811 (2008) appendix B for the factors, 21 CFR 101.9(b)(5)(viii) for US legal cups and spoons,
 * JCGM 101:2008 6.4.2 and 6.4.7 for ranges and spreads; the command line contract for the grammar. No locale has any
 * influence. Left out: areas, forces, rates ({@code g/d}, changes per hour), money.
 */
@NullMarked
package org.fizzhull.quantity;

import org.jspecify.annotations.NullMarked;
