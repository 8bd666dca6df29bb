/**
 * How a piece came to be, and so what is known of it: weighed, filled, pressed, dried.
 *
 * <p>Entry: {@link org.fizzhull.forecast.making.Making.Weighed}, {@link org.fizzhull.forecast.making.Moulded.Filled},
 * {@link org.fizzhull.forecast.making.Moulded.Pressed}, and {@link org.fizzhull.forecast.making.DryingConditions} for what
 * happens between press and bath. Each brings the uncertain inputs of its own stages. Masses in kg, times in s. Left
 * out: the physics, which is that of {@code pressing} and {@code drying}.
 */
@NullMarked
package org.fizzhull.forecast.making;

import org.jspecify.annotations.NullMarked;
