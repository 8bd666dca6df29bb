package org.fizzhull.cli.floating;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.result.Probability;

/** What becomes of a piece after the drop: later risers, later sinkers, and how long it fizzes. */
public final class OutcomeText {
    /** Below this share a fate is not worth a line. */
    private static final double WORTH_NAMING = 0.005;

    private static final double MINUTE = 60;
    private static final double LONG = 90;

    private OutcomeText() {}

    static void rows(Forecast forecast, Table table) {
        Optional<Probability> drawn = forecast.probability();
        if (drawn.isPresent()) {
            outcomes(drawn.get(), forecast, table);
        }
        if (forecast.fizzTime().isPresent()) {
            Interval time = forecast.fizzTime().get();
            String water = NumberText.celsius(forecast.question().bath().temperature()) + " water";
            table.row("fizzes", about(time) + (drawn.isEmpty() ? "" : band(time)) + " in " + water);
        }
    }

    private static void outcomes(Probability p, Forecast forecast, Table table) {
        table.row("at once", chance(p.floatsAtOnce()) + " that it is up 20" + NumberText.UNIT + "s after the drop");
        if (worth(p.risesLater())) {
            Optional<Interval> rise = forecast.riseTime();
            String when = rise.isPresent() ? " after " + duration(rise.get().median()) + band(rise.get()) : "";
            table.row("later", chance(p.risesLater().getAsDouble()) + ": sinks, rises" + when);
        }
        if (worth(p.sinksLater())) {
            table.row("goes under", chance(p.sinksLater().getAsDouble()) + " after floating" + last(p));
        }
    }

    /** What goes under at the very end has floated to the end. */
    private static String last(Probability p) {
        double early = p.floatsAtOnce() - p.floatsToTheEnd();
        return p.sinksLater().orElse(0) - early > WORTH_NAMING
                ? ", " + FloatSentence.chance(early) + " before its last tenth"
                : "";
    }

    private static String chance(double probability) {
        return "chance " + FloatSentence.chance(probability);
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
    public static String duration(double seconds) {
        return seconds < LONG
                ? NumberText.whole(seconds) + NumberText.UNIT + 's'
                : NumberText.tenths(seconds / MINUTE) + NumberText.UNIT + "min";
    }
}
