package org.fizzhull.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.Factors;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds out why a batch went wrong, by Bayes' rule over causes.
 *
 * <p>For each cause the whole chain is asked as if it were true, with all that is not known drawn as usual:
 *
 * <pre>
 *   P(cause | seen) ~ weight(cause) . P(symptom | cause, mass) . PRODUCT p(reading | cause)
 * </pre>
 *
 * Readings are taken as normal and independent given the cause. Weights are assumed ({@link Cause#weight}); one cause at a time is considered. {@link Cause#SOMETHING_ELSE} is the design as
 * planned, so that the chances sum to 1 whatever was seen. Immutable; the same answer for any number of workers.
 */
public final class Diagnoser {
    /** A cause below this chance is not told apart by a check. */
    private static final double WORTH_A_CHECK = 0.02;

    /** A check that tells less than this is none, bit. */
    private static final double TELLS = 0.05;

    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;

    private Diagnoser(Factors factors, Sampling sampling, Workers workers) {
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
    }

    /** The usual priors, 512 draws for each cause, on the calling thread. */
    public static Diagnoser standard() {
        return new Diagnoser(Factors.standard(), new Sampling(1, 512), Workers.CALLER);
    }

    /** With other priors. */
    public Diagnoser with(Factors others) {
        return new Diagnoser(others, sampling, workers);
    }

    /** With other draws for each cause; at least 128. */
    public Diagnoser with(Sampling other) {
        if (other.samples() == 0) {
            throw new IllegalArgumentException("causes are told apart by draws: central values have no chances");
        }
        return new Diagnoser(factors, other, workers);
    }

    /** With other workers; the answer stays the same to the byte. */
    public Diagnoser with(Workers others) {
        return new Diagnoser(factors, sampling, others);
    }

    /** The causes of a symptom. */
    public Why diagnose(Design design, Symptom symptom, Seen seen) {
        Map<Cause, Suspect> suspects = new EnumMap<>(Cause.class);
        double sum = 0;
        Suspect plan =
                Suspect.of(Cause.SOMETHING_ELSE, new Faults.Faulty(design, factors), symptom, seen, sampling, workers);
        suspects.put(plan.cause(), plan);
        sum += plan.weight();
        for (Cause cause : Cause.values()) {
            Optional<Faults.Faulty> faulty = cause == Cause.SOMETHING_ELSE
                    ? Optional.empty()
                    : Faults.of(cause, design, factors, plan.pieces());
            if (faulty.isEmpty()) {
                continue;
            }
            Suspect suspect = Suspect.of(cause, faulty.get(), symptom, seen, sampling, workers);
            suspects.put(cause, suspect);
            sum += suspect.weight();
        }
        List<Suspect> ranked = new ArrayList<>(suspects.values());
        ranked.sort(Comparator.comparingDouble((Suspect s) -> -s.weight()).thenComparing(Suspect::cause));
        List<Why.Chance> chances = new ArrayList<>();
        for (Suspect suspect : ranked) {
            double p = sum > 0 ? suspect.weight() / sum : suspect.cause() == Cause.SOMETHING_ELSE ? 1 : 0;
            Suspect other = ranked.get(0) == suspect && ranked.size() > 1 ? ranked.get(1) : ranked.get(0);
            Optional<Check> check = p < WORTH_A_CHECK || other == suspect
                    ? Optional.empty()
                    : best(suspect, other, seen).map(Why.BestCheck::check);
            chances.add(new Why.Chance(suspect.cause(), p, suspect.showsIt(), suspect.way(), suspect.made(), check));
        }
        Optional<Why.BestCheck> best = ranked.size() > 1 ? best(ranked.get(0), ranked.get(1), seen) : Optional.empty();
        OptionalDouble planned = symptom.computed() ? OptionalDouble.of(plan.unweighed()) : OptionalDouble.empty();
        return new Why(symptom, seen, design, planned, chances, best);
    }

    /** The check that tells two causes apart best, none that was made already. */
    private static Optional<Why.BestCheck> best(Suspect one, Suspect two, Seen seen) {
        Why.BestCheck best = null;
        double both = one.weight() + two.weight();
        if (!(both > 0)) {
            return Optional.empty();
        }
        for (Map.Entry<Check, Interval> entry : one.readings().entrySet()) {
            Check check = entry.getKey();
            Interval other = two.readings().get(check);
            if (other == null || seen.reading(check).isPresent()) {
                continue;
            }
            double bits = Discrimination.bits(one.weight() / both, entry.getValue(), other);
            if (bits > TELLS && (best == null || bits > best.information())) {
                best = new Why.BestCheck(check, bits, entry.getValue(), other);
            }
        }
        return Optional.ofNullable(best);
    }
}
