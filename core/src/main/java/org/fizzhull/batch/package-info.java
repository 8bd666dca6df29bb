/**
 * How to make many pieces of a recipe: in which equal mixes, in which order, with how many spares, on how large a rack,
 * for how much of the maker's own money.
 *
 * <p>Enter at {@link org.fizzhull.batch.Batch#plan} and {@link org.fizzhull.batch.MixingOrder#of}. Values are SI; cups
 * and spoons are those of {@link org.fizzhull.quantity.Measures}. Order, spares and the largest mix are common practice
 * without a source. Left out: whether the pieces hold, dry and float, which {@code forecast} tells.
 */
@NullMarked
package org.fizzhull.batch;

import org.jspecify.annotations.NullMarked;
