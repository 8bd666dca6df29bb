package org.fizzhull.answer.body;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.check.Given;

/**
 * A drying forecast with its dates, which the physics does not know. Local time without a zone: what the maker's clock
 * shows. Immutable.
 *
 * @param forecast drying of the recipe, after any weighings
 * @param start when the piece was pressed, local time; empty where no date was given
 * @param readyBy when it has to be ready, local time; empty where no date was given
 */
public record DryReport(DryForecast forecast, Optional<LocalDateTime> start, Optional<LocalDateTime> readyBy) {
    /**
     * Refuses what is missing.
     *
     * @param forecast drying of the recipe, after any weighings
     * @param start when the piece was pressed, local time; empty where no date was given
     * @param readyBy when it has to be ready, local time; empty where no date was given
     */
    public DryReport {
        Given.all("forecast, start, readyBy", forecast, start, readyBy);
    }

    /** {@return the time until ready, s; empty where it is not within 60 days} */
    public Optional<Interval> ready() {
        return forecast.ready();
    }

    /** {@return the fit of the course to the weighings, where there are any and it fits} */
    public Optional<DryLog.Fit> weighed() {
        return forecast.log().filter(DryLog.Fit::fits);
    }

    /** {@return the share of the draws that are ready when they have to be, 0 to 1; empty unless both dates are given} */
    public OptionalDouble inTime() {
        if (start.isEmpty() || readyBy.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(forecast.readyWithin(
                (double) Duration.between(start.get(), readyBy.get()).toSeconds()));
    }

    /**
     * {@return the moment a time after pressing; empty without a start}
     *
     * @param seconds time since pressing, s
     */
    public Optional<LocalDateTime> at(double seconds) {
        Given.finite("seconds", seconds);
        return start.map(pressed -> pressed.plusSeconds(Math.round(seconds)));
    }

    /**
     * {@return a moment to the minute, rounded down: {@code 2026-08-20 18:30}}
     *
     * @param when local time
     */
    public static String minute(LocalDateTime when) {
        return when.truncatedTo(ChronoUnit.MINUTES).toString().replace('T', ' ');
    }
}
