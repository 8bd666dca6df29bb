package org.fizzhull.shape.load;

import java.io.Serializable;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.SizeText;

/**
 * A sealed thing pressed into a piece, a toy or a stone; it does not fizz, lets no water in and takes the place of
 * material.
 *
 * @param mass kg
 * @param volume m3
 */
public record Inset(double mass, double volume) implements Serializable {
    /** Heaviest thing believed, kg/m3: above the densest metal. */
    private static final double DENSEST = 25e3;

    /**
     * Refuses what is no mass or volume, and what no matter is heavy enough for.
     *
     * @param mass kg
     * @param volume m3
     */
    public Inset {
        check(
                "inside",
                mass > 0 && mass < Double.POSITIVE_INFINITY,
                SizeText.grams(mass),
                "more than 0 g",
                "Put it on the scale; leave it away where there is none.");
        check(
                "inside",
                volume > 0 && volume < Double.POSITIVE_INFINITY,
                mL(volume),
                "more than 0 mL",
                "Put it in a full glass and weigh what runs over: 1 g is 1 mL.");
        check(
                "inside",
                mass <= DENSEST * volume,
                SizeText.grams(mass) + " in " + mL(volume),
                "up to " + SizeText.grams(DENSEST * volume) + " in that volume",
                "No metal is that dense: the mass comes first, then the volume.");
    }

    static String mL(double cubicMetres) {
        return Double.isFinite(cubicMetres)
                ? QuantityText.rounded(cubicMetres, Unit.MILLILITRE, 6)
                : cubicMetres + " mL";
    }

    static void check(String field, boolean good, String read, String allowed, String hint) {
        if (!good) {
            throw new Refusal("out-of-range", field, read, allowed, hint);
        }
    }

    /** The centre of two masses; the first where neither has one. */
    static Vec3 centre(double m1, Vec3 c1, double m2, Vec3 c2) {
        return m1 + m2 == 0 ? c1 : c1.plus(c2.minus(c1).times(m2 / (m1 + m2)));
    }
}
