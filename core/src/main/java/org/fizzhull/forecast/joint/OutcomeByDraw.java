package org.fizzhull.forecast.joint;

import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.model.DrawnWeights;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.medium.Bath;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * What becomes of a piece in one bath, draw by draw. Draw i of every answer of a {@link JointPredictor} is the same
 * state of the world. Immutable.
 *
 * <p>Arrays have one place for each draw, in the order of the draws; they are copied when they are asked for.
 */
public final class OutcomeByDraw {
    /** The question in this bath, as it was judged. */
    private final Question question;
    /** Heaviest weight that floats, draw by draw. */
    private final CriticalWeights critical;
    /** Chances, rise time and fizz time. */
    private final OutcomeStatistics outcomes;
    /** Share of the pieces that float to the end, 0 to 1, draw by draw. */
    private final double[] shares;
    /** How much heavier it could be, a share of its weight, draw by draw. */
    private final double[] headroom;
    /** Time when 1 % of it is left, s, draw by draw; 0 in still water. */
    private final double[] fizzTimes;

    /** Counted columns of one question in one bath. */
    private OutcomeByDraw(
            Question question,
            CriticalWeights critical,
            OutcomeStatistics outcomes,
            double[] shares,
            double[] headroom,
            double[] fizz) {
        this.question = question;
        this.critical = critical;
        this.outcomes = outcomes;
        this.shares = shares;
        this.headroom = headroom;
        this.fizzTimes = fizz;
    }

    /**
     * Counts the columns of {@link VoyageModel}. The headroom (critical weight over mean weight, less 1) is set to 0 in
     * a draw whose piece contradicts it: there floating is not monotone in the weight.
     */
    static OutcomeByDraw of(PreparedQuestion prepared, double[][] columns) {
        CriticalWeights critical = new DrawnWeights(columns, Scatter.of(prepared));
        double[] shares = critical.shares();
        double[] headroom = new double[shares.length];
        for (int i = 0; i < headroom.length; i++) {
            // critical weight over the mean weight of the batch, less 1, unless the piece of the draw contradicts it
            double share = columns[VoyageModel.END][i] / columns[VoyageModel.MEAN][i] - 1;
            boolean against = share > 0 ? shares[i] == 0 : shares[i] == 1;
            headroom[i] = against ? 0 : share;
        }
        return new OutcomeByDraw(
                prepared.question(),
                critical,
                OutcomeStatistics.of(prepared, columns, critical),
                shares,
                headroom,
                columns[VoyageModel.FIZZ_TIME]);
    }

    /** {@return the water} */
    public Bath bath() {
        return question.bath();
    }

    /** {@return how it is judged to go in: a boat that tips counts as dropped} */
    public Question.IntoBath into() {
        return question.into();
    }

    /** {@return the heaviest weight that floats} */
    public CriticalWeights critical() {
        return critical;
    }

    /** {@return what becomes of it} */
    public Probability probability() {
        return outcomes.probability().orElseThrow();
    }

    /** {@return the time when 1 % of it is left, s; empty in still water} */
    public Optional<Interval> fizzTime() {
        return outcomes.fizzTime();
    }

    /** {@return the share of the pieces that float to the end, draw by draw} */
    public double[] shares() {
        return shares.clone();
    }

    /**
     * {@return how much heavier it could be and still float to the end, as a share of its weight, draw by draw; 0 in a
     * draw that is not monotone, where the piece itself sinks below the critical weight or floats above it}
     */
    public double[] headroom() {
        return headroom.clone();
    }

    /** {@return the median and 95 % interval of {@link #headroom}} */
    public Interval headroomInterval() {
        return OutcomeStatistics.intervalOf(headroom);
    }

    /** {@return the time when 1 % of it is left, s, draw by draw; 0 in still water} */
    public double[] fizzTimes() {
        return fizzTimes.clone();
    }

    /** {@return the standard error of the share that floats to the end, from the draws} */
    public double error() {
        return Statistics.meanError(shares, MonteCarlo.BLOCKS);
    }
}
