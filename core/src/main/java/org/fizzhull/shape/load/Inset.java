package org.fizzhull.shape.load;

import java.io.Serializable;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.size.SizeText;

/**
 * A sealed object pressed into a piece, a toy or a stone; it does not fizz, lets no water in and takes the place of
 * material. Its place is given to {@link Loaded#with(org.fizzhull.shape.Shape, Inset, Vec3)}.
 * <pre>{@code
 * Inset duck = new Inset(grams(6), 8e-6);   // 6 g, 8 mL: lighter than water, it lifts by 2 g
 * }</pre>
 *
 * <p>Range: above 0 g and 0 mL, no denser than 25 g/cm3. Immutable.
 *
 * @param mass mass on the scale, kg, above 0
 * @param volume volume it takes up, m3, above 0
 */
public record Inset(double mass, double volume) implements Serializable {
    /** Highest density accepted, kg/m3: osmium, the densest metal, has about 22.6e3 (from memory). */
    private static final double DENSEST = 25e3;

    /**
     * Refuses what is no mass or volume, and what no matter is heavy enough for.
     *
     * @param mass mass on the scale, kg, above 0
     * @param volume volume it takes up, m3, above 0
     * @throws Refusal {@code out-of-range}, of the field {@code inside}
     */
    public Inset {
        check(
                "inside",
                mass > 0 && mass < Double.POSITIVE_INFINITY,
                SizeText.grams(mass),
                "more than 0 g",
                "Put it on the scale; leave it out where there is none.");
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

    /** A volume in mL for a message, whatever number it is. */
    static String mL(double cubicMetres) {
        return Double.isFinite(cubicMetres)
                ? QuantityText.rounded(cubicMetres, Unit.MILLILITRE, 6)
                : cubicMetres + " mL";
    }

    /** Refuses a value that is not good, as out of range of a field. */
    static void check(String field, boolean good, String read, String allowed, String hint) {
        if (!good) {
            throw new Refusal("out-of-range", field, read, allowed, hint);
        }
    }

    /** The centre of mass of two masses, kg, at two points, m; the first point where neither has mass. */
    static Vec3 centre(double m1, Vec3 c1, double m2, Vec3 c2) {
        return m1 + m2 == 0 ? c1 : c1.plus(c2.minus(c1).times(m2 / (m1 + m2)));
    }
}
