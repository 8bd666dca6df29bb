package org.fizzhull.validation.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.fizzhull.decide.why.Cause;
import org.fizzhull.decide.why.Diagnoser;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.numeric.Normal;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/**
 * Does the diagnosis name the true cause, and does a chance of p come true in p of the cases? Failures of known cause are
 * simulated ({@link FailedBatches}), each is diagnosed from its symptom and its readings.
 */
public final class WhyChecks extends Bindings {
    /** Draws for each cause; the command line takes 512. */
    private static final int DRAWS = 128;

    /**
     * A stated chance and whether it came true.
     *
     * @param cause whose chance it is
     * @param chance 0 to 1
     * @param rank of the cause, 0 the likeliest
     * @param cameTrue whether that cause was at work
     */
    private record Stated(Cause cause, double chance, int rank, boolean cameTrue) {}

    private final Map<String, List<Stated>> simulated = new HashMap<>();

    public WhyChecks() {
        super("why");
        bind("first-two", in -> firstTwo(stated(in)) >= in.number("at_least") ? 1 : 0);
        bind("calibration", in -> surplus(stated(in), in.number("from"), in.number("to")));
        bind("by-cause", in -> exactSurplus(stated(in), Cause.valueOf(in.word("cause"))));
    }

    private List<Stated> stated(Inputs in) {
        int failures = (int) in.number("failures");
        String seeds = in.word("seeds");
        return simulated.computeIfAbsent(failures + "/" + seeds, key -> simulate(failures, seeds.split("\\+")));
    }

    /** So many failures from each seed; made one after the other, diagnosed side by side. */
    private static List<Stated> simulate(int failures, String[] seeds) {
        List<FailedBatches.Failure> failed = new ArrayList<>();
        for (String seed : seeds) {
            FailedBatches batches = new FailedBatches(Long.parseLong(seed));
            for (int i = 0; i < failures; i++) {
                failed.add(batches.next());
            }
        }
        return IntStream.range(0, failed.size())
                .parallel()
                .mapToObj(i -> stated(failed.get(i), i + 1))
                .flatMap(List::stream)
                .toList();
    }

    /**
     * Each failure has draws of its own seed, as each maker might: the error of one set of draws would stand in all of them alike,
     * and hide a bias or feign one.
     */
    private static List<Stated> stated(FailedBatches.Failure failure, int seed) {
        Diagnoser diagnoser = Diagnoser.standard().with(new Sampling(seed, DRAWS));
        Why why = diagnoser.diagnose(failure.design(), failure.symptom(), failure.seen());
        List<Stated> stated = new ArrayList<>();
        for (int rank = 0; rank < why.causes().size(); rank++) {
            Why.Chance chance = why.causes().get(rank);
            stated.add(new Stated(chance.cause(), chance.probability(), rank, chance.cause() == failure.cause()));
        }
        return stated;
    }

    /** Share of the failures whose true cause is among the first two. */
    static double firstTwo(List<Stated> stated) {
        double failures = 0;
        double found = 0;
        for (Stated one : stated) {
            failures += one.rank == 0 ? 1 : 0;
            found += one.rank < 2 && one.cameTrue ? 1 : 0;
        }
        return found / failures;
    }

    /** Of the chances between two bounds, how often they came true less what they said, in standard errors. */
    static double surplus(List<Stated> stated, double from, double to) {
        double said = 0;
        double came = 0;
        double variance = 0;
        for (Stated one : stated) {
            if (one.chance >= from && one.chance < to) {
                said += one.chance;
                came += one.cameTrue ? 1 : 0;
                variance += one.chance * (1 - one.chance);
            }
        }
        return (came - said) / Math.sqrt(variance);
    }

    /**
     * How often a cause was at work less the sum of its stated chances, in standard errors: the place on the normal distribution of
     * the count that came, half of its own chance counted, in the exact distribution of the sum of independent events of these
     * chances (Poisson binomial). Where few are expected the normal distribution itself would call one case too many.
     */
    static double exactSurplus(List<Stated> stated, Cause cause) {
        double[] chances = {1}; // of 0, 1, 2, ... cases
        int came = 0;
        for (Stated one : stated) {
            if (one.cause == cause) {
                double[] more = new double[chances.length + 1];
                for (int i = 0; i < chances.length; i++) {
                    more[i] += (1 - one.chance) * chances[i];
                    more[i + 1] += one.chance * chances[i];
                }
                chances = more;
                came += one.cameTrue ? 1 : 0;
            }
        }
        double below = chances[came] / 2;
        for (int i = 0; i < came; i++) {
            below += chances[i];
        }
        return Normal.quantile(Math.max(1e-12, Math.min(1 - 1e-12, below)));
    }
}
