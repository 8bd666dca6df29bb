package org.fizzhull.decide.why;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.piece.Piece;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/**
 * A cause under suspicion: how well it explains what was seen, and what checks would show if it were at work.
 *
 * <p>The density of a reading x under a cause is (1 - s) f(x) + s/x: f normal around what the cause makes of it, or log-normal for
 * a time, s = 0.01 the chance of a slip, spread over a range as wide as the reading.
 *
 * @param cause the cause
 * @param presence prior weight of the cause times the density of all readings: how likely the fault is to be there, relative to
 *     others
 * @param symptoms chances of the symptom with the fault
 * @param way what the piece most likely weighed, and so on, with the fault
 * @param made the design as it then was
 * @param makeup what a piece is made of as it goes into the bath, by the central values
 * @param pieces what its pieces weigh, without the errors of weighing one, kg
 * @param readings what each check shows, spread of the reading included, SI
 */
record Hypothesis(
        Cause cause,
        double presence,
        Symptoms symptoms,
        Why.Way way,
        Design made,
        Piece.Makeup makeup,
        Interval pieces,
        Map<Why.Check, Interval> readings) {
    /** Relative standard deviation of one weighing, with what pieces of a batch differ by (assumed). */
    private static final double WEIGHING = 0.01;

    /** Standard deviation of a ruler, m (assumed). */
    private static final double RULER = 0.7e-3;

    /** Standard deviation of a hygrometer, relative humidity (docs/physics/uncertainty.md, 2). */
    private static final double HYGROMETER = 0.05;

    /** Standard deviation of the logarithm of a fizz time: makers call the end at different moments (assumed). */
    private static final double TIMING = 0.1;

    /** Relative standard deviation of what two days in a dry room take of the water that is left (assumed). */
    private static final double DRIED_SHARE = 0.3;

    /** Standard deviation of the difference of two weighings, kg (assumed). */
    private static final double TWO_WEIGHINGS = 0.3e-3;

    /** A reading that a cause cannot explain is a slip with this chance, over a range as wide as the reading itself. */
    private static final double SLIP = 0.01;

    /**
     * Forecasts the design with the fault and works out what every check would show. Drying is drawn only for symptoms that show in
     * it; else its central values are enough.
     */
    static Hypothesis of(
            Cause cause, Faults.Faulty faulty, Symptom symptom, Seen seen, Sampling sampling, Workers workers) {
        // the bath, with the fault's own priors
        Forecast.BathOutcome outcome = FloatPredictor.standard()
                .with(faulty.factors())
                .with(sampling)
                .with(workers)
                .outcome(faulty.bathed().question());
        Sampling drying = symptom.shownByDrying() ? sampling : new Sampling(sampling.seed(), 0);
        Optional<DryForecast> dry = Symptoms.dry(faulty, drying, workers);
        Symptoms symptoms = new Symptoms(symptom, cause, faulty, outcome, dry, sampling, workers);
        Interval pieces = faulty.mass()
                .or(outcome::mass)
                .orElse(Interval.certain(outcome.piece().mass()));
        Map<Why.Check, Interval> readings = readings(cause, faulty, pieces, outcome, dry);
        // Bayes: prior weight times the density of every reading
        double presence = cause.weight();
        for (Map.Entry<Why.Check, Double> read : seen.readings().entrySet()) {
            presence *= likelihood(read.getKey(), read.getValue(), readings.get(read.getKey()));
        }
        double mass = seen.mass().orElse(pieces.median());
        Interval limit = limit(outcome.critical(), symptom, mass);
        return new Hypothesis(
                cause,
                presence,
                symptoms,
                way(limit, dry, readings),
                faulty.made(),
                outcome.piece().makeup(),
                pieces,
                readings);
    }

    /**
     * Density of a reading under a cause, with a chance of {@link #SLIP} spread evenly over a range as wide as the reading; a check
     * that the cause does not speak of has only that.
     */
    private static double likelihood(Why.Check check, double reading, @Nullable Interval expected) {
        double slip = SLIP / reading;
        if (expected == null) {
            return slip;
        }
        double density = check.byFactor()
                ? Normals.density(Math.log(reading), Normals.logarithm(expected)) / reading
                : Normals.density(reading, expected);
        return (1 - SLIP) * density + slip;
    }

    /** The heaviest weight that floats, in the draws in which a piece of this weight shows the symptom; in all where none does. */
    private static Interval limit(CriticalWeights critical, Symptom symptom, double mass) {
        double[] once = critical.atOnce();
        double[] end = critical.toTheEnd();
        double[] shown = IntStream.range(0, end.length)
                .filter(i -> symptom.shownBy(mass, once[i], end[i]))
                .mapToDouble(i -> symptom.ofTheDrop() ? once[i] : end[i])
                .toArray();
        return shown.length == 0 ? critical.interval() : OutcomeStatistics.intervalOf(shown);
    }

    private static Why.Way way(Interval limit, Optional<DryForecast> dry, Map<Why.Check, Interval> readings) {
        Interval mass =
                Objects.requireNonNull(readings.get(Why.Check.WEIGH_A_PIECE), "every cause speaks of the weight");
        return new Why.Way(
                mass,
                limit,
                dry.isPresent() ? OptionalDouble.of(dry.get().course().last().water()) : OptionalDouble.empty(),
                dry.isPresent() ? OptionalDouble.of(dry.get().fizzLost().median()) : OptionalDouble.empty());
    }

    /** What each check would show, errors of reading included, SI; drying and hygrometer only of a piece that is dried. */
    private static Map<Why.Check, Interval> readings(
            Cause cause, Faults.Faulty faulty, Interval made, Forecast.BathOutcome outcome, Optional<DryForecast> dry) {
        Map<Why.Check, Interval> readings = new EnumMap<>(Why.Check.class);
        readings.put(
                Why.Check.WEIGH_A_PIECE,
                Normals.widened(made, Math.hypot(WEIGHING, cause.weightSpread()) * made.median()));
        // size: the ruler beside the size of the fault
        double across = faulty.made().shape().extents().length() + (cause == Cause.MOULD_SMALLER ? -Cause.SMALLER : 0);
        readings.put(Why.Check.MEASURE_ACROSS, Normals.normal(across, Math.hypot(RULER, cause.sizeSpread())));
        outcome.fizzTime()
                .ifPresent(time -> readings.put(
                        Why.Check.TIME_THE_FIZZ,
                        Normals.exponential(Normals.widened(Normals.logarithm(time), TIMING))));
        if (dry.isPresent()) {
            // two days in a dry room take the water that is left, more or less
            double water = dry.get().course().last().water();
            double share = Math.hypot(DRIED_SHARE, cause.waterSpread());
            readings.put(
                    Why.Check.WEIGH_AFTER_TWO_DAYS, Normals.normal(water, Math.hypot(share * water, TWO_WEIGHINGS)));
            double humidity = faulty.made().drying().orElseThrow().air().humidity();
            readings.put(Why.Check.READ_A_HYGROMETER, Normals.normal(humidity, HYGROMETER));
        }
        return readings;
    }
}
