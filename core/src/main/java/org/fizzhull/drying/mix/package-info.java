/**
 * What drying asks of a mix: its water, what sorbs, what reacts, and the weak numbers of both.
 *
 * <p>Entry: {@link org.fizzhull.drying.mix.BlendDrying} from a blend at a density, {@link org.fizzhull.drying.mix.DryingInput} by hand,
 * {@link org.fizzhull.drying.mix.DryingParameters} for the weak numbers. SI; contents per m3 of piece, activities from 0 to 1.
 */
@NullMarked
package org.fizzhull.drying.mix;

import org.jspecify.annotations.NullMarked;
