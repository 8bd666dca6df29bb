/**
 * What is uncertain, and how: every weak input with its name, its prior and its source, and the values of one draw.
 *
 * <p>Entry: {@link org.fizzhull.forecast.prior.Input} and {@link org.fizzhull.forecast.prior.Factor}. An input is of
 * the piece (it differs from one to the next) or of the batch (the same for all, but not known). Values are SI. The
 * table of all rows is {@link org.fizzhull.forecast.question.Factors}. Left out: why each prior is as wide as it is:
 * core/docs/physics/unknowns.md.
 */
@NullMarked
package org.fizzhull.forecast.prior;

import org.jspecify.annotations.NullMarked;
