package org.fizzhull.validation.bench;

import java.util.SplittableRandom;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Draws;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.fizzhull.voyage.HeldUnder;

/**
 * 200 benches drawn from the priors by plain random numbers: in each some balls of 142 g from one mould are held under water
 * and read once, after 5 s, or several times, two seconds apart, and the next ball has the same mould and mix, with its own reading of the scale and what two pieces of one mould
 * differ by. Counts how often what that one has to spare lies in the interval the readings leave. A truth whose readings are
 * refused as too far out counts as not narrowed and not inside.
 */
public final class DunkedTruths {
    private static final int TRUTHS = 200;
    private static final Sampling DRAWS = new Sampling(1, 1024);
    /** Time of a single reading, s. */
    private static final double SECONDS = 5;
    /** Time of the first of several readings and from one to the next, s. */
    private static final double APART = 2;

    private final Question asked;
    private final PreparedQuestion prepared;
    private final Factors factors;
    private final DropModel drop;
    private final double own;
    private final SplittableRandom random = new SplittableRandom(17);
    private final double narrowed;
    private int inside;

    /**
     * @param size how the size of the mould is known
     * @param error one standard deviation of a reading, kg
     * @param dunks how many balls of each bench are held under
     * @param readings of each of them
     */
    public DunkedTruths(Measured size, double error, int dunks, int readings) {
        asked = Question.weighed(Sphere.ofDiameter(0.065), 0.142).measured(size);
        prepared = PreparedQuestion.of(asked, Factors.standard());
        factors = prepared.factors();
        drop = new DropModel(prepared);
        own = HeldPiece.ownLift(asked.shape(), asked.bath());
        HeldUnder bowl = new HeldUnder(prepared.form(), asked.bath());
        double[] before = interval(
                new MonteCarlo(factors.priors(), factors.columns(), DRAWS.samples(), DRAWS.seed(), Workers.CALLER));
        double[] widths = new double[TRUTHS];
        for (int i = 0; i < TRUTHS; i++) {
            double[] bench = drawn();
            boolean felt = random.nextDouble() < HeldPiece.PLUME_FELT;
            Observations seen = Observations.none();
            for (int k = 0; k < dunks; k++) {
                another(bench);
                seen = seen.held(read(bowl, felt, error, readings));
            }
            double spare = another(bench) + own * score();
            try {
                double[] after = interval(Conditioned.on(prepared, seen, DRAWS, Workers.CALLER)
                        .orElseThrow()
                        .posterior()
                        .orElseThrow());
                widths[i] = after[1] - after[0];
                inside += spare >= after[0] && spare <= after[1] ? 1 : 0;
            } catch (Refusal farOut) {
                widths[i] = before[1] - before[0];
            }
        }
        narrowed = Statistics.quantile(Statistics.sorted(widths), 0.5) / (before[1] - before[0]);
    }

    /** Median width of the interval over that before. */
    public double narrowed() {
        return narrowed;
    }

    /** How many next balls lie inside. */
    public int inside() {
        return inside;
    }

    /**
     * What the scale shows of the last piece. Each reading has an error that stays and one that is followed over time by
     * a step of its own (an autoregressive process of first order); together they have the covariance of the readings.
     */
    private HeldPiece read(HeldUnder bowl, boolean felt, double error, int readings) {
        double stays = own * score() + Math.sqrt(HeldPiece.STAYS) * error * score();
        double fresh = Math.sqrt(1 - HeldPiece.STAYS) * error;
        double moves = fresh * score();
        double seconds = readings == 1 ? SECONDS : APART;
        HeldPiece held = HeldPiece.of(bowl.reading(drop.launch(), seconds, felt) + stays + moves, seconds)
                .within(error);
        double kept = Math.exp(-APART / HeldPiece.SETTLING);
        for (int i = 1; i < readings; i++) {
            seconds += APART;
            moves = kept * moves + Math.sqrt(1 - kept * kept) * fresh * score();
            held = held.then(bowl.reading(drop.launch(), seconds, felt) + stays + moves, seconds)
                    .within(error);
        }
        return held;
    }

    private double[] interval(Draws draws) {
        double[] sorted = Statistics.sorted(draws.draws(() -> new DropModel(prepared)));
        return new double[] {Statistics.quantile(sorted, 0.025), Statistics.quantile(sorted, 0.975)};
    }

    /** The next piece of a bench: what it has to spare, kg. */
    private double another(double[] bench) {
        double[] other = drawn();
        for (Input input : new Input[] {Input.SCALE, Input.BATH_TEMPERATURE}) {
            bench[factors.column(input)] = other[factors.column(input)];
        }
        return drop.at(bench);
    }

    private double[] drawn() {
        return factors.priors().stream().mapToDouble(this::value).toArray();
    }

    private double value(Prior prior) {
        return prior.quantile(random.nextDouble(1e-12, 1));
    }

    private double score() {
        return Normal.quantile(random.nextDouble(1e-12, 1));
    }
}
