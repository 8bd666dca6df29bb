package org.fizzhull.shape.size;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * Range checks of sizes, with a proposed correction for the usual slips: a decimal place, centimetres or inches for
 * millimetres. For the constructors of the kinds of shape:
 * <pre>{@code
 * SizeCheck.size("diameter", 0.65);   // a ball of 0.65 m passes
 * SizeCheck.size("diameter", 6.5);    // refused, with the proposal 650 mm
 * }</pre>
 *
 * <p>All sizes are in m; NaN is refused by every check. What is refused is a {@link Refusal} {@code out-of-range} of
 * the field {@code shape: key}. The limits of size are judgements: no piece is smaller or larger. Stateless.
 */
public final class SizeCheck {
    /** Smallest size of a piece across, m. */
    public static final double SMALLEST = 0.005;

    /** Largest size of a piece, m. */
    public static final double LARGEST = 1.0;

    /** Smallest height of a cap or a flat piece, m. */
    public static final double THINNEST = 0.001;

    /**
     * Factors by which a size is usually wrong, likeliest first: the point by one place, m for mm, mm for inches, the
     * point by two places; each way.
     */
    private static final double[] SLIPS = {0.1, 10, 0.001, 1000, 25.4, 1 / 25.4, 0.01, 100};

    private SizeCheck() {}

    /**
     * Refuses an outer size beyond 5 mm to 1000 mm.
     *
     * @param key name of the parameter in shape text
     * @param value size, m
     * @throws Refusal {@code out-of-range}
     */
    public static void size(String key, double value) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
            throw refusal(key, value, SMALLEST, LARGEST, "5 mm to 1000 mm", "");
        }
    }

    /**
     * Refuses a height beyond 1 mm to 1000 mm.
     *
     * @param value height, m
     * @throws Refusal {@code out-of-range}
     */
    public static void height(double value) {
        if (!(value >= THINNEST && value <= LARGEST)) {
            throw refusal("height", value, THINNEST, LARGEST, "1 mm to 1000 mm", "");
        }
    }

    /**
     * Refuses a wall or a tube thinner than 1 mm.
     *
     * @param key name of the parameter in shape text
     * @param value thickness, m
     * @throws Refusal {@code out-of-range}
     */
    public static void thickness(String key, double value) {
        if (!(value >= THINNEST)) {
            throw refusal(key, value, THINNEST, LARGEST, "at least 1 mm", "Nothing thinner leaves a mould.");
        }
    }

    /**
     * Refuses a value that is not from low to high, ends included. The message words the range as "low to high", then
     * {@code because} and the size {@code of}: "0 mm to 40 mm for a bowl of diameter 80 mm".
     *
     * @param key name of the parameter in shape text
     * @param value size, m
     * @param low smallest size allowed, m
     * @param high largest size allowed, m
     * @param because words between the range and the size that sets it, blanks included
     * @param of size that sets the range, m
     * @param hint how to correct it, a sentence; empty for the usual proposals
     * @throws Refusal {@code out-of-range}
     */
    public static void upTo(String key, double value, double low, double high, String because, double of, String hint) {
        if (!(value >= low && value <= high)) {
            String allowed = SizeText.mm(low) + " to " + SizeText.mm(high) + because + SizeText.mm(of);
            throw refusal(key, value, low, high, allowed, hint);
        }
    }

    /**
     * Refuses a value that is not between 0 and high, ends excluded.
     *
     * @param key name of the parameter in shape text
     * @param value size, m
     * @param high size that it must stay below, m
     * @param because words between the range and the size that sets it, blanks included
     * @param of size that sets the range, m
     * @param hint how to correct it, a sentence; empty for the usual proposals
     * @throws Refusal {@code out-of-range}
     */
    public static void between(String key, double value, double high, String because, double of, String hint) {
        if (!(value > 0 && value < high)) {
            String allowed = "between 0 mm and " + SizeText.mm(high) + because + SizeText.mm(of);
            throw refusal(key, value, 0, high, allowed, hint);
        }
    }

    /**
     * Refuses an edge radius beyond half the smallest side.
     *
     * @param edge radius of the edges, m
     * @param smallestSide smallest side of the body, m
     * @throws Refusal {@code out-of-range}
     */
    public static void edge(double edge, double smallestSide) {
        upTo("edge", edge, 0, smallestSide / 2, " for a smallest side of ", smallestSide, "");
    }

    /**
     * {@return the field name under which a parameter of a shape is reported}
     *
     * @param key name of the parameter in shape text
     */
    public static String field(String key) {
        return "shape: " + key;
    }

    /** The refusal of a value, m, with a proposal where one is likely, then the hint of the caller. */
    private static Refusal refusal(String key, double value, double low, double high, String allowed, String hint) {
        String mend = mend(value, low, high);
        String whole = hint.isEmpty() ? mend : mend.isEmpty() ? hint : mend + " " + hint;
        if (whole.isEmpty()) {
            whole = "Measure it again, inside the mould, and check the unit.";
        }
        return new Refusal("out-of-range", field(key), SizeText.mm(value), allowed, whole);
    }

    /**
     * A size within the limits that was probably meant, as a question: the sign left out, else the first usual slip;
     * empty where none fits. Nothing below 0.1 mm is proposed.
     */
    private static String mend(double value, double low, double high) {
        if (value < 0 && -value > low && -value < high) {
            return SizeText.proposal(-value, Unit.MILLIMETRE);
        }
        for (double slip : SLIPS) {
            double other = value * slip;
            if (other > low && other < high && other >= 1e-4) {
                return SizeText.proposal(other, Unit.MILLIMETRE);
            }
        }
        return "";
    }
}
