package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.check.SerialForm;

/**
 * A way the piece floats as it is, without fizz: an attitude in which its weight and what it displaces are in balance
 * and a small turn is undone. A body may have several; gas or a hand turns it from one to another. Lengths in m,
 * directions in the frame in which the shape is listed. Equations: docs/physics/hydrostatics.md. Immutable.
 *
 * @param up direction of the body frame that points up, a unit vector
 * @param draft depth of the lowest point under the water, m
 * @param freeboard height of the highest point above it (of the rim, for a dry hollow), m
 * @param immersedFraction displaced volume over that of the hull, 0 to 1
 * @param gm the smaller metacentric height, m, above 0
 * @param turnsFreely true where one turn costs nothing, as of a ball
 * @param share fraction of random starts that end here, 0 to 1; empty for a piece that was placed
 * @param cavity state of the hollow
 * @param topping where the layer on top lies
 * @param rimDips smallest tilt at which the rim of a dry hollow dips under, rad; empty for every other way
 */
public record FloatingAttitude(
        Vec3 up,
        double draft,
        double freeboard,
        double immersedFraction,
        double gm,
        boolean turnsFreely,
        OptionalDouble share,
        Cavity cavity,
        Topping topping,
        OptionalDouble rimDips)
        implements Serializable {
    /** Below this metacentric height, m, a ripple may tip it (assumed). */
    private static final double TIPPY = 0.5e-3;

    /** {@return whether a ripple may tip it over} */
    public boolean tippy() {
        return !turnsFreely && gm < TIPPY;
    }

    /** Where the layer on top of a piece lies to the water. */
    public enum Topping {
        /** There is none. */
        NONE("none"),
        /** All of it is above the water. */
        SHOWS("shows"),
        /** The water line runs through it. */
        AT_WATER_LINE("at the water line"),
        /** All of it is below. */
        UNDER_WATER("under water");

        /** Key in results, stable. */
        private final String word;

        Topping(String word) {
            this.word = word;
        }

        /** {@return the word in results} */
        public String word() {
            return word;
        }
    }

    /** What stands in the hollow. */
    public enum Cavity {
        /** There is no hollow. */
        NONE("none"),
        /** Air, open to the room. */
        DRY("dry"),
        /** Water. */
        FLOODED("flooded"),
        /** Gas under a hollow that is upside down. */
        TRAPPED_GAS("trapped gas");

        /** Key in results, stable. */
        private final String word;

        Cavity(String word) {
            this.word = word;
        }

        /** {@return the word in results} */
        public String word() {
            return word;
        }
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
