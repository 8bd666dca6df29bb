package org.fizzhull.cli.deciding;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fizzhull.decide.why.Seen;
import org.fizzhull.decide.why.Why;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * What was measured on the batch that went wrong, as it is typed: {@code across 67 mm, 141 g, fizzed 4 min, room 70 %, lost
 * 2 g}, each at most once. A bare weight is that of a piece as it went into the bath.
 */
final class SeenText {
    private static final String ALLOWED =
            "readings such as across 67 mm, 141 g, fizzed 4 min, room 70 %, lost 2 g, commas between";

    /** First word of a reading, and what it is. */
    private static final Map<String, Why.Check> WORDS = words();

    private SeenText() {}

    private static Map<String, Why.Check> words() {
        Map<String, Why.Check> words = new LinkedHashMap<>();
        words.put("across ", Why.Check.MEASURE_ACROSS);
        words.put("fizzed ", Why.Check.TIME_THE_FIZZ);
        words.put("room ", Why.Check.READ_A_HYGROMETER);
        words.put("lost ", Why.Check.WEIGH_AFTER_TWO_DAYS);
        return words;
    }

    static Seen read(String option, String text) {
        Seen seen = Seen.nothing();
        for (String reading : QuantityText.parts(text)) {
            if (reading.isEmpty()) {
                continue;
            }
            Why.Check check = Why.Check.WEIGH_A_PIECE;
            String value = reading;
            for (Map.Entry<String, Why.Check> word : WORDS.entrySet()) {
                if (reading.startsWith(word.getKey())) {
                    check = word.getValue();
                    value = reading.substring(word.getKey().length()).strip();
                }
            }
            if (seen.reading(check).isPresent()) {
                throw new Refusal("repeated", option, reading, "each reading once", "Leave one of the two out.");
            }
            seen = seen.with(check, value(option, check, reading, value));
        }
        return seen;
    }

    private static double value(String option, Why.Check check, String reading, String value) {
        Allowed allowed = switch (check) {
            case WEIGH_A_PIECE, WEIGH_AFTER_TWO_DAYS -> Allowed.above(0, Unit.GRAM);
            case MEASURE_ACROSS -> Allowed.above(0, Unit.MILLIMETRE);
            case TIME_THE_FIZZ -> Allowed.above(0, Unit.SECOND);
            case READ_A_HYGROMETER -> Allowed.aboveUpTo(0, 100, Unit.PERCENT);
        };
        if (!value.isEmpty() && Character.isLetter(value.charAt(0))) {
            throw new Refusal(
                    "unreadable", option, reading, ALLOWED, "Start a reading with its word, then the number.");
        }
        return allowed.parseExact(option, value);
    }
}
