package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.SerialForm;

/** The parts of a {@link Forecast}, which its own package alone puts together. */
record ForecastRecord(
        Question question,
        Factors factors,
        Sampling sampling,
        Piece piece,
        Optional<Interval> mass,
        CriticalWeights critical,
        double limitMass,
        OptionalDouble boatLimitMass,
        Interval spareAtDrop,
        Forecast.GoverningLimit limit,
        FloatVerdict verdict,
        Optional<MeasureNext> next,
        List<FloatingAttitude> attitudes,
        Optional<Probability> probability,
        Optional<Interval> riseTime,
        Optional<Interval> fizzTime,
        Optional<Interval> fizzLost,
        Optional<CriticalWeights.BatchAim> aim,
        List<Forecast.Driver> drivers,
        Optional<MeasurementEffect> narrowing,
        List<Notice> notices)
        implements Forecast {
    ForecastRecord {
        attitudes = List.copyOf(attitudes);
        drivers = List.copyOf(drivers);
        notices = List.copyOf(notices);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
