package org.fizzhull.cli.text;

import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.Probability;

/** What becomes of a piece after the drop: later risers, later sinkers, and how long it fizzes. */
final class FateText {
    /** Below this share a fate is not worth a line. */
    private static final double WORTH_NAMING = 0.005;

    private static final double MINUTE = 60;
    private static final double LONG = 90;

    private FateText() {}

    static void rows(Forecast forecast, Table table) {
        forecast.probability().ifPresent(p -> fates(p, forecast, table));
        forecast.fizzTime()
                .ifPresent(time -> table.row(
                        "fizzes", about(time) + (forecast.probability().isEmpty() ? "" : band(time))));
    }

    private static void fates(Probability p, Forecast forecast, Table table) {
        if (worth(p.risesLater())) {
            String when = forecast.riseTime()
                    .map(time -> ", after " + about(time) + band(time))
                    .orElse("");
            table.row(
                    "rises later",
                    "of 100 pieces " + Say.ofHundred(p.risesLater().getAsDouble()) + " sink first and come up" + when);
        }
        if (worth(p.sinksLater())) {
            table.row(
                    "sinks later",
                    "of 100 pieces " + Say.ofHundred(p.sinksLater().getAsDouble())
                            + " float at once and sink before they are gone");
        }
    }

    private static boolean worth(OptionalDouble share) {
        return share.isPresent() && share.getAsDouble() > WORTH_NAMING;
    }

    private static String about(Interval time) {
        return "about " + duration(time.median());
    }

    private static String band(Interval time) {
        return " (" + duration(time.low()) + " to " + duration(time.high()) + ')';
    }

    /** Seconds up to a minute and a half, then minutes. */
    static String duration(double seconds) {
        return seconds < LONG ? Say.whole(seconds) + Say.UNIT + 's' : Say.tenths(seconds / MINUTE) + Say.UNIT + "min";
    }
}
