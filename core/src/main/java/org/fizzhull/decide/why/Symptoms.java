package org.fizzhull.decide.why;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.Swelling;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.BathOutcome;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.Feel;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Workers;

/**
 * How often a batch with a given fault shows a symptom. Each is the share of the draws that show it, the draws being all that
 * is not known; how often a class of swelling is seen as a blown piece is assumed.
 */
final class Symptoms {
    /** The loss of fizz from which a maker calls it weak: a third (assumed). */
    private static final double WEAK = 1.0 / 3;

    /** How often a piece that puffs is seen as blown, and one that swells slightly (assumed). */
    private static final double SEEN_TO_PUFF = 0.9;

    private static final double SEEN_TO_SWELL = 0.3;

    /** The chance of a symptom that a model calls impossible, or sure: models are not that sure (assumed). */
    static final double DOUBT = 0.02;

    private final Faults.Faulty faulty;
    private final Cause cause;
    private final BathOutcome outcome;
    private final Optional<DryForecast> dry;
    private final Sampling sampling;
    private final Workers workers;
    private final Symptom symptom;

    /** Chance of the symptom, of any piece; 1 for one that is not computed. */
    private final double ofAny;

    Symptoms(
            Symptom symptom,
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
        this.symptom = symptom;
        ofAny = ofAny();
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
     * Chance of the symptom; 1 for one that is not computed.
     *
     * @param mass that was read, kg: then of a piece of that weight
     */
    double chance(OptionalDouble mass) {
        if (mass.isEmpty()) {
            return doubted(ofAny);
        }
        return doubted(
                switch (symptom) {
                    case SANK -> 1 - once(mass);
                    case SANK_LATER -> once(mass) - outcome.critical().chanceAt(mass.getAsDouble());
                    case ROSE_LATE, TIPPED, WEAK_FIZZ, PUFFED, NEVER_DRIED, CRUMBLED, SOFT, CRACKED -> ofAny;
                });
    }

    private double doubted(double chance) {
        return symptom.computed(faulty.made()) ? DOUBT + (1 - 2 * DOUBT) * Math.max(0, Math.min(1, chance)) : 1;
    }

    private double ofAny() {
        Probability fate = outcome.probability().orElseThrow();
        return switch (symptom) {
            case SANK -> 1 - fate.floatsAtOnce();
            case SANK_LATER -> fate.floatsAtOnce() - fate.floatsToTheEnd();
            case ROSE_LATE -> fate.risesLater().orElse(0);
            case TIPPED -> tips();
            case WEAK_FIZZ -> weak();
            case PUFFED -> puffs();
            case NEVER_DRIED -> neverDries();
            case CRUMBLED -> feels(Feel.CRUMBLES);
            case SOFT -> 1 - (1 - feels(Feel.TOO_WET)) * (1 - neverDries());
            case CRACKED -> 1;
        };
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
        if (cause == Cause.LOST_ITS_FIZZ || !fizzes()) {
            return 1;
        }
        if (dry.isEmpty()) {
            return 0;
        }
        return dry.get().drawn().losesMoreThan(WEAK);
    }

    private double neverDries() {
        return dry.isPresent() ? 1 - dry.get().readyWithin(dry.get().dryingTime()) : 0;
    }

    /** Whether the mix itself fizzes, fresh; of a mix that is not known it is taken so. */
    private boolean fizzes() {
        return faulty.made().recipe().isEmpty()
                || Effervescence.of(Blend.of(faulty.made().recipe().get()).moles())
                        .fizzes();
    }

    private double puffs() {
        if (dry.isEmpty()) {
            return 0;
        }
        double puffs = dry.get().drawn().swells(Swelling.PUFFS);
        double slight = dry.get().drawn().swells(Swelling.SLIGHT) - puffs;
        return SEEN_TO_PUFF * puffs + SEEN_TO_SWELL * slight;
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
