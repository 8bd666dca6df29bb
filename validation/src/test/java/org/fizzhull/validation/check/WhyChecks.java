package org.fizzhull.validation.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.decide.why.Diagnoser;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/**
 * Does the diagnosis name the true cause, and does a chance of p come true in p of the cases? Failures of known cause are
 * simulated ({@link FailedBatches}), each is diagnosed from its symptom and its readings.
 */
public final class WhyChecks extends Bindings {
    private static final Diagnoser DIAGNOSER = Diagnoser.standard().with(new Sampling(1, 128));

    /**
     * A stated chance and whether it came true.
     *
     * @param chance 0 to 1
     * @param rank of the cause, 0 the likeliest
     * @param cameTrue whether that cause was at work
     */
    private record Stated(double chance, int rank, boolean cameTrue) {}

    private final Map<String, List<Stated>> simulated = new HashMap<>();

    public WhyChecks() {
        super("why");
        bind("first-two", in -> firstTwo(stated(in)) >= in.number("at_least") ? 1 : 0);
        bind("calibration", in -> surplus(stated(in), in.number("from"), in.number("to")));
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
        return failed.parallelStream()
                .flatMap(failure -> stated(failure).stream())
                .toList();
    }

    private static List<Stated> stated(FailedBatches.Failure failure) {
        Why why = DIAGNOSER.diagnose(failure.design(), failure.symptom(), failure.seen());
        List<Stated> stated = new ArrayList<>();
        for (int rank = 0; rank < why.causes().size(); rank++) {
            Why.Chance chance = why.causes().get(rank);
            stated.add(new Stated(chance.probability(), rank, chance.cause() == failure.cause()));
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
}
