package org.fizzhull.evidence.published;

import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;

/**
 * The range over which a published relation, or an input, holds. Both ends belong to it. Outside it a result carries
 * the {@link #notice} or the value is refused by {@link #require}; nothing is clamped.
 * <pre>{@code
 * ValidityRange range = ValidityRange.ofTemperature("Water density by Kell (1975)", celsius(0), celsius(100));
 * Optional<Notice> outside = range.notice(celsius(110));
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param name what is bounded, as it stands in a sentence: {@code "water density by Kell (1975)"}
 * @param low lower end, SI
 * @param high upper end, SI
 * @param unit the unit shown to people
 * @param unitInSi how many SI units one shown unit is
 * @param zeroInSi where the shown scale has its zero, SI: 273.15 for C, else 0
 */
public record ValidityRange(String name, double low, double high, String unit, double unitInSi, double zeroInSi) {
    /** Code of the notice about a value outside the range of a relation. */
    public static final String OUTSIDE = "outside-validity";

    /** Code of the refusal of a value outside the range of an input. */
    public static final String OUT_OF_RANGE = "out-of-range";

    /**
     * Refuses NaN, ends out of order and a unit that is not positive.
     *
     * @param name what is bounded, as it stands in a sentence: {@code "water density by Kell (1975)"}
     * @param low lower end, SI
     * @param high upper end, SI
     * @param unit the unit shown to people
     * @param unitInSi how many SI units one shown unit is
     * @param zeroInSi where the shown scale has its zero, SI: 273.15 for C, else 0
     * @throws IllegalArgumentException for such
     */
    public ValidityRange {
        if (!(low <= high)) {
            throw new IllegalArgumentException(name + ": ends out of order: " + low + ", " + high);
        }
        if (!(unitInSi > 0 && Math.abs(zeroInSi) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + ": a unit is a positive number of SI units, not " + unitInSi);
        }
    }

    /**
     * {@return a range shown in a unit that is a multiple of the SI unit; low and high in SI}
     *
     * @param name what is bounded, as it stands in a sentence: {@code "water density by Kell (1975)"}
     * @param low lower end, SI
     * @param high upper end, SI
     * @param unit the unit shown to people
     * @param unitInSi how many SI units one shown unit is
     */
    public static ValidityRange of(String name, double low, double high, String unit, double unitInSi) {
        return new ValidityRange(name, low, high, unit, unitInSi, 0);
    }

    /**
     * {@return a range of temperature; low and high in kelvin, shown in C}
     *
     * @param name what is bounded, as it stands in a sentence: {@code "water density by Kell (1975)"}
     * @param lowKelvin lowest temperature, K
     * @param highKelvin highest temperature, K
     */
    public static ValidityRange ofTemperature(String name, double lowKelvin, double highKelvin) {
        return new ValidityRange(name, lowKelvin, highKelvin, "C", 1, Units.ZERO_CELSIUS_K);
    }

    /**
     * {@return whether x (SI) lies in the range; false for NaN}
     *
     * @param x value, SI
     */
    public boolean contains(double x) {
        return x >= low && x <= high;
    }

    /**
     * {@return a notice where x (SI) lies outside the range or is NaN; empty inside}
     *
     * @param x value, SI
     */
    public Optional<Notice> notice(double x) {
        if (contains(x)) {
            return Optional.empty();
        }
        return Optional.of(new Notice(OUTSIDE, name + " holds from " + allowed() + "; " + show(x) + " lies outside."));
    }

    /**
     * {@return the value x (SI) itself}
     *
     * @param field what the person gave, as the refusal names it
     * @param x value, SI
     * @throws Refusal {@code out-of-range} where x lies outside or is NaN
     */
    public double require(String field, double x) {
        return require(field, x, "");
    }

    /**
     * {@return as {@link #require(String, double)}, with a correction, a whole sentence}
     *
     * @param field what the person gave, as the refusal names it
     * @param x value, SI
     * @param hint how to correct it, a whole sentence; empty for none
     * @throws Refusal {@code out-of-range} where x lies outside or is NaN
     */
    public double require(String field, double x, String hint) {
        if (!contains(x)) {
            throw new Refusal(OUT_OF_RANGE, field, show(x), allowed(), hint);
        }
        return x;
    }

    /** {@return the range in the unit for people: {@code "0 to 60 C"}} */
    public String allowed() {
        return number(low) + " to " + show(high);
    }

    /**
     * {@return the value x (SI) in the unit for people, with the unit, to 6 digits}
     *
     * @param x value, SI
     */
    public String show(double x) {
        return unit.isEmpty() ? number(x) : number(x) + " " + unit;
    }

    /** The value in the shown unit, without it, to 6 digits. */
    private String number(double x) {
        double shown = (x - zeroInSi) / unitInSi;
        return Double.isFinite(shown) ? Decimals.text(shown, 6) : Double.toString(shown);
    }
}
