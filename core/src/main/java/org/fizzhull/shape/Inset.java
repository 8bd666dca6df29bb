package org.fizzhull.shape;

import org.fizzhull.numeric.Vec3;
import org.fizzhull.quantity.Refusal;

/**
 * A thing pressed into a piece, a toy or a stone; it does not fizz and takes the place of material.
 *
 * @param mass kg
 * @param volume m3
 */
public record Inset(double mass, double volume) {
    /** Refuses what is no mass or volume. */
    public Inset {
        check("inside", mass > 0 && mass < Double.POSITIVE_INFINITY, SizeText.grams(mass), "more than 0 g");
        check("inside", volume > 0 && volume < Double.POSITIVE_INFINITY, volume * 1e6 + " mL", "more than 0 mL");
    }

    static void check(String field, boolean good, String read, String allowed) {
        if (!good) {
            throw new Refusal("out-of-range", field, read, allowed, "");
        }
    }

    /** The centre of two masses; the first where neither has one. */
    static Vec3 centre(double m1, Vec3 c1, double m2, Vec3 c2) {
        return m1 + m2 == 0 ? c1 : c1.plus(c2.minus(c1).times(m2 / (m1 + m2)));
    }
}
