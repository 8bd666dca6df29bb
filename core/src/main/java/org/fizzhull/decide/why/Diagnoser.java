package org.fizzhull.decide.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.Predictor;
import org.fizzhull.forecast.conditioning.KnownInputs;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds out why a batch went wrong, by Bayes' rule over causes. A cause is a fault that made the difference: without it the
 * batch would not have shown what was seen. For each fault c the whole chain is asked as if it were there, with all that is not
 * known drawn as usual:
 *
 * <pre>
 *   presence(c)    = weight(c) . PRODUCT p(reading | c)
 *   S(c)           = P(symptom | c, m),   S(plan) = P(symptom | plan, m)
 *   A(c)           = P(symptom with c, and better without | m, m_c)               ({@code Symptoms.added})
 *   P(c | seen)    ~ presence(c) . ((1 - e) A(c) + e q)                           for every fault c
 *   P(plan | seen) ~ presence(plan) . ((1 - e) S(plan) + e q) + (1 - e) SUM presence(c) . (S(c) - A(c))
 * </pre>
 *
 * with m the weight that was read and m_c what the same piece would have weighed as planned (m times the ratio of the medians of
 * plan and fault); where nothing was weighed, the chances are those of any piece. What would have happened anyway, S - A, is so
 * laid to the plan; it is taken that a fault spoils what the plan would have made good, never the reverse.
 *
 * <p>The models are wrong about a symptom with the chance e = 0.04 (assumed). Then each of the ten symptoms is as
 * likely as another, q = 1/10, whatever the cause, and the readings alone tell causes apart, as they do for a symptom
 * that is not computed. The chances of the symptom that are given ({@link Why#asPlanned}, {@link Why.Chance#showsIt})
 * are those of the models, as a forecast of the same design has them.
 *
 * <p>Readings are taken as normal, times as log-normal, and independent given the cause. Weights are assumed
 * ({@link Cause#weight}); one fault at a time is considered. {@link Cause#SOMETHING_ELSE} is the plan itself, or what is not
 * computed, so that the chances sum to 1 whatever was seen.
 *
 * <pre>{@code
 * Why why = Diagnoser.standard().diagnose(design, Symptom.SANK, Seen.nothing().with(Check.WEIGH_A_PIECE, 0.151));
 * Cause likeliest = why.causes().get(0).cause();
 * }</pre>
 *
 * <p>Checked against simulated failures of known cause in the validation module, and against nothing else. Cost: one forecast
 * of the plan and of each of up to 13 faults. Immutable; the same answer for any number of workers.
 */
public final class Diagnoser extends Predictor<Diagnoser> {
    /** Chance below which a cause gets no check of its own. */
    private static final double WORTH_A_CHECK = 0.02;

    /** Information below which a check is not proposed, bit (assumed). */
    private static final double TELLS = 0.05;

    /** Chance e that the models are wrong about a symptom (assumed). */
    private static final double MODELS_WRONG = 0.04;

    /** What that is worth to every cause, e q: any of the symptoms is then as likely as another. */
    private static final double DOUBT = MODELS_WRONG / Symptom.values().length;

    /** What was measured on pieces that went as planned. */
    private final Observations measured;

    private Diagnoser(Factors factors, Sampling sampling, Workers workers, Observations measured) {
        super(factors, sampling, workers);
        Given.all("measured", measured);
        this.measured = measured;
    }

    @Override
    protected Diagnoser drawing(Factors others, Sampling other, Workers by) {
        return new Diagnoser(others, other, by, measured);
    }

    /** {@return a diagnoser with the usual priors and 512 draws for each cause, on the calling thread} */
    public static Diagnoser standard() {
        return new Diagnoser(Factors.standard(), new Sampling(1, 512), Workers.CALLER, Observations.none());
    }

    /**
     * {@return this diagnoser with other draws for each cause}
     *
     * @param other seed and number of draws, above 0
     * @throws IllegalArgumentException for no draws
     */
    @Override
    public Diagnoser with(Sampling other) {
        if (other.samples() == 0) {
            throw new IllegalArgumentException("causes are told apart by draws: central values have no chances");
        }
        return super.with(other);
    }

    /**
     * {@return this diagnoser knowing what was measured on other pieces of the plan, which went as planned: it narrows what the
     * plan and every fault share} What was measured on the batch that went wrong belongs to {@link Seen}.
     *
     * @param pieces what was measured on pieces of the plan's mix, mould and bath
     */
    public Diagnoser with(Observations pieces) {
        return new Diagnoser(factors, sampling, workers, pieces);
    }

    /**
     * {@return the causes of a symptom, likeliest first, with the check that tells the first two apart}
     *
     * @param design the design as it was planned
     * @param symptom what was seen of the pieces
     * @param seen what was measured on the batch
     * @throws org.fizzhull.quantity.Refusal for a plan that no forecast takes
     */
    public Why diagnose(Design design, Symptom symptom, Seen seen) {
        // what other pieces told, as a forecast of the plan has it; a fault then moves what it moves from there
        Sampling known =
                new Sampling(sampling.seed(), Math.max(Sampling.standard().samples(), sampling.samples()));
        KnownInputs inputs =
                KnownInputs.of(new Observations.MeasuredPieces(design.question(), measured), factors, known, workers);
        Factors house = inputs.factors();
        // the plan first: the weights of its pieces are needed for the faults
        Hypothesis plan =
                Hypothesis.of(Cause.SOMETHING_ELSE, new Faults.Faulty(design, house), symptom, seen, sampling, workers);
        List<Hypothesis> faults = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            Optional<Faults.Faulty> faulty = cause == Cause.SOMETHING_ELSE
                    ? Optional.empty()
                    : Faults.of(cause, design, house, plan.pieces(), plan.makeup());
            faulty.ifPresent(f -> faults.add(Hypothesis.of(cause, f, symptom, seen, sampling, workers)));
        }
        boolean computed = symptom.computed(design);
        List<Ranked> ranked = ranked(plan, faults, seen.mass());
        List<Why.Chance> chances = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            Ranked one = ranked.get(i);
            boolean alone = ranked.size() == 1;
            Ranked other = ranked.get(i == 0 && !alone ? 1 : 0);
            Optional<Why.Check> check = one.probability < WORTH_A_CHECK || alone
                    ? Optional.empty()
                    : best(one, other, seen).map(Why.BestCheck::check);
            Hypothesis hypothesis = one.hypothesis;
            chances.add(new Why.Chance(
                    hypothesis.cause(),
                    one.probability,
                    hypothesis.symptoms().chance(seen.mass()),
                    hypothesis.way(),
                    hypothesis.made(),
                    check));
        }
        Optional<Why.BestCheck> best = ranked.size() > 1 ? best(ranked.get(0), ranked.get(1), seen) : Optional.empty();
        OptionalDouble planned =
                computed ? OptionalDouble.of(plan.symptoms().chance(OptionalDouble.empty())) : OptionalDouble.empty();
        return new WhyRecord(symptom, seen, design, planned, chances, best, inputs.notices());
    }

    /** A cause and its chance; before the chances are scaled, its share of their sum. */
    private record Ranked(Hypothesis hypothesis, double probability) {}

    /** Chances of all causes, the plan among them, likeliest first: the equations of the class. */
    private static List<Ranked> ranked(Hypothesis plan, List<Hypothesis> faults, OptionalDouble read) {
        double ofPlan = plan.presence() * doubted(plan.symptoms().chance(read));
        double sum = 0;
        List<Ranked> weighed = new ArrayList<>();
        for (Hypothesis fault : faults) {
            // what the fault adds to what would have happened anyway; the rest is the plan's
            double ratio = plan.pieces().median() / fault.pieces().median();
            OptionalDouble planned = read.isPresent() ? OptionalDouble.of(read.getAsDouble() * ratio) : read;
            double added = fault.symptoms().added(read, plan.symptoms(), planned);
            double weight = fault.presence() * doubted(added);
            weighed.add(new Ranked(fault, weight));
            sum += weight;
            ofPlan += fault.presence()
                    * (1 - MODELS_WRONG)
                    * Math.max(0, fault.symptoms().chance(read) - added);
        }
        weighed.add(new Ranked(plan, ofPlan));
        sum += ofPlan;
        List<Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < weighed.size(); i++) {
            Ranked one = weighed.get(i);
            double plain = i == weighed.size() - 1 ? 1 : 0; // the plan, where nothing shows it
            ranked.add(new Ranked(one.hypothesis, sum > 0 ? one.probability / sum : plain));
        }
        ranked.sort(Comparator.comparingDouble((Ranked one) -> -one.probability)
                .thenComparing(one -> one.hypothesis.cause()));
        return ranked;
    }

    /** A chance of the models, with the chance that they are wrong. */
    private static double doubted(double chance) {
        return (1 - MODELS_WRONG) * chance + DOUBT;
    }

    /** The check that tells two causes apart best, none that was made already; empty where none tells much. */
    private static Optional<Why.BestCheck> best(Ranked one, Ranked two, Seen seen) {
        Why.BestCheck best = null;
        double both = one.probability + two.probability;
        if (!(both > 0)) {
            return Optional.empty();
        }
        for (Map.Entry<Why.Check, Interval> entry : one.hypothesis.readings().entrySet()) {
            Why.Check check = entry.getKey();
            Interval other = two.hypothesis.readings().get(check);
            if (other == null || seen.reading(check).isPresent()) {
                continue;
            }
            // chance of the first cause, given that it is one of the two
            double share = one.probability / both;
            double bits = check.byFactor()
                    ? Discrimination.bits(share, Normals.logarithm(entry.getValue()), Normals.logarithm(other))
                    : Discrimination.bits(share, entry.getValue(), other);
            if (bits > TELLS && (best == null || bits > best.information())) {
                best = new Why.BestCheck(check, bits, entry.getValue(), other);
            }
        }
        return Optional.ofNullable(best);
    }
}
