package org.fizzhull.decide;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.Swelling;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FilledMould;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.Making;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.PressedMould;
import org.fizzhull.forecast.Probability;
import org.fizzhull.forecast.Question;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.pressing.Feel;
import org.fizzhull.uncertainty.Workers;

/**
 * A cause under suspicion: how well it explains what was seen, and what checks would show if it were at work.
 *
 * @param cause which
 * @param weight its prior weight times the likelihood of all that was seen
 * @param showsIt chance of the symptom
 * @param mass of its pieces, kg
 * @param readings what each check shows, spread of the reading included, SI
 */
record Suspect(Cause cause, double weight, double showsIt, Interval mass, Map<Check, Interval> readings) {
    private static final double Z95 = 1.959964;

    /** One standard deviation of a kitchen scale with the piece's own differences, of its weight. */
    private static final double WEIGHING = 0.01;

    /** A ruler's standard deviation, m. */
    private static final double RULER = 0.7e-3;

    /** A hygrometer's standard deviation, relative humidity. */
    private static final double HYGROMETER = 0.05;

    private static final double MOULD_SHIFT = -2e-3;

    /** The chance of a symptom that a model calls impossible, or sure: models are not that sure. */
    private static final double DOUBT = 0.02;

    static Suspect of(
            Cause cause, Faults.Faulty faulty, Symptom symptom, Seen seen, Sampling sampling, Workers workers) {
        Question question = faulty.design().question();
        Forecast forecast = FloatPredictor.standard()
                .with(faulty.factors())
                .with(sampling)
                .with(workers)
                .forecast(question);
        Interval mass = mass(forecast, cause.weightSpread());
        Optional<DryForecast> dry = dry(question, sampling, workers);
        double shows = switch (symptom.stage()) {
            case BATH -> inTheBath(forecast, symptom, seen.mass());
            case DRYING -> drying(cause, forecast, dry, symptom);
            case PRESS -> pressing(question, symptom, sampling, workers);
            case NOT_COMPUTED -> 1;
        };
        shows = symptom.stage() == Symptom.Stage.NOT_COMPUTED ? 1 : DOUBT + (1 - 2 * DOUBT) * shows;
        double weight = cause.weight() * shows;
        double across = question.shape().extents().length() + (cause == Cause.MOULD_SMALLER ? MOULD_SHIFT : 0);
        if (seen.mass().isPresent()) {
            weight *= density(seen.mass().getAsDouble(), mass);
        }
        if (seen.across().isPresent()) {
            weight *= density(seen.across().getAsDouble(), normal(across, RULER));
        }
        Map<Check, Interval> readings = new EnumMap<>(Check.class);
        readings.put(Check.WEIGH_A_PIECE, mass);
        readings.put(Check.MEASURE_ACROSS, normal(across, RULER));
        forecast.fizzTime().ifPresent(time -> readings.put(Check.TIME_THE_FIZZ, time));
        if (dry.isPresent()) {
            double water = dry.get().course().last().water();
            readings.put(Check.WEIGH_AFTER_TWO_DAYS, normal(water, 0.3 * water + 0.3e-3));
            readings.put(
                    Check.READ_A_HYGROMETER,
                    normal(faulty.design().drying().orElseThrow().air().humidity(), HYGROMETER));
        }
        return new Suspect(cause, weight, shows, mass, readings);
    }

    /** What a scale would show of a piece; with what the size of the fault adds to the spread, a share of the weight. */
    private static Interval mass(Forecast forecast, double fault) {
        Interval made = forecast.mass()
                .orElseGet(() -> Interval.certain(forecast.piece().mass()));
        double known = (made.high() - made.low()) / (2 * Z95);
        double deviation = Math.hypot(known, Math.hypot(WEIGHING, fault) * made.median());
        return normal(made.median(), deviation);
    }

    private static Optional<DryForecast> dry(Question question, Sampling sampling, Workers workers) {
        Making making = question.making();
        boolean dries = (making instanceof FilledMould f && !f.plan().phases().isEmpty())
                || (making instanceof PressedMould p && !p.plan().phases().isEmpty());
        return dries
                ? Optional.of(
                        DryPredictor.standard().with(sampling).with(workers).forecast(question.shape(), making))
                : Optional.empty();
    }

    /** Chance of a symptom of the bath; of the weight that was read, where there is one. */
    private static double inTheBath(Forecast forecast, Symptom symptom, OptionalDouble mass) {
        Probability p = forecast.probability().orElseThrow();
        if (mass.isPresent() && symptom != Symptom.ROSE_LATE) {
            double once = forecast.critical().chanceAtOnce(mass.getAsDouble());
            return symptom == Symptom.SANK
                    ? 1 - once
                    : Math.max(0, once - forecast.critical().chanceAt(mass.getAsDouble()));
        }
        return switch (symptom) {
            case SANK_LATER -> p.sinksLater().orElse(0);
            case ROSE_LATE -> p.risesLater().orElse(0);
            default -> 1 - p.floatsAtOnce();
        };
    }

    private static double drying(Cause cause, Forecast forecast, Optional<DryForecast> dry, Symptom symptom) {
        if (symptom == Symptom.WEAK_FIZZ && cause == Cause.LOST_ITS_FIZZ) {
            return 1;
        }
        if (dry.isEmpty()) {
            return symptom == Symptom.WEAK_FIZZ && forecast.fizzTime().isEmpty() ? 1 : 0;
        }
        DryForecast course = dry.get();
        return switch (symptom) {
            case NEVER_DRIED -> 1 - course.readyWithin(course.dryingTime());
            case PUFFED -> swells(course.course().swelling());
            default -> weak(course.fizzLost());
        };
    }

    /** A swelling class stands for a band; how often each is seen as a blown piece is assumed. */
    private static double swells(Swelling swelling) {
        return switch (swelling) {
            case NONE -> 0.02;
            case SLIGHT -> 0.3;
            case PUFFS -> 0.9;
        };
    }

    /** Share of the draws that lost more than a third of the fizz, by a normal distribution of the loss. */
    private static double weak(Interval lost) {
        double deviation = Math.max(1e-6, (lost.high() - lost.low()) / (2 * Z95));
        return org.fizzhull.uncertainty.Normal.cumulative((lost.median() - 1.0 / 3) / deviation);
    }

    private static double pressing(Question question, Symptom symptom, Sampling sampling, Workers workers) {
        Making making = question.making();
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return 0;
        }
        Map<Feel, Double> feel = PressPredictor.standard()
                .with(sampling)
                .with(workers)
                .piece(question.shape(), making)
                .feel();
        return feel.getOrDefault(symptom == Symptom.CRUMBLED ? Feel.CRUMBLES : Feel.TOO_WET, 0.0);
    }

    private static Interval normal(double mean, double deviation) {
        return new Interval(mean, mean - Z95 * deviation, mean + Z95 * deviation);
    }

    private static double density(double value, Interval normal) {
        double deviation = (normal.high() - normal.low()) / (2 * Z95);
        double z = (value - normal.median()) / deviation;
        return Math.exp(-z * z / 2) / deviation;
    }
}
