package org.fizzhull.cli.text;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.WeighingLog;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;

/**
 * What {@code dry} has to tell.
 *
 * @param forecast of the recipe
 * @param log fit to the weighings, if there are any
 * @param weighed name of the piece that log is of
 * @param start when it was pressed
 * @param sellBy when it has to be ready
 */
public record DryReport(
        DryForecast forecast,
        Optional<WeighingLog> log,
        String weighed,
        Optional<LocalDateTime> start,
        Optional<LocalDateTime> sellBy) {
    private static final double MISFIT = 2;

    /** Time until ready, s: by the weighings where there are any. */
    public Optional<Interval> ready() {
        return fits() ? log.map(WeighingLog::readyAfter) : forecast.ready();
    }

    /** Whether there are weighings and they follow the recipe's course. */
    public boolean fits() {
        return log.isPresent() && log.get().misfit() <= MISFIT;
    }

    /** Share of the draws that are not ready within 60 days. */
    double late() {
        return fits() ? 0 : 1 - forecast.readyWithin(Double.MAX_VALUE);
    }

    /** Share of the draws that are ready when they have to be; empty without both dates. */
    OptionalDouble inTime() {
        if (start.isEmpty() || sellBy.isEmpty() || fits()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(forecast.readyWithin(
                (double) Duration.between(start.get(), sellBy.get()).toSeconds()));
    }

    /** The moment so many seconds after pressing. */
    Optional<LocalDateTime> at(double seconds) {
        return start.map(pressed -> pressed.plusSeconds(Math.round(seconds)));
    }

    /** The forecast's notices and those of the log. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(forecast.notices());
        if (log.isPresent() && !fits()) {
            notices.add(new Notice(
                    "log-misfit",
                    "still_to_go_g is null: the weighings do not follow this recipe's course in this room. Check the"
                            + " air, the recipe and the weights."));
        }
        return notices;
    }
}
