package org.fizzhull.cli.text;

import java.util.Optional;
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
        Optional<Probability> drawn = forecast.probability();
        if (drawn.isPresent()) {
            fates(drawn.get(), forecast, table);
        }
        if (forecast.fizzTime().isPresent()) {
            Interval time = forecast.fizzTime().get();
            table.row("fizzes", about(time) + (drawn.isEmpty() ? "" : band(time)));
        }
    }

    private static void fates(Probability p, Forecast forecast, Table table) {
        if (worth(p.risesLater())) {
            Optional<Interval> rise = forecast.riseTime();
            String when = rise.isPresent() ? ", after " + about(rise.get()) + band(rise.get()) : "";
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
