package org.fizzhull.cli.drying;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.model.DryLogFit;

/**
 * What {@code dry} has to tell.
 *
 * @param forecast of the recipe, after any weighings
 * @param start when it was pressed
 * @param readyBy when it has to be ready
 */
public record DryReport(DryForecast forecast, Optional<LocalDateTime> start, Optional<LocalDateTime> readyBy) {
    /** Time until ready, s. */
    public Optional<Interval> ready() {
        return forecast.ready();
    }

    /** What the weighings say, where there are any and they follow the recipe's course. */
    Optional<DryLogFit> weighed() {
        return forecast.log().filter(DryLogFit::fits);
    }

    /** Share of the draws that are ready when they have to be; empty without both dates. */
    OptionalDouble inTime() {
        if (start.isEmpty() || readyBy.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(forecast.readyWithin(
                (double) Duration.between(start.get(), readyBy.get()).toSeconds()));
    }

    /** The moment so many seconds after pressing. */
    Optional<LocalDateTime> at(double seconds) {
        return start.map(pressed -> pressed.plusSeconds(Math.round(seconds)));
    }
}
