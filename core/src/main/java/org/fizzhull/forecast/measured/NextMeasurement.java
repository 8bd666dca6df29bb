package org.fizzhull.forecast.measured;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.uncertainty.CorrelationRatio;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Statistics;

/**
 * Which measurement would narrow a forecast most. Of each that can be made, every draw tells what it would show, with the
 * error of watch and scale; the share of the variance of the margin (critical weight less the weight of the piece) that
 * goes when it is known is the correlation ratio of the two, and the width shrinks by the root of what is left. Named is
 * the one that leaves the smallest width, of those that take a quarter of it or more, or that probably settle the question.
 */
public final class NextMeasurement {
    /** A measurement that leaves more of the width than this is not worth the trouble, unless it settles the question. */
    private static final double NARROWER = 0.75;

    /** The chance beyond which, or below the rest of which, a question counts as settled. */
    private static final double SURE = 0.9;

    /** Readings are taken together in so many classes of like size to see what is left to doubt within one. */
    private static final int CLASSES = 8;

    /** Where the chance is this near to 0 or 1 there is nothing to settle. */
    private static final double SETTLED = 0.05;

    private static final double FIZZ_SHARE = 0.03;
    private static final double FIZZ_THUMB = 3;
    private static final double RISE_SHARE = 0.05;
    private static final double RISE_THUMB = 4;

    /** Longer than any piece lasts, s: a piece that stays down. */
    private static final double NEVER = 1e5;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final PreparedQuestion posed;
    private final Observations seen;
    private final double[][] y;
    private final double[] margin;
    private final double width;
    private Optional<MeasureNext> best = Optional.empty();

    private NextMeasurement(PreparedQuestion posed, Observations seen, double[][] columns) {
        this.posed = posed;
        this.seen = seen;
        y = columns;
        margin = new double[y[0].length];
        for (int i = 0; i < margin.length; i++) {
            margin[i] = y[VoyageModel.END][i] - y[VoyageModel.MEAN][i];
        }
        Interval band = OutcomeStatistics.interval95(Statistics.sorted(margin));
        width = band.high() - band.low();
    }

    /**
     * {@return the best measurement; empty where the chance is near 0 or 1 already, or none tells much}
     *
     * @param posed the prepared question
     * @param seen what was measured already
     * @param columns of the model of the question
     * @param chance to float to the end
     */
    public static Optional<MeasureNext> of(
            PreparedQuestion posed, Observations seen, double[][] columns, double chance) {
        if (posed.question().stillWater() || chance < SETTLED || chance > 1 - SETTLED) {
            return Optional.empty();
        }
        NextMeasurement next = new NextMeasurement(posed, seen, columns);
        next.look();
        return next.best;
    }

    private void look() {
        Question question = posed.question();
        double piece = question.making() instanceof Weighed weighed
                ? weighed.mass()
                : Statistics.quantile(Statistics.sorted(y[VoyageModel.MASS]), 0.5);
        if (question.making() instanceof PressedMould && seen.weighed().isEmpty()) {
            double deviation = Scale.usual(piece).deviation();
            consider(MeasureNext.Kind.WEIGH_PRESSED, piece, read(y[VoyageModel.MEAN], deviation, 0));
        }
        if (seen.fizz().isEmpty()) {
            consider(MeasureNext.Kind.TIME_FIZZ, piece, read(y[VoyageModel.FIZZ_TIME], FIZZ_THUMB, FIZZ_SHARE));
        }
        if (seen.rise().isEmpty()) {
            consider(
                    MeasureNext.Kind.TIME_RISE,
                    posed.heavier(),
                    read(y[VoyageModel.HEAVIER_RISE], RISE_THUMB, RISE_SHARE));
        }
        if (seen.lift().isEmpty()) {
            // what two pieces of one mould differ by, of the dunked piece and of the next
            double own = Math.sqrt(2) * HeldPiece.ownLift(question.shape(), question.bath());
            double deviation = Math.hypot(HeldPiece.DEVIATION, own);
            consider(MeasureNext.Kind.HOLD_UNDER, piece, read(y[VoyageModel.HELD], deviation, 0));
        }
        if (question.measured() != Measured.WATER) {
            double deviation = Measured.WATER.sizeDeviation(question.shape().surface());
            consider(MeasureNext.Kind.WEIGH_WATER, piece, read(y[VoyageModel.SIZE_ERROR], deviation, 0));
        }
    }

    /** What a reading of each draw would show, with an error that does not depend on the draw. */
    private static double[] read(double[] truly, double thumb, double share) {
        double[] read = new double[truly.length];
        for (int i = 0; i < read.length; i++) {
            double value = truly[i];
            double u = (i + 0.5) * GOLDEN % 1;
            boolean known = value != 0 || share == 0;
            read[i] = !(value < NEVER)
                    ? NEVER
                    : known ? value + Math.hypot(thumb, share * value) * Normal.quantile(u) : value;
        }
        return read;
    }

    private void consider(MeasureNext.Kind kind, double mass, double[] read) {
        double left = 1 - Math.max(0, Math.min(1, CorrelationRatio.of(read, margin)));
        double after = width * Math.sqrt(left);
        if (best.isPresent() && after >= best.get().widthAfter()) {
            return;
        }
        double settles = settles(read);
        if (after <= width * NARROWER || settles >= MeasureNext.SETTLING) {
            OptionalDouble size = kind == MeasureNext.Kind.TIME_RISE
                    ? OptionalDouble.of(expected(y[VoyageModel.HEAVIER_LEFT]).median())
                    : OptionalDouble.empty();
            best = Optional.of(new MeasureNext(kind, mass, expected(read), size, width, after, settles));
        }
    }

    /** Share of the draws whose reading leaves a chance to float of 9 of 10 or more, or of 1 of 10 or less. */
    private double settles(double[] read) {
        int[] order = IntStream.range(0, read.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> read[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        if (settled(chance(order, 0, order.length))) {
            return 0;
        }
        int settled = 0;
        for (int c = 0; c < CLASSES; c++) {
            int from = c * order.length / CLASSES;
            int to = (c + 1) * order.length / CLASSES;
            settled += to > from && settled(chance(order, from, to)) ? to - from : 0;
        }
        return settled / (double) order.length;
    }

    /** Share of some draws in which the piece is lighter than its critical weight. */
    private double chance(int[] draws, int from, int to) {
        double floats = 0;
        for (int i = from; i < to; i++) {
            floats += margin[draws[i]] > 0 ? 1 : 0;
        }
        return floats / (to - from);
    }

    private static boolean settled(double chance) {
        return chance >= SURE || chance <= 1 - SURE;
    }

    /** Of those that show a number at all. */
    private static Interval expected(double[] read) {
        double[] sorted = Statistics.sorted(read);
        int to = sorted.length;
        while (to > 1 && sorted[to - 1] >= NEVER) {
            to--;
        }
        int from = 0;
        while (from < to - 1 && sorted[from] == 0) {
            from++;
        }
        return OutcomeStatistics.interval95(Arrays.copyOfRange(sorted, from, to));
    }
}
