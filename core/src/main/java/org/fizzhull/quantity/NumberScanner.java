package org.fizzhull.quantity;

/**
 * Reads one unsigned number: {@code 65}, {@code 6.5}, {@code .5}, {@code 1e3}, {@code 2 1/2}, {@code 2½}.
 * <pre>
 *  number  = decimal | [digits [" "]] vulgar | [digits " "] digits "/" digits
 *  decimal = (digits ["." digits] | "." digits) [("e" | "E") ["+" | "-"] digits]
 *  vulgar  = one of ½ ¼ ¾ ⅓ ⅔ ⅛ ⅜ ⅝ ⅞
 * </pre>
 * What is almost a number, two points, a decimal comma, a gap between thousands, is refused with a correction. Leaves
 * the cursor behind the number. One to a number.
 */
final class NumberScanner {
    /** Digits of each part of a vulgar fraction, so that whole times bottom fits a long. */
    private static final int FRACTION_DIGITS = 9;

    /** Where it reads. */
    private final Cursor cursor;
    /** Words its refusals. */
    private final RefusalWords misread;

    NumberScanner(Cursor cursor, RefusalWords misread) {
        this.cursor = cursor;
        this.misread = misread;
    }

    /** Whether a number can begin with a character. */
    static boolean starts(char c) {
        return Cursor.isDigit(c) || c == '.' || vulgar(c) != 0;
    }

    /** The number that stands here, as an exact ratio; refuses what goes on as if it were more of it. */
    Numeral read() {
        Numeral number = number();
        // what goes on as if it were more of the number
        char next = cursor.here();
        if (next == ',') {
            throw misread.comma(cursor.text, cursor.at);
        }
        if (next == '.') {
            throw misread.notANumber("There is a point too many.");
        }
        if (next == '/' && Cursor.isDigit(cursor.ahead(1))) {
            throw misread.notANumber("A fraction is made of two whole numbers.");
        }
        if (starts(next) || (next == ' ' && starts(cursor.ahead(1)))) {
            throw misread.notANumber("Two numbers stand side by side; thousands are written without a gap.");
        }
        return number;
    }

    /** Why nothing is read where no number stands. */
    private String noNumber() {
        return cursor.text.substring(cursor.at).chars().anyMatch(c -> Cursor.isDigit((char) c))
                ? "The number has to come first."
                : "There is no number.";
    }

    /** The number itself. */
    private Numeral number() {
        char c = cursor.here();
        if (vulgar(c) != 0) {
            return vulgarAfter(Numeral.whole(0));
        }
        if (c == ',') {
            throw misread.comma(cursor.text, cursor.at);
        }
        if (!Cursor.isDigit(c) && c != '.') {
            throw misread.notANumber(c == 0 ? "The number is missing." : noNumber());
        }
        // digits, point, digits, exponent
        int from = cursor.at;
        digits();
        boolean whole = cursor.here() != '.';
        if (!whole) {
            cursor.at++;
            if (!Cursor.isDigit(cursor.here())) {
                throw misread.notANumber("A point needs a digit after it.");
            }
            digits();
        }
        if (exponent()) {
            whole = false;
        }
        Numeral decimal = Numeral.decimal(cursor.text.substring(from, cursor.at));
        return whole ? fractionAfter(decimal, from) : decimal;
    }

    /**
     * A whole number with the fraction that follows it, with or without a space, or the number itself where none does.
     */
    private Numeral fractionAfter(Numeral decimal, int from) {
        // one space may part the whole number from its fraction
        int gap = cursor.here() == ' ' ? 1 : 0;
        if (vulgar(cursor.ahead(gap)) != 0) {
            cursor.at += gap;
            return vulgarAfter(small(decimal, from));
        }
        if (cursor.here() == '/' && Cursor.isDigit(cursor.ahead(1))) {
            return over(Numeral.whole(0), small(decimal, from));
        }
        if (gap == 1 && Cursor.isDigit(cursor.ahead(1))) {
            int back = cursor.at;
            int top = ++cursor.at;
            digits();
            if (cursor.here() == '/' && Cursor.isDigit(cursor.ahead(1))) {
                return over(small(decimal, from), small(Numeral.decimal(cursor.text.substring(top, cursor.at)), top));
            }
            cursor.at = back;
        }
        return decimal;
    }

    /** A fraction whose top has been read; the cursor stands on the stroke. */
    private Numeral over(Numeral whole, Numeral top) {
        int from = ++cursor.at;
        digits();
        Numeral bottom = small(Numeral.decimal(cursor.text.substring(from, cursor.at)), from);
        if (bottom.isZero()) {
            throw misread.notANumber("A fraction over zero is no number.");
        }
        return Numeral.fraction(whole, top, bottom);
    }

    /** A part of a fraction, unless it has too many digits. */
    private Numeral small(Numeral whole, int from) {
        if (cursor.at - from > FRACTION_DIGITS) {
            throw misread.notANumber("The fraction is too long; write it with a point.");
        }
        return whole;
    }

    /** A whole number and the one-character fraction that stands here. */
    private Numeral vulgarAfter(Numeral whole) {
        int ratio = vulgar(cursor.here());
        cursor.at++;
        return Numeral.fraction(whole, Numeral.whole(ratio / 10), Numeral.whole(ratio % 10));
    }

    /** Ten times the top plus the bottom of a one-character fraction, or 0. */
    private static int vulgar(char c) {
        return switch (c) {
            case '½' -> 12;
            case '¼' -> 14;
            case '¾' -> 34;
            case '⅓' -> 13;
            case '⅔' -> 23;
            case '⅛' -> 18;
            case '⅜' -> 38;
            case '⅝' -> 58;
            case '⅞' -> 78;
            default -> 0;
        };
    }

    /** Moves past digits. */
    private void digits() {
        while (Cursor.isDigit(cursor.here())) {
            cursor.at++;
        }
    }

    /** Moves past an exponent; an e that is none, as of a unit, is left. */
    private boolean exponent() {
        char c = cursor.here();
        if (c != 'e' && c != 'E') {
            return false;
        }
        char sign = cursor.ahead(1);
        int skip = sign == '+' || sign == '-' ? 2 : 1;
        if (!Cursor.isDigit(cursor.ahead(skip))) {
            return false;
        }
        cursor.at += skip;
        digits();
        return true;
    }
}
