package org.fizzhull.decide.why;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.Swelling;
import org.fizzhull.forecast.BathOutcome;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.Feel;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Workers;

/**
 * How often a batch with a given fault shows a symptom. Each is the share of the draws that show it, the draws being all that
 * is not known, but for two: how often a class of swelling is seen as a blown piece is assumed, and the loss of fizz is taken
 * as normal with the interval of its draws.
 */
final class Symptoms {
    /** The loss of fizz from which a maker calls it weak: a third (assumed). */
    private static final double WEAK = 1.0 / 3;

    /** The chance of a symptom that a model calls impossible, or sure: models are not that sure (assumed). */
    static final double DOUBT = 0.02;

    private final Faults.Faulty faulty;
    private final Cause cause;
    private final BathOutcome outcome;
    private final Optional<DryForecast> dry;
    private final Sampling sampling;
    private final Workers workers;

    Symptoms(
            Cause cause,
            Faults.Faulty faulty,
            BathOutcome outcome,
            Optional<DryForecast> dry,
            Sampling sampling,
            Workers workers) {
        this.cause = cause;
        this.faulty = faulty;
        this.outcome = outcome;
        this.dry = dry;
        this.sampling = sampling;
        this.workers = workers;
    }

    /** The course of drying of a making; empty where it is not dried. */
    static Optional<DryForecast> dry(Faults.Faulty faulty, Sampling sampling, Workers workers) {
        Making making = faulty.made().making();
        boolean dries = (making instanceof FilledMould f && !f.plan().phases().isEmpty())
                || (making instanceof PressedMould p && !p.plan().phases().isEmpty());
        DryPredictor predictor =
                DryPredictor.standard().with(faulty.factors()).with(sampling).with(workers);
        return dries ? Optional.of(predictor.forecast(faulty.made().shape(), making)) : Optional.empty();
    }

    /**
     * Chance of a symptom; 1 for one that is not computed.
     *
     * @param mass that was read, kg: then of a piece of that weight
     */
    double chance(Symptom symptom, OptionalDouble mass) {
        double chance = switch (symptom) {
            case SANK ->
                mass.isPresent()
                        ? 1 - once(mass)
                        : 1 - outcome.probability().orElseThrow().floatsAtOnce();
            case SANK_LATER ->
                mass.isPresent()
                        ? once(mass) - outcome.critical().chanceAt(mass.getAsDouble())
                        : outcome.probability().orElseThrow().sinksLater().orElse(0);
            case ROSE_LATE -> outcome.probability().orElseThrow().risesLater().orElse(0);
            case TIPPED -> tips();
            case WEAK_FIZZ -> weak();
            case PUFFED -> dry.isPresent() ? swells(dry.get().course().swelling()) : 0;
            case NEVER_DRIED -> neverDries();
            case CRUMBLED -> feels(Feel.CRUMBLES);
            case SOFT -> 1 - (1 - feels(Feel.TOO_WET)) * (1 - neverDries());
            case CRACKED -> 1;
        };
        return symptom.computed() ? DOUBT + (1 - 2 * DOUBT) * Math.max(0, Math.min(1, chance)) : 1;
    }

    private double once(OptionalDouble mass) {
        return outcome.critical().chanceAtOnce(mass.getAsDouble());
    }

    /** Not in the likeliest attitude, or in one that a ripple turns over; a boat that tips is judged as dropped. */
    private double tips() {
        Question question = outcome.question();
        if (question.into() != faulty.bathed().into()) {
            return 1;
        }
        var rests = FloatPredictor.standard().rests(question);
        if (rests.isEmpty()) {
            return 0;
        }
        FloatingAttitude likeliest = rests.get(0);
        return likeliest.tippy() ? 1 : 1 - likeliest.share().orElse(1);
    }

    private double weak() {
        if (cause == Cause.LOST_ITS_FIZZ) {
            return 1;
        }
        if (dry.isEmpty()) {
            return outcome.fizzTime().isEmpty() ? 1 : 0;
        }
        double deviation = Math.max(1e-6, Normals.deviation(dry.get().fizzLost()));
        return Normal.cumulative((dry.get().fizzLost().median() - WEAK) / deviation);
    }

    private double neverDries() {
        return dry.isPresent() ? 1 - dry.get().readyWithin(dry.get().dryingTime()) : 0;
    }

    /** How often a class of swelling is seen as a blown piece (assumed). */
    private static double swells(Swelling swelling) {
        return switch (swelling) {
            case NONE -> 0;
            case SLIGHT -> 0.3;
            case PUFFS -> 0.9;
        };
    }

    private double feels(Feel feel) {
        Making making = faulty.made().making();
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return 0;
        }
        PressPredictor press =
                PressPredictor.standard().with(faulty.factors()).with(sampling).with(workers);
        Map<Feel, Double> feels = press.piece(faulty.made().shape(), making).feel();
        return feels.getOrDefault(feel, 0.0);
    }
}
