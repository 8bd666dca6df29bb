package org.fizzhull.shape;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/** Range checks of sizes, with a mend for the usual slips: a decimal place, centimetres or inches for millimetres. */
public final class SizeCheck {
    /** Smallest and largest size of a piece, m: below lies a crumb, above nothing that is pressed by hand. */
    public static final double SMALLEST = 0.005;

    public static final double LARGEST = 1.0;

    /** Smallest height of a cap or a flat piece, m. */
    public static final double THINNEST = 0.001;

    private static final double[] SLIPS = {0.1, 10, 0.001, 1000, 25.4, 1 / 25.4, 0.01, 100};

    private SizeCheck() {}

    /** Refuses an outer size beyond 5 mm to 1000 mm. */
    public static void size(String key, double value) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
            throw refusal(key, value, SMALLEST, LARGEST, "5 mm to 1000 mm", "");
        }
    }

    /** Refuses a height beyond 1 mm to 1000 mm. */
    public static void height(double value) {
        if (!(value >= THINNEST && value <= LARGEST)) {
            throw refusal("height", value, THINNEST, LARGEST, "1 mm to 1000 mm", "");
        }
    }

    /** Refuses a wall or a tube thinner than 1 mm. */
    public static void thickness(String key, double value) {
        if (!(value >= THINNEST)) {
            throw refusal(key, value, THINNEST, LARGEST, "at least 1 mm", "Nothing thinner leaves a mould.");
        }
    }

    /** Refuses a value that is not from low to high, ends included; {@code because} goes on with the size {@code of}. */
    public static void upTo(String key, double value, double low, double high, String because, double of, String hint) {
        if (!(value >= low && value <= high)) {
            String allowed = SizeText.mm(low) + " to " + SizeText.mm(high) + because + SizeText.mm(of);
            throw refusal(key, value, low, high, allowed, hint);
        }
    }

    /** Refuses a value that is not between 0 and high, ends excluded. */
    public static void between(String key, double value, double high, String because, double of, String hint) {
        if (!(value > 0 && value < high)) {
            String allowed = "between 0 mm and " + SizeText.mm(high) + because + SizeText.mm(of);
            throw refusal(key, value, 0, high, allowed, hint);
        }
    }

    /** Refuses an edge radius beyond half the smallest side. */
    public static void edge(double edge, double smallestSide) {
        upTo("edge", edge, 0, smallestSide / 2, " for a smallest side of ", smallestSide, "");
    }

    /** Field name under which a parameter of a shape is reported. */
    public static String field(String key) {
        return "shape: " + key;
    }

    private static Refusal refusal(String key, double value, double low, double high, String allowed, String hint) {
        String mend = mend(value, low, high);
        String whole = hint.isEmpty() ? mend : mend.isEmpty() ? hint : mend + " " + hint;
        if (whole.isEmpty()) {
            whole = "Measure it again, inside the mould, and check the unit.";
        }
        return new Refusal("out-of-range", field(key), SizeText.mm(value), allowed, whole);
    }

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
