package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds the masses at which nine of ten pieces float: where the 10 % point of the spare at the drop is 0. The same draws
 * serve every mass tried, so the point moves smoothly and falls as the mass grows.
 */
final class BatchAims {
    private static final double ONE_OF_TEN = 0.1;

    /** Found to this, kg: a tenth of what a kitchen scale shows. */
    private static final double ACCURACY = 1e-5;

    private final Question question;
    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;

    BatchAims(Question question, Factors factors, Sampling sampling, Workers workers) {
        this.question = question;
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
    }

    /** Both masses; empty where no mass of a pressed piece reaches nine of ten, or every one does. */
    Optional<BatchAim> find() {
        double low = PieceLimits.lightest(question) * (1 + 1e-9);
        double high = PieceLimits.heaviest(question) * (1 - 1e-9);
        Factors single = factors.without(Input.HAND);
        boolean bracketed = tenth(factors, low) > 0 && tenth(factors, high) < 0 && tenth(single, high) < 0;
        if (!bracketed) {
            return Optional.empty();
        }
        double aim = BracketedRoot.find(mass -> tenth(factors, mass), low, high, ACCURACY);
        double most = BracketedRoot.find(mass -> tenth(single, mass), low, high, ACCURACY);
        return Optional.of(new BatchAim(aim, most));
    }

    private double tenth(Factors of, double mass) {
        Question heavier = question.weighing(mass);
        MonteCarlo run = new MonteCarlo(of.priors(), sampling.samples(), sampling.seed(), workers);
        double[] spare = run.draws(() -> new DropModel(heavier, of));
        return Statistics.quantile(Statistics.sorted(spare), ONE_OF_TEN);
    }
}
