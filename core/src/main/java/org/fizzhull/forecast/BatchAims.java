package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.VoyageForm;

/**
 * Finds the masses at which nine of ten pieces float at once. The same draws serve every mass tried, so that their share
 * falls as the mass grows.
 */
final class BatchAims {
    private static final double ONE_OF_TEN = 0.1;

    /** Found to this, kg: a tenth of what a kitchen scale shows. */
    private static final double ACCURACY = 1e-5;

    private static final int DRIED_DRAWS = 512;

    /** No draw of the 2^20 at most lies beyond this quantile by more than a rounding. */
    private static final double LEAST = 1e-10;

    private final Question question;
    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;
    private final VoyageForm form;

    BatchAims(Question question, Factors factors, Sampling sampling, Workers workers) {
        this.question = question;
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
        form = VoyageModel.form(question);
    }

    /** Both masses; empty where no mass of a pressed piece reaches nine of ten, or every one does. */
    Optional<BatchAim> find() {
        double high = PieceLimits.heaviest(question) * (1 - 1e-9);
        double low = PieceLimits.lightest(question) * (1 + 1e-9) + reach();
        Factors single = factors.without(Input.HAND);
        boolean bracketed = surplus(factors, low) > 0 && surplus(factors, high) < 0 && surplus(single, high) < 0;
        if (!bracketed) {
            return Optional.empty();
        }
        double aim = BracketedRoot.find(mass -> surplus(factors, mass), low, high, ACCURACY);
        double most = BracketedRoot.find(mass -> surplus(single, mass), low, high, ACCURACY);
        return Optional.of(new BatchAim(aim, most));
    }

    /** How far below its mean the lightest draw of a batch may lie, kg: it still has to weigh something. */
    private double reach() {
        double hand =
                question.making().hand().map(spread -> -spread.quantile(LEAST)).orElse(0.0);
        return hand + 10 * MakingPriors.SCALE_DEVIATION;
    }

    /** A piece that is dried in every draw costs a hundred times one that is weighed: fewer draws find its masses. */
    private int draws() {
        return question.making() instanceof Weighed ? sampling.samples() : Math.min(DRIED_DRAWS, sampling.samples());
    }

    /** Above 0 where more than nine of ten float: their share less 0.9, in still water the 10 % point of the spare. */
    private double surplus(Factors of, double mass) {
        Question heavier = question.weighing(mass);
        MonteCarlo run = new MonteCarlo(of.priors(), of.columns(), draws(), sampling.seed(), workers);
        if (question.stillWater()) {
            double[] spare = run.draws(() -> new DropModel(heavier, of));
            return Statistics.quantile(Statistics.sorted(spare), ONE_OF_TEN);
        }
        double[] floats = run.draws(() -> {
            DropModel drop = new DropModel(heavier, of);
            QuickVoyage voyage = new QuickVoyage(form, heavier.bath());
            return inputs -> {
                drop.at(inputs);
                return drop.floatsAtOnce(voyage) ? 1 : 0;
            };
        });
        return Statistics.mean(floats) - (1 - ONE_OF_TEN);
    }
}
