package org.fizzhull.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Reads one text by hand, left to right:
 *
 * <pre>
 * text   = side | side ("+-" | "+/-" | "±") side | side "to" side
 * side   = ["+" | "-"] part { part }      parts of one dimension, the largest unit first
 * part   = number [" "] unit              the first side may leave its unit to the second
 * number = decimal | n "/" m | whole " " n "/" m | [whole] "½"
 * </pre>
 *
 * <p>Numbers stay exact ratios ({@link Numeral}) until they are multiplied by their unit, so that a value is rounded
 * once. What does not fit is refused by {@link RefusalWords}. Range: texts of up to 120 characters, sizes from 1e-11 to 1e11
 * in SI, and zero. One to a text.
 */
final class QuantityReader {
    /** Characters of a text that is read: a quantity is never longer. */
    private static final int LONGEST_TEXT = 120;

    /**
     * Largest size that can be meant, SI: a hundred million tonnes, or three thousand years. What lies beyond is a
     * slip, and would overflow sooner or later.
     */
    private static final double LARGEST = 1e11;

    /** Smallest size that can be meant, SI: a hundredth of a microgram, or a fraction of 1e-11. */
    private static final double SMALLEST = 1e-11;

    /** Where it reads. */
    private final Cursor cursor;
    /** Words its refusals. */
    private final RefusalWords misread;
    /** What a cup and the spoons hold. */
    private final Measures measures;
    /** What may be measured. */
    private final Dimension[] wanted;

    QuantityReader(String field, String text, Measures measures, Dimension... wanted) {
        this(text, measures, new RefusalWords(field, text, wanted), wanted);
    }

    /** A reader that refuses in given words. */
    QuantityReader(String text, Measures measures, RefusalWords misread, Dimension... wanted) {
        this.misread = misread;
        if (text.length() > LONGEST_TEXT) {
            throw misread.notANumber("The text is too long.");
        }
        this.cursor = new Cursor(text);
        this.measures = measures;
        this.wanted = wanted;
    }

    /** The whole text as an amount. */
    Reading read() {
        if (cursor.atEnd()) {
            throw misread.missingValue();
        }
        // one side, a spread or a range
        Side first = side();
        if (cursor.atEnd()) {
            Amount amount =
                    Amount.exact(first.unit().dimension(), first.si(false)).written(first.step());
            return new Reading(amount, first.parts == 1 ? first.unit : null, first.signed(first.number.value()));
        }
        if (cursor.take("+-") || cursor.take("+/-") || cursor.take("±")) {
            return new Reading(spread(first, second(first)), null, 0);
        }
        if (cursor.startsWord("to") && cursor.take("to")) {
            return new Reading(range(first, second(first)), null, 0);
        }
        throw unexpected(first);
    }

    /** The refusal of what follows a side and is neither its spread nor the end of a range. */
    private Refusal unexpected(Side first) {
        // a dash for a range
        char next = cursor.here();
        if (next == '-' || next == '–' || next == '—') {
            return misread.dash(cursor.before(), cursor.rest().substring(1).trim());
        }
        if (first.unit == null) {
            return misread.unknownUnit(first.written, cursor.word());
        }
        return misread.extra(cursor.before(), cursor.rest());
    }

    /**
     * The side after {@code +-} or {@code to}, up to the end of the text; its unit holds for a first side that has
     * none, as in {@code 4 to 8 g}.
     */
    private Side second(Side first) {
        cursor.atEnd();
        Side second = side();
        if (!cursor.atEnd()) {
            throw unexpected(second);
        }
        if (first.unit == null && second.parts == 1) {
            first.unit = second.unit; // 4 to 8 g
        }
        return second;
    }

    /** A normal spread from its two sides. */
    private Amount spread(Side mean, Side deviation) {
        double value = mean.si(false);
        double width = deviation.si(true);
        sameDimension(mean, deviation);
        if (deviation.negative) {
            throw misread.because(
                    "negative-spread",
                    "A spread is a size: write +- " + deviation.written + " "
                            + deviation.unit().symbol() + ".");
        }
        return Amount.normal(mean.unit().dimension(), value, width).written(mean.step());
    }

    /** A range from its two sides. */
    private Amount range(Side low, Side high) {
        double from = low.si(false);
        double to = high.si(false);
        sameDimension(low, high);
        if (!(from <= to)) {
            throw misread.because("range-order", "Write the smaller end first.");
        }
        return Amount.between(low.unit().dimension(), from, to);
    }

    /** Refuses two sides of different dimensions. */
    private void sameDimension(Side one, Side other) {
        if (one.unit().dimension() != other.unit().dimension()) {
            throw misread.because("wrong-dimension", "Write both in units of the same kind.");
        }
    }

    /** One side: a sign and one or more numbers with units. */
    private Side side() {
        Side side = new Side();
        char sign = cursor.here();
        if (sign == '-' || sign == '+') {
            side.negative = sign == '-';
            cursor.at++;
            cursor.atEnd();
            char again = cursor.here();
            if (again == '-' || again == '+') {
                throw misread.notANumber("There are two signs.");
            }
        }
        do {
            part(side);
        } while (side.unit != null && !cursor.atEnd() && NumberScanner.starts(cursor.here()));
        return side;
    }

    /** One number with its unit, added to a side. */
    private void part(Side side) {
        int from = cursor.at;
        side.number = new NumberScanner(cursor, misread).read();
        side.written = cursor.text.substring(from, cursor.at);
        Unit before = side.unit;
        side.unit = unit(side.written);
        side.parts++;
        if (before != null) {
            follow(before, side.unit());
        }
        if (side.unit != null) {
            side.total += linear(side.number, side.unit);
        }
    }

    /** The unit that stands here, or null where the number ends the text or its side. */
    private @Nullable Unit unit(String number) {
        if (cursor.atEnd() || "+-±–—".indexOf(cursor.here()) >= 0 || cursor.startsWord("to")) {
            return null;
        }
        Unit unit = UnitNames.take(cursor);
        if (unit == null) {
            throw misread.unknownUnit(number, cursor.word());
        }
        if (!RefusalWords.among(unit.dimension(), wanted)) {
            throw misread.wrongDimension(unit);
        }
        return unit;
    }

    /** A compound is of one dimension, has no zero point of its own, and goes from large to small. */
    private void follow(Unit before, Unit unit) {
        if (unit.dimension() != before.dimension() || unit.hasOffset() || before.hasOffset()) {
            throw misread.because(
                    "extra-text", before.symbol() + " and " + unit.symbol() + " do not add up: write one quantity.");
        }
        if (unit == before) {
            throw misread.because("unit-order", unit.symbol() + " is there twice: write one quantity.");
        }
        if (!(linear(Numeral.whole(1), unit) < linear(Numeral.whole(1), before))) {
            throw misread.because("unit-order", "Write " + unit.symbol() + " before " + before.symbol() + ".");
        }
    }

    /** A number of a unit in SI, its zero point left out. */
    private double linear(Numeral number, Unit unit) {
        return number.times(unit.numerator(measures), unit.denominator());
    }

    /** One side of a text: a number and unit, or several that add up. */
    private final class Side {
        /** Whether a minus stands before it. */
        private boolean negative;
        /** Numbers with their units so far. */
        private int parts;
        /** Their sum, SI, zero points left out. */
        private double total;
        /** The last number. */
        private Numeral number = Numeral.whole(0);
        /** The last number as it was written. */
        private String written = "";
        /** The last unit; null where the number stands alone. */
        private @Nullable Unit unit;

        /** The unit; refuses a number without one. */
        Unit unit() {
            Unit known = unit;
            if (known == null) {
                throw misread.missingUnit(written, number.value());
            }
            return known;
        }

        /** One of the last place that is written, SI, as a difference. */
        double step() {
            return linear(number.lastPlace(), unit());
        }

        /** A size with the sign of this side. */
        double signed(double size) {
            return negative ? -size : size;
        }

        /** SI, as a value or as a difference of values, which has no zero point. */
        double si(boolean difference) {
            // a temperature with its zero point; a difference of temperatures without
            boolean shifted = unit().hasOffset() && !difference;
            double linear = parts > 1 ? total : linear(number, unit());
            double si = shifted ? unit().toSi(signed(number.value())) : signed(linear);
            boolean tiny = Math.abs(linear) < SMALLEST && !(parts == 1 ? number.isZero() : linear == 0);
            if (!(Math.abs(si) <= LARGEST) || tiny) {
                throw misread.because(
                        "not-representable",
                        "The number is too " + (tiny ? "small" : "large")
                                + " for anything here: check it and its unit.");
            }
            return si;
        }
    }
}
