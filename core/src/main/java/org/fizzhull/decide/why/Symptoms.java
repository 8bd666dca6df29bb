package org.fizzhull.decide.why;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.pressing.Pressed;
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

    private final Faults.Faulty faulty;
    private final Cause cause;
    /** What becomes of the piece in the bath, with the fault. */
    private final Forecast.BathOutcome outcome;
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
            Forecast.BathOutcome outcome,
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
        ofAny = symptom.computed(faulty.made()) ? ofAny() : 1;
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
     * {@return the chance of the symptom by the models, 0 to 1; 1 for one that is not computed}
     *
     * @param mass weight that was read, kg: the chance is then that of a piece of this weight, where the weight matters
     */
    double chance(OptionalDouble mass) {
        if (mass.isEmpty() || !symptom.computed(faulty.made())) {
            return ofAny;
        }
        return switch (symptom) {
            case SANK -> 1 - once(mass.getAsDouble());
            case SANK_LATER -> Math.max(0, once(mass.getAsDouble()) - toTheEnd(mass.getAsDouble()));
            case ROSE_LATE, TIPPED, WEAK_FIZZ, PUFFED, NEVER_DRIED, CRUMBLED, SOFT, CRACKED -> ofAny;
        };
    }

    /**
     * {@return the chance of the symptom that a fault brings: that of a piece that shows it with the fault and does better without}
     * What becomes of a piece is a rank, from the best on: floats to the end, sinks later, sinks at once; floats at once, rises
     * late, stays down; or shows a symptom, or not. A fault is taken to make every piece worse and to keep their order. With B the
     * chance of what is better than the symptom and S that of the symptom, the ranks from B to B + S show it with the fault, and
     * those up to B0 are better than it as planned, of which both hold for
     *
     * <pre>
     *   min(B + S, B0) - B,   or 0 where that is below 0
     * </pre>
     *
     * which is S - S0 for a symptom that nothing is worse than. Where the symptom is not computed it is 1: it tells nothing.
     *
     * @param mass weight that was read on a piece with the fault, kg
     * @param plan the same symptom as planned
     * @param planned what that piece would have weighed as planned, kg
     */
    double added(OptionalDouble mass, Symptoms plan, OptionalDouble planned) {
        if (!symptom.computed(faulty.made())) {
            return 1;
        }
        double better = better(mass);
        return Math.max(0, Math.min(better + chance(mass), plan.better(planned)) - better);
    }

    /** The chance of what is better than the symptom. */
    private double better(OptionalDouble mass) {
        Probability any = outcome.probability().orElseThrow();
        return switch (symptom) {
            case SANK -> mass.isPresent() ? once(mass.getAsDouble()) : any.floatsAtOnce();
            case SANK_LATER -> mass.isPresent() ? toTheEnd(mass.getAsDouble()) : any.floatsToTheEnd();
            case ROSE_LATE -> any.floatsAtOnce();
            case TIPPED, WEAK_FIZZ, PUFFED, NEVER_DRIED, CRUMBLED, SOFT, CRACKED -> 1 - ofAny;
        };
    }

    /** The chance of the symptom, of any piece. */
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
            case CRUMBLED -> feels(Pressed.Feel.CRUMBLES);
            case SOFT -> 1 - (1 - feels(Pressed.Feel.TOO_WET)) * (1 - neverDries());
            case CRACKED -> 1;
        };
    }

    /** Chance that a piece of this weight, kg, floats at once. */
    private double once(double mass) {
        return outcome.critical().chanceAtOnce(mass);
    }

    /** Chance that a piece of this weight, kg, floats to the end. */
    private double toTheEnd(double mass) {
        return outcome.critical().chanceAt(mass);
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
        double puffs = dry.get().swells(DryingCourse.Swelling.PUFFS);
        double slight = dry.get().swells(DryingCourse.Swelling.SLIGHT) - puffs;
        return SEEN_TO_PUFF * puffs + SEEN_TO_SWELL * slight;
    }

    /** Chance of a feel out of the mould; 0 for a finished piece. */
    private double feels(Pressed.Feel feel) {
        Making making = faulty.made().making();
        if (!(making instanceof Moulded)) {
            return 0;
        }
        PressPredictor press =
                PressPredictor.standard().with(faulty.factors()).with(sampling).with(workers);
        Map<Pressed.Feel, Double> feels =
                press.piece(faulty.made().shape(), making).feel();
        return feels.getOrDefault(feel, 0.0);
    }
}
