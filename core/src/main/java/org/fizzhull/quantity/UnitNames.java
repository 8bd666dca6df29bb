package org.fizzhull.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.text.NearName;
import org.jspecify.annotations.Nullable;

/**
 * Finds the unit at a place in a text, and, where there is none, the one that was probably meant. Names are
 * case-sensitive, since mg and Mg are not the same; the longest name that fits is taken, so that {@code min} is no
 * metre. Stateless.
 */
final class UnitNames {
    /** Kept, since {@code values()} copies at each call. */
    private static final Unit[] UNITS = Unit.values();

    private UnitNames() {}

    /** Takes the unit with the longest name that stands here and ends there; null, and nothing taken, if none does. */
    static @Nullable Unit take(Cursor cursor) {
        Unit found = null;
        int longest = 0;
        for (Unit unit : UNITS) {
            for (String name : unit.rawNames()) {
                if (name.length() > longest
                        && cursor.text.startsWith(name, cursor.at)
                        && endsAt(cursor.text, cursor.at + name.length(), name)) {
                    found = unit;
                    longest = name.length();
                }
            }
        }
        cursor.at += longest;
        return found;
    }

    /** Whether a name can end here: {@code 1h30min} goes on with a number and its unit, {@code cm2} does not. */
    private static boolean endsAt(String text, int end, String name) {
        if (end == text.length()) {
            return true;
        }
        // digits may follow only as the number of another unit, letters not at all
        char next = text.charAt(end);
        if (Cursor.isDigit(next)) {
            int i = end;
            while (i < text.length() && (Cursor.isDigit(text.charAt(i)) || text.charAt(i) == '.')) {
                i++;
            }
            char last = name.charAt(name.length() - 1);
            return Character.isLetter(last) && i < text.length() && Character.isLetter(text.charAt(skip(text, i)));
        }
        return !Character.isLetter(next) && "/^°%\"'_.*".indexOf(next) < 0;
    }

    /** The place after a space, if there is one with more behind it. */
    private static int skip(String text, int from) {
        return text.charAt(from) == ' ' && from + 1 < text.length() ? from + 1 : from;
    }

    /** A sentence for words that mean two things, or are no measure; else empty. */
    static String twoMeanings(String token) {
        if (token.length() > 1 && token.charAt(0) == ':' && Cursor.isDigit(token.charAt(1))) {
            return "A colon could part minutes and seconds or hours and minutes: write 3 min 20 s, or 3 h 20 min.";
        }
        return switch (token.toLowerCase(Locale.ROOT)) {
            case "\"", "''", "\u2033", "\u201d" -> "Write in for inches.";
            case "'", "\u2032", "\u2019" -> "Write ft for feet.";
            case "gal", "gallon", "gallons", "pt", "pint", "pints", "qt", "quart", "quarts" ->
                "It differs between the US and the UK: write L or mL.";
            case "gr" -> "gr could be grams or grains: write g.";
            case "t" -> "It could be a teaspoon or a tablespoon: write tsp or tbsp.";
            case "mg/l", "ppm" -> "Of what? Alkalinity is mg/L as CaCO3, as the water company writes it, or mmol/L.";
            case "dh", "°dh" -> "That is hardness in all; its carbonate part counts here: write dKH, or mmol/L.";
            case "month", "months", "year", "years" -> "It has no fixed length: write days or weeks, such as 60 d.";
            case "pinch", "dash", "handful" -> "It has no agreed size: weigh it, or write tsp.";
            default -> "";
        };
    }

    /** The symbol of the nearest name among units of these dimensions; empty when none is near. */
    static String nearest(String token, Dimension... wanted) {
        String lower = token.toLowerCase(Locale.ROOT);
        List<String> names = new ArrayList<>();
        List<String> symbols = new ArrayList<>();
        for (Unit unit : UNITS) {
            if (RefusalWords.among(unit.dimension(), wanted)) {
                for (String name : unit.rawNames()) {
                    names.add(name.toLowerCase(Locale.ROOT));
                    symbols.add(unit.symbol());
                }
            }
        }
        String near = NearName.of(lower, names);
        return near.isEmpty() ? "" : symbols.get(names.indexOf(near));
    }
}
