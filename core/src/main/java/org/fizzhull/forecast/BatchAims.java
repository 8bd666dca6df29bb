package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.uncertainty.Draws;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Posterior;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.QuickVoyage;

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

    private final Posed posed;
    private final Sampling sampling;
    private final Workers workers;
    private final Optional<Posterior> known;

    BatchAims(Posed posed, Sampling sampling, Workers workers, Optional<Posterior> known) {
        this.posed = posed;
        this.sampling = sampling;
        this.workers = workers;
        this.known = known;
    }

    /** Both masses; empty where no mass of a pressed piece reaches nine of ten, or every one does. */
    Optional<BatchAim> find() {
        Question question = posed.question();
        double high = PieceLimits.heaviest(question) * (1 - 1e-9);
        double low = PieceLimits.lightest(question) * (1 + 1e-9) + reach();
        boolean bracketed = surplus(true, low) > 0 && surplus(true, high) < 0 && surplus(false, high) < 0;
        if (!bracketed) {
            return Optional.empty();
        }
        double aim = BracketedRoot.find(mass -> surplus(true, mass), low, high, ACCURACY);
        double most = BracketedRoot.find(mass -> surplus(false, mass), low, high, ACCURACY);
        return Optional.of(new BatchAim(aim, most));
    }

    /** How far below its mean the lightest draw of a batch may lie, kg: it still has to weigh something. */
    private double reach() {
        double hand = posed.question()
                .making()
                .hand()
                .map(spread -> -spread.quantile(LEAST))
                .orElse(0.0);
        return hand + 10 * MakingPriors.SCALE_DEVIATION;
    }

    /** A piece that is dried in every draw costs a hundred times one that is weighed: fewer draws find its masses. */
    private int draws() {
        return posed.question().making() instanceof Weighed
                ? sampling.samples()
                : Math.min(DRIED_DRAWS, sampling.samples());
    }

    /** Above 0 where more than nine of ten float: their share less 0.9, in still water the 10 % point of the spare. */
    private double surplus(boolean batch, double mass) {
        Question heavier = posed.question().weighing(mass);
        Factors factors = posed.factors();
        Factors of = batch || known.isPresent() ? factors : factors.without(Input.HAND);
        int hand = batch ? -1 : of.column(Input.HAND);
        Draws run = known.isPresent()
                ? known.get().thinned(draws())
                : new MonteCarlo(of.priors(), of.columns(), draws(), sampling.seed(), workers);
        if (heavier.stillWater()) {
            double[] spare = run.draws(() -> {
                DropModel drop = new DropModel(heavier, of);
                return inputs -> drop.at(single(inputs, hand));
            });
            return Statistics.quantile(Statistics.sorted(spare), ONE_OF_TEN);
        }
        double[] floats = run.draws(() -> {
            DropModel drop = new DropModel(heavier, of);
            QuickVoyage voyage = new QuickVoyage(posed.form(), heavier.bath());
            return inputs -> {
                drop.at(single(inputs, hand));
                return drop.floatsAtOnce(voyage) ? 1 : 0;
            };
        });
        return Statistics.mean(floats) - (1 - ONE_OF_TEN);
    }

    /** Draws after a measurement keep all their inputs: those of one piece are then without the hand's error. */
    private static double[] single(double[] inputs, int hand) {
        if (hand >= 0) {
            inputs[hand] = 0;
        }
        return inputs;
    }
}
