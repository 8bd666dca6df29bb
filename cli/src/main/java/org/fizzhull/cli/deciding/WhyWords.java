package org.fizzhull.cli.deciding;

import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;

/** Readings of a check, as they are said and as they are typed. */
public final class WhyWords {
    private WhyWords() {}

    /** What a check would show, from to. */
    static String reading(Why.Check check, Interval value) {
        double low = Math.max(0, value.low());
        return switch (check) {
            case WEIGH_A_PIECE, WEIGH_AFTER_TWO_DAYS -> NumberText.grams(low) + " to " + NumberText.grams(value.high());
            case MEASURE_ACROSS -> NumberText.millimetres(low) + " to " + NumberText.millimetres(value.high());
            case TIME_THE_FIZZ -> OutcomeText.duration(low) + " to " + OutcomeText.duration(value.high());
            case READ_A_HYGROMETER -> NumberText.percent(low) + " to " + NumberText.percent(Math.min(1, value.high()));
        };
    }

    /** One reading as it is typed in {@code --seen}. */
    public static String typed(Why.Check check, double si) {
        return switch (check) {
            case WEIGH_A_PIECE -> tenths(Units.inGrams(si)) + " g";
            case MEASURE_ACROSS -> "across " + tenths(Units.inMillimetres(si)) + " mm";
            case TIME_THE_FIZZ -> "fizzed " + NumberText.whole(si) + " s";
            case WEIGH_AFTER_TWO_DAYS -> "lost " + tenths(Units.inGrams(Math.max(1e-4, si))) + " g";
            case READ_A_HYGROMETER -> "room " + NumberText.whole(100 * si) + " %";
        };
    }

    private static String tenths(double value) {
        return Decimals.text(Math.rint(10 * value) / 10, 6);
    }
}
