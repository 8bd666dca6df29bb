package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inCelsius;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;

import java.util.Locale;
import java.util.regex.Pattern;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Decimals;

/**
 * Numbers in the digits a maker can use. Number and unit are joined by a no-break space, which keeps them on one line and
 * is written as a plain space.
 */
public final class NumberText {
    /** Between a number and its unit. */
    public static final char UNIT = '\u00A0';

    /** Pieces below this weigh too little for tenths of a gram, g. */
    private static final double SMALL = 10;

    private static final Pattern PAIR = Pattern.compile("(?<![\\w./])(\\d+(?:\\.\\d+)?) (k?g|[cm]m|C)(?![\\w/])");

    private NumberText() {}

    /** The text with plain spaces. */
    public static String plain(String text) {
        return text.replace(UNIT, ' ');
    }

    /**
     * A sentence of the library, which parts its numbers from their units by plain spaces, with those of masses, lengths and
     * temperatures joined; not the amount in a ratio, such as 30 g/100 g.
     */
    public static String joined(String sentence) {
        return PAIR.matcher(sentence).replaceAll("$1" + UNIT + "$2");
    }

    /** A weight: tenths of a gram below 1 kg, from kg. */
    public static String grams(double kilograms) {
        double g = inGrams(kilograms);
        return Math.abs(g) < 1000 ? tenths(g) + UNIT + "g" : Decimals.text(g, 4) + UNIT + "g";
    }

    /**
     * A weight, or the difference of two, in the digits that the piece it is told of deserves: hundredths of a gram below
     * 10 g, from kg.
     */
    public static String grams(double kilograms, double ofPiece) {
        return inGrams(Math.abs(ofPiece)) < SMALL
                ? Decimals.text(Math.rint(inGrams(kilograms) * 100) / 100, 8) + UNIT + "g"
                : grams(kilograms);
    }

    /** A length in whole millimetres, from m. */
    public static String millimetres(double metres) {
        return whole(inMillimetres(metres)) + UNIT + "mm";
    }

    /** A size as entered, up to two decimals of a millimetre, from m. */
    public static String size(double metres) {
        return Decimals.text(Math.rint(inMillimetres(metres) * 100) / 100, 6) + UNIT + "mm";
    }

    /** A temperature, from K. */
    public static String celsius(double kelvin) {
        return Decimals.text(Math.rint(inCelsius(kelvin) * 10) / 10, 5) + UNIT + "C";
    }

    /** A share as whole per cent. */
    public static String percent(double share) {
        return whole(100 * share) + UNIT + "%";
    }

    /** A chance in per cent; never 0 or 100, which draws cannot know. */
    public static String chance(double probability) {
        long percent = Math.round(100 * probability);
        if (percent >= 100) {
            return "above 99" + UNIT + '%';
        }
        return percent <= 0 ? "below 1" + UNIT + '%' : percent + "" + UNIT + '%';
    }

    /** The share of its fizz that a piece loses before the bath, as every command says it. */
    public static String fizzLost(Interval lost) {
        String middle = Decimals.text(100 * lost.median(), 2) + UNIT + '%';
        return lost.low() == lost.high()
                ? middle
                : middle + " (from " + Decimals.text(100 * lost.low(), 2) + " to " + Decimals.text(100 * lost.high(), 2)
                        + UNIT + "%)";
    }

    /** An amount of the money of the prices. */
    public static String money(double amount) {
        return String.format(Locale.ROOT, "%.2f", amount);
    }

    /** Rounded to one decimal. */
    public static String tenths(double value) {
        return Decimals.text(Math.rint(value * 10) / 10, 8);
    }

    /** Rounded to a whole number. */
    public static String whole(double value) {
        return Long.toString(Math.round(value));
    }

    /** Of 100 pieces, how many; never "all" or "none" where the draws cannot know. */
    public static String ofHundred(double probability) {
        long count = Math.round(100 * probability);
        if (count == 100) {
            return "nearly all";
        }
        return count == 0 ? "hardly any" : "about " + count;
    }
}
