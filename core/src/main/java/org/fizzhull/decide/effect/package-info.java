/**
 * What a proposed change does to weight, fizz, drying and cost.
 *
 * <p>Entry: {@link org.fizzhull.decide.effect.Effect}.
 */
@NullMarked
package org.fizzhull.decide.effect;

import org.jspecify.annotations.NullMarked;
