package org.fizzhull.forecast.limit;

import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * Which masses a pressed piece of a volume can have at all, so that a slipped digit is met before it is computed: 300
 * to 1,670 kg/m3 of its volume, and what lies on it and in it. Any body up to the densest metal may be asked of still
 * water. Also the range in which critical weights are searched. Stateless.
 */
public final class PieceLimits {
    /** Lightest pressed powder believed, kg/m3; foamed powders of surfactant reach 400 (common practice, no source). */
    public static final double LIGHTEST = 300;

    /** Heaviest, kg/m3: four standard deviations below the solids without a pore. */
    public static final double HEAVIEST = 1670;

    /** Heaviest body in still water, kg/m3: above the densest metal. */
    public static final double DENSEST = 25e3;

    /** Probability of the lightest piece of a batch that still has to weigh something. */
    private static final double RAREST = 1e-4;

    private PieceLimits() {}

    /**
     * Refuses a mass that no pressed piece of this shape has.
     *
     * @param shape form of the piece
     * @param mass mass on the scale, kg
     * @param stillWater whether any body is asked, not a pressed piece
     * @throws Refusal {@code out-of-range}, with the range and the usual mend
     */
    public static void check(Shape shape, double mass, boolean stillWater) {
        double from = lightest(shape, stillWater);
        double to = heaviest(shape, stillWater);
        if (mass > from && mass <= to) {
            return;
        }
        if (!(to > from && to < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "shape",
                    "a volume of " + shape.volume() + " m3",
                    "more than 0 m3",
                    "A body without it cannot be asked about.");
        }
        throw new Refusal(
                "out-of-range",
                "mass",
                grams(mass) + " for " + shape.text(),
                "between " + grams(from) + " and " + grams(to),
                hint(mass, from, to, stillWater) + load(shape));
    }

    /** A sentence for a shape that carries something: the weight of the whole piece was asked for. */
    private static String load(Shape shape) {
        return shape == shape.bare()
                ? ""
                : " The weight is that of the whole piece with what lies on it and in it, " + grams(shape.insetMass())
                        + " of it.";
    }

    /**
     * Refuses a spread of the fill that reaches below nothing: its lower 1 in 10,000 piece has no weight.
     *
     * @param shape form of the piece
     * @param mass mean mass of the whole piece, kg
     * @param hand spread around it, kg
     * @throws Refusal {@code out-of-range}
     */
    public static void checkSpread(Shape shape, double mass, Prior hand) {
        double least = mass + hand.quantile(RAREST);
        if (!(least > shape.insetMass())) {
            throw new Refusal(
                    "out-of-range",
                    "mass",
                    grams(mass) + " with a spread that reaches down to " + grams(least),
                    "a spread that leaves every piece some weight",
                    "After +- stands one standard deviation: two of three pieces lie within it.");
        }
    }

    /**
     * Checks what enters a predictor: a shape whose numbers are those of no body, and a fill that is no piece of it.
     *
     * @param shape form of the piece
     * @param making how the piece came to be
     * @throws Refusal {@code out-of-range}, {@code contradiction} where hull and volume disagree, {@code does-not-fit}
     */
    public static void checkPiece(Shape shape, Making making) {
        Given.all("shape, making", shape, making);
        ShapeCheck.check(shape);
        if (making instanceof Moulded.Filled filled) {
            checkFill(shape, filled);
        }
    }

    /**
     * Refuses a damp mass that the mould cannot hold, or less than a pressed piece can have.
     *
     * @param shape form of the piece
     * @param filled the fill
     * @throws Refusal {@code out-of-range}
     */
    public static void checkFill(Shape shape, Moulded.Filled filled) {
        Press.of(filled.blend())
                .fill(filled.dampMass(), MouldDimensions.of(shape, MouldDimensions.Filling.usual(shape)));
        double from = LIGHTEST * shape.volume();
        if (!(filled.dampMass() > from)) {
            throw new Refusal(
                    "out-of-range",
                    "fill",
                    grams(filled.dampMass()) + " for " + shape.text(),
                    "more than " + grams(from),
                    "This does not even fill the mould loosely: weigh the fill, or check the size (inside the mould).");
        }
        filled.hand().ifPresent(hand -> checkSpread(shape, filled.dampMass() + shape.insetMass(), hand));
    }

    /**
     * {@return the lightest piece of a shape that is believed, kg; the body alone may be as light as nothing in still water}
     *
     * @param shape form of the piece, with what it carries
     * @param stillWater whether any body is asked, not a pressed piece
     */
    public static double lightest(Shape shape, boolean stillWater) {
        return (stillWater ? 0 : LIGHTEST * shape.volume()) + shape.insetMass();
    }

    /**
     * {@return the heaviest piece of a shape that is believed, kg}
     *
     * @param shape form of the piece, with what it carries
     * @param stillWater whether any body is asked, not a pressed piece
     */
    public static double heaviest(Shape shape, boolean stillWater) {
        return (stillWater ? DENSEST : HEAVIEST) * shape.volume() + shape.insetMass();
    }

    /** How to mend it: by a power of ten where that would fit, else by looking at size and weight again. */
    private static String hint(double mass, double from, double to, boolean stillWater) {
        for (double factor : new double[] {10, 0.1, 1000, 0.001}) {
            double other = mass * factor;
            if (other > from && other < to) {
                return "Did you mean " + grams(other) + "? Otherwise check the size: it is that of the piece.";
            }
        }
        return stillWater
                ? "A body needs some weight, and none is heavier than the densest metal."
                : "No pressed mix is that " + (mass > to ? "heavy" : "light")
                        + " for its size: check the size (inside the mould) and the weight. Still water takes any body.";
    }

    /** A mass, kg, in grams: to hundredths below 10 g, to tenths above. */
    private static String grams(double kilograms) {
        double g = Units.inGrams(kilograms);
        if (!Double.isFinite(g)) {
            return g + " g";
        }
        double shown = Math.abs(g) < 10 ? Math.rint(g * 100) / 100 : Math.rint(g * 10) / 10;
        return (Double.isFinite(shown) ? Decimals.text(shown, 12) : Double.toString(shown)) + " g";
    }
}
