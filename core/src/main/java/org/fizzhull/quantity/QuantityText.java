package org.fizzhull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Objects;
import org.fizzhull.text.Commas;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as people write them: {@code 65 mm}, {@code 2 1/2 in}, {@code 1 lb 2 oz}, {@code 138 g +- 4 g}, {@code 4
 * to 8 g}.
 * <pre>{@code
 * double metres = QuantityText.parseExact("diameter", "2 1/2 in", Dimension.LENGTH);   // 0.0635
 * String text = QuantityText.format(metres, Unit.MILLIMETRE);                          // 63.5 mm
 * }</pre>
 *
 * <p>A single number and unit is rounded once to the nearest double (temperatures twice: number, then zero point), so
 * the same amount in another metric unit has the same bits. A {@code +-} is one standard deviation. The decimal sign is
 * a point. No default unit is ever supposed: a number without one is refused. Stateless.
 */
public final class QuantityText {
    private QuantityText() {}

    /**
     * Reads a quantity with US legal cups and spoons; see {@link #parse(String, String, Dimension, Measures)}.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param dimension what is needed
     * @return the amount, SI
     * @throws Refusal with a code listed in the package description
     */
    public static Amount parse(String field, String text, Dimension dimension) {
        return parse(field, text, dimension, Measures.US_LEGAL);
    }

    /**
     * Reads a quantity, its spread or its range.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param dimension what is needed
     * @param measures what a cup and the spoons hold
     * @return the amount, SI
     * @throws Refusal with a code listed in the package description
     */
    public static Amount parse(String field, String text, Dimension dimension, Measures measures) {
        return parseAny(field, text, measures, dimension);
    }

    /**
     * Reads a quantity of one of several dimensions, such as a mass or a volume of an ingredient.
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param measures what a cup and the spoons hold
     * @param dimensions what is allowed; the amount returned says which it was
     * @return the amount, SI
     * @throws Refusal with a code listed in the package description
     */
    public static Amount parseAny(String field, String text, Measures measures, Dimension... dimensions) {
        return read(field, text, measures, dimensions).amount();
    }

    /**
     * {@return one value in SI with US legal cups and spoons}
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param dimension what is needed
     * @throws Refusal {@code spread-not-allowed} for a spread or a range, else as {@link #parse}
     */
    public static double parseExact(String field, String text, Dimension dimension) {
        return parseExact(field, text, dimension, Measures.US_LEGAL);
    }

    /**
     * {@return one value in SI}
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text what the person wrote
     * @param dimension what is needed
     * @param measures what a cup and the spoons hold
     * @throws Refusal {@code spread-not-allowed} for a spread or a range, else as {@link #parse}
     */
    public static double parseExact(String field, String text, Dimension dimension, Measures measures) {
        return exact(field, text, read(field, text, measures, dimension))
                .amount()
                .value();
    }

    /**
     * {@return the parts of a list between commas, without the blanks around them, one at least}
     *
     * <p>A comma inside a number, as in {@code 38,5 C, 25 cm}, parts nothing: the reader of the part refuses it.
     *
     * @param text a list as a person writes it
     */
    public static List<String> parts(String text) {
        return Commas.parts(text);
    }

    /**
     * {@return whether a comma is inside a number, where people write it for the decimal point, and parts nothing}
     *
     * @param text a list as a person writes it
     * @param at index of the comma
     */
    public static boolean commaInNumber(String text, int at) {
        return Commas.inNumber(text, at);
    }

    /** An amount, and how it was written. */
    static Reading read(String field, String text, Measures measures, Dimension... dimensions) {
        Objects.requireNonNull(measures, "measures is null");
        return new QuantityReader(field, text, measures, dimensions).read();
    }

    /** The same reading, unless it has a spread or is a range. */
    static Reading exact(String field, String text, Reading reading) {
        if (!reading.amount().isExact()) {
            throw new RefusalWords(
                            field, text, new Dimension[] {reading.amount().dimension()})
                    .because("spread-not-allowed", "Write one value, without a spread or a range.");
        }
        return reading;
    }

    /**
     * {@return the unit of that name, such as for {@code mesh(unit=mm)}}
     *
     * @param field option, key or parameter that was read, for the refusal
     * @param text symbol or name of the unit
     * @param dimension what it must measure
     * @throws Refusal {@code unknown-unit} or {@code wrong-dimension}
     */
    public static Unit unit(String field, String text, Dimension dimension) {
        RefusalWords misread = new RefusalWords(field, text, new Dimension[] {dimension});
        Unit unit = whole(text);
        if (unit == null) {
            throw misread.unknownUnit("", text.trim());
        }
        if (unit.dimension() != dimension) {
            throw misread.wrongDimension(unit);
        }
        return unit;
    }

    /**
     * {@return whether a whole word is the name of a unit: what a command line joins to the number before it}
     *
     * @param word one word, without blanks
     */
    public static boolean isUnit(String word) {
        return whole(word) != null;
    }

    /** The unit whose name is all of a text; null where there is none. */
    private static @Nullable Unit whole(String text) {
        Cursor cursor = new Cursor(text);
        Unit unit = UnitNames.take(cursor);
        return cursor.atEnd() ? unit : null;
    }

    /**
     * {@return the shortest text of an SI value in a unit that reads back to the same bits, with US legal cups and
     * spoons}
     *
     * @param si value, SI
     * @param unit unit to write it in
     */
    public static String format(double si, Unit unit) {
        return format(si, unit, Measures.US_LEGAL);
    }

    /**
     * {@return the shortest text of an SI value in a unit that reads back to the same bits}
     *
     * <p>Seventeen digits always suffice, but for a temperature in F, or in C below 137 K, whose last bit may differ.
     *
     * @param si value, SI
     * @param unit unit to write it in
     * @param measures what a cup and the spoons hold
     */
    public static String format(double si, Unit unit, Measures measures) {
        Objects.requireNonNull(measures, "measures is null");
        return number(si, unit, measures, false) + " " + unit.symbol();
    }

    /**
     * {@return an amount with its spread as text that reads back to the same amount, with US legal cups and spoons}
     *
     * @param amount amount with or without spread
     * @param unit unit to write it in, of the amount's dimension
     * @throws IllegalArgumentException for a unit of another dimension
     */
    public static String format(Amount amount, Unit unit) {
        return format(amount, unit, Measures.US_LEGAL);
    }

    /**
     * {@return an amount with its spread as text that reads back to the same amount}
     *
     * @param amount amount with or without spread
     * @param unit unit to write it in, of the amount's dimension
     * @param measures what a cup and the spoons hold
     * @throws IllegalArgumentException for a unit of another dimension
     */
    public static String format(Amount amount, Unit unit, Measures measures) {
        Objects.requireNonNull(measures, "measures is null");
        if (unit.dimension() != amount.dimension()) {
            throw new IllegalArgumentException(unit + " for " + amount);
        }
        String last = " " + unit.symbol();
        if (amount.spread() == Amount.Spread.RECTANGULAR) {
            return number(amount.low(), unit, measures, false) + " to " + number(amount.high(), unit, measures, false)
                    + last;
        }
        String value = number(amount.value(), unit, measures, false) + last;
        return amount.isExact()
                ? value
                : value + " +- " + number(amount.standardDeviation(), unit, measures, true) + last;
    }

    /**
     * {@return the value rounded to significant digits, for people: {@code 138 g}}
     *
     * @param si value, SI
     * @param unit unit to write it in
     * @param digits most significant digits, 1 to 17
     */
    public static String rounded(double si, Unit unit, int digits) {
        return Decimals.text(unit.fromSi(si), digits) + " " + unit.symbol();
    }

    /** The shortest number of a unit that reads back to the same bits: 6, 9, 12 or 15 digits, else 17. */
    private static String number(double si, Unit unit, Measures measures, boolean difference) {
        double near = difference ? si * unit.denominator() / unit.numerator(measures) : unit.fromSi(si, measures);
        for (int digits = 6; digits <= 15; digits += 3) {
            String text = Decimals.text(near, digits);
            if (back(text, unit, measures, difference) == si) {
                return text;
            }
        }
        return unit.hasOffset() && !difference ? Decimals.text(near, 17) : exactly(si, unit, measures);
    }

    /** Seventeen digits of the exact quotient: nearer to it than half the distance of two doubles. */
    private static String exactly(double si, Unit unit, Measures measures) {
        return new BigDecimal(si)
                .multiply(BigDecimal.valueOf(unit.denominator()))
                .divide(BigDecimal.valueOf(unit.numerator(measures)), new MathContext(40))
                .round(new MathContext(17))
                .toString();
    }

    /** What a number of a unit reads back as, SI. */
    private static double back(String text, Unit unit, Measures measures, boolean difference) {
        boolean negative = text.charAt(0) == '-';
        Numeral size = Numeral.decimal(negative ? text.substring(1) : text);
        if (unit.hasOffset() && !difference) {
            return unit.toSi(negative ? -size.value() : size.value());
        }
        double si = size.times(unit.numerator(measures), unit.denominator());
        return negative ? -si : si;
    }
}
