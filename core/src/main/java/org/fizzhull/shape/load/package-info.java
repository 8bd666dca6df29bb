/**
 * What a piece carries: toppings that lie on it and things set inside it.
 *
 * <p>Entry: {@link org.fizzhull.shape.load.Loaded}, a shape with its load. Masses in kg, places in the body frame, m.
 * Left out: how a topping lets go in the bath ({@code voyage}).
 */
@NullMarked
package org.fizzhull.shape.load;

import org.jspecify.annotations.NullMarked;
