package org.fizzhull.quantity;

import org.jspecify.annotations.Nullable;

/**
 * The range a field may have, and the correction that is proposed for a value outside it.
 *
 * <pre>{@code
 * Allowed diameters = Allowed.between(5, 500, Unit.MILLIMETRE);
 * double diameter = diameters.parseExact("diameter", "65 cm"); // refused: Did you mean 65 mm?
 * }</pre>
 *
 * <p>Both ends are allowed unless made by {@link #above} or {@link #aboveUpTo}. A correction is proposed only where the
 * value with another unit, with the point moved by one place, or without its sign would lie inside. Immutable, safe for
 * use by several threads.
 */
public final class Allowed {
    /** The hint where no correction fits. */
    private static final String CHECK = "Check the number and its unit.";

    /** Unit in which the range is worded. */
    private final Unit unit;
    /** Lower end, SI. */
    private final double low;
    /** Upper end, SI; +infinity for none. */
    private final double high;
    /** Whether the lower end itself is allowed. */
    private final boolean lowItself;

    private Allowed(Unit unit, double low, double high, boolean lowItself) {
        if (!(low < high)) {
            throw new IllegalArgumentException("no range: " + low + " to " + high);
        }
        this.unit = unit;
        this.low = low;
        this.high = high;
        this.lowItself = lowItself;
    }

    /**
     * {@return the range from {@code low} to {@code high}, numbers of the unit, which also words the range}
     *
     * @param low lowest number allowed
     * @param high highest number allowed
     * @param unit unit of both
     * @throws IllegalArgumentException for ends out of order
     */
    public static Allowed between(double low, double high, Unit unit) {
        return new Allowed(unit, unit.toSi(low), unit.toSi(high), true);
    }

    /**
     * {@return the range of more than {@code low} numbers of the unit}
     *
     * @param low number that is just not allowed
     * @param unit its unit
     */
    public static Allowed above(double low, Unit unit) {
        return new Allowed(unit, unit.toSi(low), Double.POSITIVE_INFINITY, false);
    }

    /**
     * {@return the range of more than {@code low} and up to {@code high}, numbers of the unit}
     *
     * @param low number that is just not allowed
     * @param high highest number allowed
     * @param unit unit of both
     * @throws IllegalArgumentException for ends out of order
     */
    public static Allowed aboveUpTo(double low, double high, Unit unit) {
        return new Allowed(unit, unit.toSi(low), unit.toSi(high), false);
    }

    /**
     * {@return whether an SI value lies inside; false for NaN}
     *
     * @param si value, SI
     */
    public boolean contains(double si) {
        return (lowItself ? si >= low : si > low) && si <= high;
    }

    /** {@return the lower end, SI} */
    public double low() {
        return low;
    }

    /** {@return the upper end, SI; infinite for none} */
    public double high() {
        return high;
    }

    /** {@return the range in words: {@code between 5 mm and 500 mm}} */
    public String words() {
        String from = QuantityText.format(low, unit);
        if (high == Double.POSITIVE_INFINITY) {
            return (lowItself ? "at least " : "more than ") + from;
        }
        String to = QuantityText.format(high, unit);
        return lowItself ? "between " + from + " and " + to : "more than " + from + " and at most " + to;
    }

    /**
     * Reads an amount and checks it, with US legal cups and spoons.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @return the amount, SI, inside the range
     * @throws Refusal {@code out-of-range}, or as {@link QuantityText#parse}
     */
    public Amount parse(String field, String text) {
        return parse(field, text, Measures.US_LEGAL);
    }

    /**
     * Reads an amount and checks it: both ends of a range, the mean of a normal spread (its tails are the caller's).
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param measures what a cup and the spoons hold
     * @return the amount, SI, inside the range
     * @throws Refusal {@code out-of-range}, or as {@link QuantityText#parse}
     */
    public Amount parse(String field, String text, Measures measures) {
        return checked(field, text, QuantityText.read(field, text, measures, unit.dimension()), measures);
    }

    /**
     * Reads one SI value and checks it, with US legal cups and spoons.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @return the value, SI, inside the range
     * @throws Refusal {@code out-of-range}, or as {@link QuantityText#parseExact}
     */
    public double parseExact(String field, String text) {
        return parseExact(field, text, Measures.US_LEGAL);
    }

    /**
     * Reads one SI value and checks it.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param measures what a cup and the spoons hold
     * @return the value, SI, inside the range
     * @throws Refusal {@code out-of-range}, or as {@link QuantityText#parseExact}
     */
    public double parseExact(String field, String text, Measures measures) {
        Reading reading = QuantityText.read(field, text, measures, unit.dimension());
        return checked(field, text, QuantityText.exact(field, text, reading), measures)
                .value();
    }

    /**
     * Checks an SI value that no text was read for, and returns it.
     *
     * @param field what the value is, for the refusal
     * @param si value, SI; NaN is refused
     * @return the same value
     * @throws Refusal {@code out-of-range}, with the value in this range's unit
     */
    public double check(String field, double si) {
        if (contains(si)) {
            return si;
        }
        String read = Double.isFinite(si) ? QuantityText.rounded(si, unit, 6) : Double.toString(si);
        throw refusal(field, read, mend(unit, unit.fromSi(si), Measures.US_LEGAL));
    }

    /** The amount read; refuses one outside the range, with a correction worked out from how it was written. */
    private Amount checked(String field, String text, Reading reading, Measures measures) {
        Amount amount = reading.amount();
        boolean range = amount.spread() == Amount.Spread.RECTANGULAR;
        if (contains(range ? amount.low() : amount.value()) && contains(range ? amount.high() : amount.value())) {
            return amount;
        }
        throw refusal(field, RefusalWords.shown(text), mend(reading.unit(), reading.number(), measures));
    }

    /** A refusal with this range as what is allowed. */
    private Refusal refusal(String field, String read, String hint) {
        return new Refusal("out-of-range", field, read, words(), hint);
    }

    /** The same number in another unit, else the point moved by one place, else the sign left out. */
    private String mend(@Nullable Unit written, double number, Measures measures) {
        if (written == null || !Double.isFinite(number)) {
            return CHECK;
        }
        for (Unit other : Unit.values()) {
            // nobody measures a piece in micrometres by mistake
            boolean meant = other.dimension() == written.dimension() && other != Unit.MICROMETRE;
            if (meant && contains(other.toSi(number, measures))) {
                return didYouMean(number, other);
            }
        }
        double[] slips = {number / 10, number * 10, -number};
        for (double slip : slips) {
            if (contains(written.toSi(slip, measures))) {
                return didYouMean(slip, written);
            }
        }
        return CHECK;
    }

    /** The proposal as a question. */
    private static String didYouMean(double number, Unit unit) {
        return "Did you mean " + Decimals.text(number, 6) + " " + unit.symbol() + "?";
    }
}
