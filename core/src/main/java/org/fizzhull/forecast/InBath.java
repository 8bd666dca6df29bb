package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.medium.Bath;
import org.fizzhull.uncertainty.Statistics;

/**
 * What becomes of a piece in one bath, draw by draw. Draw i of every answer of a {@link JointPredictor} is the same state
 * of the world. Immutable.
 */
public final class InBath {
    private final Question question;
    private final CriticalWeights critical;
    private final Fates fates;
    private final double[] shares;
    private final double[] headroom;
    private final double[] fizzTimes;

    private InBath(
            Question question,
            CriticalWeights critical,
            Fates fates,
            double[] shares,
            double[] headroom,
            double[] fizz) {
        this.question = question;
        this.critical = critical;
        this.fates = fates;
        this.shares = shares;
        this.headroom = headroom;
        this.fizzTimes = fizz;
    }

    /** From the columns of {@link VoyageModel}. */
    static InBath of(Posed posed, double[][] columns) {
        CriticalWeights critical = FloatPredictor.critical(posed, columns);
        double[] headroom = new double[columns[VoyageModel.END].length];
        for (int i = 0; i < headroom.length; i++) {
            headroom[i] = columns[VoyageModel.END][i] / columns[VoyageModel.MEAN][i] - 1;
        }
        return new InBath(
                posed.question(),
                critical,
                Fates.of(posed, columns, critical),
                critical.shares(),
                headroom,
                columns[VoyageModel.FIZZ_TIME]);
    }

    /** The water. */
    public Bath bath() {
        return question.bath();
    }

    /** How it is judged to go in: a boat that tips counts as dropped. */
    public IntoBath into() {
        return question.into();
    }

    /** The heaviest weight that floats. */
    public CriticalWeights critical() {
        return critical;
    }

    /** What becomes of it. */
    public Probability probability() {
        return fates.probability().orElseThrow();
    }

    /** When 1 % of it is left, s; empty in still water. */
    public Optional<Interval> fizzTime() {
        return fates.fizzTime();
    }

    /** Share of the pieces that float to the end, draw by draw. */
    public double[] shares() {
        return shares.clone();
    }

    /** How much heavier it could be and still float to the end, as a share of its weight, draw by draw. */
    public double[] headroom() {
        return headroom.clone();
    }

    /** Median and 95 % interval of {@link #headroom}. */
    public Interval headroomInterval() {
        return Fates.interval95(Statistics.sorted(headroom));
    }

    /** When 1 % of it is left, s, draw by draw; 0 in still water. */
    public double[] fizzTimes() {
        return fizzTimes.clone();
    }

    /** Standard error of the share that floats to the end, from the draws. */
    public double error() {
        return Statistics.meanError(shares, org.fizzhull.uncertainty.MonteCarlo.BLOCKS);
    }
}
