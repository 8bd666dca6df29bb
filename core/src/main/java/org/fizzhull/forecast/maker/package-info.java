/**
 * The piece of a draw: how the powders lie, how the piece dries, and the priors of all that.
 *
 * <p>Entry: {@link org.fizzhull.forecast.maker.Maker} and {@link org.fizzhull.forecast.maker.MakingPriors}.
 */
@NullMarked
package org.fizzhull.forecast.maker;

import org.jspecify.annotations.NullMarked;
