/**
 * The gas that a piece can give: whether it fizzes at all, and how much comes of what reacts.
 *
 * <p>Entry: {@link org.fizzhull.fizz.gas.Effervescence} and {@link org.fizzhull.fizz.gas.Yield}. Equations: docs/physics/fizz.md, 1.
 */
@NullMarked
package org.fizzhull.fizz.gas;

import org.jspecify.annotations.NullMarked;
