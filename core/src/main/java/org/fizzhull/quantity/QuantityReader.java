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
 */
final class QuantityReader {
    private static final int LONGEST_TEXT = 120;

    /** Far enough below the largest double that a spread or a range cannot leave it. */
    private static final double LARGEST = 1e300;

    private final Cursor cursor;
    private final Misread misread;
    private final Measures measures;
    private final Dimension[] wanted;

    QuantityReader(String field, String text, Measures measures, Dimension... wanted) {
        this.misread = new Misread(field, text, wanted);
        if (text.length() > LONGEST_TEXT) {
            throw misread.notANumber("The text is too long.");
        }
        this.cursor = new Cursor(text);
        this.measures = measures;
        this.wanted = wanted;
    }

    Reading read() {
        if (cursor.atEnd()) {
            throw misread.missingValue();
        }
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

    private Refusal unexpected(Side first) {
        char next = cursor.here();
        if (next == '-' || next == '–' || next == '—') {
            String low = cursor.before();
            String high = cursor.rest().substring(1).trim();
            return misread.because(
                    "range-dash", "A dash could be a minus; for a range write " + low + " to " + high + ".");
        }
        if (first.unit == null) {
            return misread.unknownUnit(first.written, cursor.word());
        }
        return misread.because("extra-text", "Leave out " + cursor.rest() + " after " + cursor.before() + ".");
    }

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

    private Amount range(Side low, Side high) {
        double from = low.si(false);
        double to = high.si(false);
        sameDimension(low, high);
        if (!(from <= to)) {
            throw misread.because("range-order", "Write the smaller end first.");
        }
        return Amount.between(low.unit().dimension(), from, to);
    }

    private void sameDimension(Side one, Side other) {
        if (one.unit().dimension() != other.unit().dimension()) {
            throw misread.because("wrong-dimension", "Write both in units of the same kind.");
        }
    }

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
        if (!Misread.among(unit.dimension(), wanted)) {
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

    private double linear(Numeral number, Unit unit) {
        return number.times(unit.numerator(measures), unit.denominator());
    }

    /** One side of a text: a number and unit, or several that add up. */
    private final class Side {
        private boolean negative;
        private int parts;
        private double total;
        private Numeral number = Numeral.whole(0);
        private String written = "";
        private @Nullable Unit unit;

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

        double signed(double size) {
            return negative ? -size : size;
        }

        /** SI, as a value or as a difference of values, which has no zero point. */
        double si(boolean difference) {
            boolean shifted = unit().hasOffset() && !difference;
            double linear = parts > 1 ? total : linear(number, unit());
            double si = shifted ? unit().toSi(signed(number.value())) : signed(linear);
            if (!(Math.abs(si) <= LARGEST) || (linear == 0 && parts == 1 && !number.isZero())) {
                throw misread.because("not-representable", "The number is too large or too small to compute with.");
            }
            return si;
        }
    }
}
