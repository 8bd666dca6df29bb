package org.fizzhull.decide.why;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.Swelling;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.BathOutcome;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.pressing.Feel;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Workers;

/**
 * How often a batch with a given fault shows a symptom. Each is the share of the draws that show it, the draws being all that
 * is not known:
 *
 * <ul>
 * <li>sank, sank later, rose late: chances of the bath, of a piece of the weight that was read where one was;
 * <li>tipped: by the attitudes in still water;
 * <li>puffed, never dried, soft, weak: by the draws of drying;
 * <li>crumbled, soft: by the feel out of the mould.
 * </ul>
 *
 * <p>How often a class of swelling is seen as a blown piece is assumed. A symptom that is not computed has the chance 1 for
 * every cause, so that it tells nothing.
 */
final class Symptoms {
    /** Share of the fizz lost from which a maker calls it weak (assumed). */
    private static final double WEAK = 1.0 / 3;

    /** Chance that a piece of swelling {@code PUFFS} is seen as blown (assumed). */
    private static final double SEEN_TO_PUFF = 0.9;

    /** The same of a piece of swelling {@code SLIGHT}. */
    private static final double SEEN_TO_SWELL = 0.3;

    /**
     * Least chance of a symptom that a model calls impossible, and of its absence where a model calls it sure: models are not that
     * sure (assumed).
     */
    static final double DOUBT = 0.02;

    private final Faults.Faulty faulty;
    private final Cause cause;
    /** What becomes of the piece in the bath, with the fault. */
    private final BathOutcome outcome;
    /** Its drying; empty where it is not dried. */
    private final Optional<DryForecast> dry;

    private final Sampling sampling;
    private final Workers workers;
    private final Symptom symptom;

    /** Chance of the symptom of any piece, whatever it weighs; 1 for one that is not computed. */
    private final double ofAny;

    /** Works the chance out once, since every ranking asks for it again. */
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

    /** {@return the course of drying with a fault; empty where the design is not dried} */
    static Optional<DryForecast> dry(Faults.Faulty faulty, Sampling sampling, Workers workers) {
        Making making = faulty.made().making();
        boolean dries = !making.plan().phases().isEmpty();
        DryPredictor predictor =
                DryPredictor.standard().with(faulty.factors()).with(sampling).with(workers);
        return dries ? Optional.of(predictor.forecast(faulty.made().shape(), making)) : Optional.empty();
    }

    /**
     * {@return the chance of the symptom, between {@link #DOUBT} and 1 - {@link #DOUBT}; 1 for one that is not computed}
     *
     * @param mass weight that was read, kg: the chance is then that of a piece of this weight, where the weight matters
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

    /** The chance kept away from 0 and 1 by the doubt in the models. */
    private double doubted(double chance) {
        return symptom.computed(faulty.made()) ? DOUBT + (1 - 2 * DOUBT) * Math.max(0, Math.min(1, chance)) : 1;
    }

    /** The chance of the symptom by the models alone, of any piece. */
    private double ofAny() {
        Probability chances = outcome.probability().orElseThrow();
        return switch (symptom) {
            case SANK -> 1 - chances.floatsAtOnce();
            case SANK_LATER -> chances.floatsAtOnce() - chances.floatsToTheEnd();
            case ROSE_LATE -> chances.risesLater().orElse(0);
            case TIPPED -> tips();
            case WEAK_FIZZ -> weak();
            case PUFFED -> puffs();
            case NEVER_DRIED -> neverDries();
            case CRUMBLED -> feels(Feel.CRUMBLES);
            case SOFT -> 1 - (1 - feels(Feel.TOO_WET)) * (1 - neverDries());
            case CRACKED -> 1;
        };
    }

    /** Chance that a piece of this weight floats at once. */
    private double once(OptionalDouble mass) {
        return outcome.critical().chanceAtOnce(mass.getAsDouble());
    }

    /**
     * Chance that it does not lie in its likeliest attitude; 1 for one that a small disturbance turns over, or for an open shape that
     * tips and is judged as dropped.
     */
    private double tips() {
        Question question = outcome.question();
        if (question.into() != faulty.bathed().into()) {
            return 1;
        }
        var attitudes = FloatPredictor.standard().attitudes(question);
        if (attitudes.isEmpty()) {
            return 0;
        }
        FloatingAttitude likeliest = attitudes.get(0);
        return likeliest.tippy() ? 1 : 1 - likeliest.share().orElse(1);
    }

    /** Chance that it fizzes weakly: sure of a spent piece and of a mix that does not fizz, else by what drying costs. */
    private double weak() {
        if (cause == Cause.LOST_ITS_FIZZ || !fizzes()) {
            return 1;
        }
        if (dry.isEmpty()) {
            return 0;
        }
        return dry.get().losesMoreThan(WEAK);
    }

    /** Chance that it is not dry in its time. */
    private double neverDries() {
        return dry.isPresent() ? 1 - dry.get().readyWithin(dry.get().dryingTime()) : 0;
    }

    /** Whether the mix itself fizzes, fresh; taken so where it is not known. */
    private boolean fizzes() {
        return faulty.made().recipe().isEmpty()
                || Effervescence.of(Blend.of(faulty.made().recipe().get()).moles())
                        .fizzes();
    }

    /** Chance that it is seen to swell as it dries. */
    private double puffs() {
        if (dry.isEmpty()) {
            return 0;
        }
        double puffs = dry.get().swells(Swelling.PUFFS);
        double slight = dry.get().swells(Swelling.SLIGHT) - puffs;
        return SEEN_TO_PUFF * puffs + SEEN_TO_SWELL * slight;
    }

    /** Chance of a feel out of the mould; 0 for a finished piece. */
    private double feels(Feel feel) {
        Making making = faulty.made().making();
        if (!(making instanceof Moulded)) {
            return 0;
        }
        PressPredictor press =
                PressPredictor.standard().with(faulty.factors()).with(sampling).with(workers);
        Map<Feel, Double> feels = press.piece(faulty.made().shape(), making).feel();
        return feels.getOrDefault(feel, 0.0);
    }
}
