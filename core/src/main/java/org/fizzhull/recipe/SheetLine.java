package org.fizzhull.recipe;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;

/**
 * The words and units of suppliers' data sheets: {@code bulk density 550-650 g/L; specific gravity 2.6; D50 5 um}.
 *
 * <p>Words that a sheet uses for one of the table's properties lead to it; anything else on the line is refused, so that
 * nothing is left out unseen. "Bulk density" alone is taken as the loose one. A range stands for its middle.
 */
final class SheetLine {
    /** One pound per cubic foot, kg/m3: 0.45359237 kg over (0.3048 m)3, both exact. */
    private static final double POUND_PER_CUBIC_FOOT = 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    /** Names of pounds per cubic foot. */
    private static final String[] POUNDS = {"lb/ft3", "lbs/ft3", "lb/cu ft", "pcf"};

    /** Keys of {@link Property} by the words of sheets, in lower case. */
    private static final Map<String, String> WORDS = new HashMap<>();

    static {
        mean(
                Property.LOOSE_DENSITY,
                "loose bulk density",
                "aerated bulk density",
                "poured density",
                "apparent density",
                "bulk density");
        mean(Property.TAPPED_DENSITY, "tapped bulk density", "tap density", "packed bulk density");
        mean(Property.TRUE_DENSITY, "specific gravity", "relative density", "particle density", "skeletal density");
        mean(Property.GRAIN_SIZE, "median particle size", "mean particle size", "particle size", "d50");
        mean(Property.MOLAR_MASS, "molecular weight");
        mean(Property.OIL_ABSORPTION, "oil absorption value");
    }

    private SheetLine() {}

    /** Sets the property that words of sheets mean. */
    private static void mean(Property property, String... words) {
        for (String word : words) {
            WORDS.put(word, property.key());
        }
    }

    /**
     * {@return the name of the property that a word of a sheet means; the word itself, without blanks around it, where it is
     * none}
     *
     * @param word key of an own ingredient, as written
     */
    static String key(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        return WORDS.getOrDefault(plain, word.strip());
    }

    /**
     * Splits a line of a sheet at its semicolons.
     *
     * @param field what is read, for the refusal
     * @param line the words and values of a sheet
     * @return values as written, by the names of {@link Property}, in the order of the line
     * @throws Refusal {@code unknown-key} for a part that begins with no known word
     */
    static Map<String, String> read(String field, String line) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String part : line.split(";", -1)) {
            if (part.isBlank()) {
                continue;
            }
            String text = part.strip();
            String word = longest(text.toLowerCase(Locale.ROOT));
            if (word.isEmpty()) {
                throw new Refusal(
                        "unknown-key",
                        field,
                        text,
                        "lines such as   bulk density 0.55 g/cm3; specific gravity 2.6; D50 5 um",
                        "Leave out of the sheet what is neither a density nor a grain size.");
            }
            String value = text.substring(word.length()).strip();
            values.put(key(word), value.startsWith(":") ? value.substring(1).strip() : value);
        }
        return values;
    }

    /**
     * The longest known word that the text begins with; empty where there is none. The longest, since "bulk density" would
     * otherwise hide "bulk density, tapped" and the like.
     */
    private static String longest(String text) {
        Stream<String> keys =
                Stream.of(Property.values()).map(property -> property.key().toLowerCase(Locale.ROOT));
        return Stream.concat(WORDS.keySet().stream(), keys)
                .filter(text::startsWith)
                .max(Comparator.comparingInt(String::length))
                .orElse("");
    }

    /**
     * {@return a density, kg/m3, in any unit that sheets use; a range stands for its middle}
     *
     * @param field what is read, for the refusal
     * @param text number or range and unit
     * @throws Refusal as {@link QuantityText#parse}
     */
    static double density(String field, String text) {
        String one = range(text);
        for (String pounds : POUNDS) {
            if (one.endsWith(pounds)) {
                String number = one.substring(0, one.length() - pounds.length()).strip();
                return QuantityText.parse(field, number + " kg/m3", Dimension.DENSITY)
                                .value()
                        * POUND_PER_CUBIC_FOOT;
            }
        }
        return QuantityText.parse(field, one, Dimension.DENSITY).value();
    }

    /**
     * {@return {@code 550-650 g/L} as {@code 550 to 650 g/L}, also with an en dash; other text unchanged}
     *
     * @param text value as written
     */
    static String range(String text) {
        String one = text.strip();
        int dash = one.indexOf('-', 1);
        if (dash < 0) {
            dash = one.indexOf('\u2013', 1);
        }
        boolean between = dash > 0
                && isDigit(one.substring(0, dash).stripTrailing(), false)
                && isDigit(one.substring(dash + 1).stripLeading(), true);
        return between
                ? one.substring(0, dash).strip() + " to "
                        + one.substring(dash + 1).strip()
                : one;
    }

    /** Whether the text begins ({@code first}) or ends with a digit. */
    private static boolean isDigit(String text, boolean first) {
        if (text.isEmpty()) {
            return false;
        }
        char c = text.charAt(first ? 0 : text.length() - 1);
        return c >= '0' && c <= '9';
    }
}
