package org.fizzhull.forecast.conditioning;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.sampling.CorrelationRatio;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * Which measurement would narrow a forecast most, found from the draws that the forecast has made already.
 *
 * <ol>
 *   <li>The margin of a draw is its critical weight less the weight of the piece, kg; what the forecast is about is the
 *       width of its 95 % interval.
 *   <li>Of each measurement that can be made and was not yet, every draw tells what it would show, with an error of
 *       watch or scale that does not depend on the draw.
 *   <li>The share of the variance of the margin that goes when the reading is known is the correlation ratio of the two
 *       ({@link CorrelationRatio}); the width shrinks by the root of what is left.
 *   <li>Readings in eight classes of like size tell how often one would settle the question.
 *   <li>Named is the measurement that leaves the smallest width, of those that take a quarter of it or more, or that
 *       probably settle the question ({@link MeasureNext#SETTLING}).
 * </ol>
 *
 * <p>An expectation over all values a measurement may show, by the priors: one that shows something rare may do more or
 * less. Cost: a few sorts of the draws.
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

    /** Spread of a fizz time from piece to piece, a share: as in {@link TimedPiece}. */
    private static final double FIZZ_SHARE = 0.03;
    /** Error of a fizz time by watch and eye, s. */
    private static final double FIZZ_THUMB = 3;
    /** Spread of a rise time, a share: as in {@link TimedPiece}. */
    private static final double RISE_SHARE = 0.05;
    /** Error of a rise time by watch and eye, s. */
    private static final double RISE_THUMB = 4;

    /** Longer than any piece lasts, s: a piece that stays down. */
    private static final double NEVER = 1e5;

    /**
     * Step of a sequence that fills 0 to 1 evenly: the errors of the readings, without a generator of random numbers.
     */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** The question. */
    private final PreparedQuestion prepared;
    /** What was measured already. */
    private final Observations seen;
    /** Columns of {@link VoyageModel}, one place for each draw. */
    private final double[][] y;
    /** Critical weight less the weight of the piece, kg, draw by draw. */
    private final double[] margin;
    /** Width of the 95 % interval of the margin, kg. */
    private final double width;
    /** Error of the reading of each draw, standard deviations. */
    private final double[] error;
    /** The best measurement looked at so far. */
    private Optional<MeasureNext> best = Optional.empty();

    /** Margins and their width, from the columns of the question's model. */
    private NextMeasurement(PreparedQuestion prepared, Observations seen, double[][] columns) {
        this.prepared = prepared;
        this.seen = seen;
        y = columns;
        margin = new double[y[0].length];
        error = new double[margin.length];
        for (int i = 0; i < margin.length; i++) {
            margin[i] = y[VoyageModel.END][i] - y[VoyageModel.MEAN][i];
            error[i] = Normal.quantile((i + 0.5) * GOLDEN % 1);
        }
        Interval band = OutcomeStatistics.intervalOf(margin);
        width = band.high() - band.low();
    }

    /**
     * {@return the best measurement; empty where the chance is near 0 or 1 already, or none tells much}
     *
     * @param prepared the prepared question
     * @param seen what was measured already
     * @param columns of the model of the question
     * @param chance to float to the end
     */
    public static Optional<MeasureNext> of(
            PreparedQuestion prepared, Observations seen, double[][] columns, double chance) {
        if (prepared.question().stillWater() || chance < SETTLED || chance > 1 - SETTLED) {
            return Optional.empty();
        }
        NextMeasurement next = new NextMeasurement(prepared, seen, columns);
        next.look();
        return next.best;
    }

    /** Looks at each measurement that can be made and was not yet. */
    private void look() {
        Question question = prepared.question();
        double piece = question.making() instanceof Making.Weighed weighed
                ? weighed.mass()
                : Statistics.quantile(Statistics.sorted(y[VoyageModel.MASS]), 0.5);
        if (question.making() instanceof Moulded.Pressed && seen.weighed().isEmpty()) {
            double deviation = Scale.usual(piece).deviation();
            consider(MeasureNext.Kind.WEIGH_PRESSED, piece, read(y[VoyageModel.MEAN], deviation, 0));
        }
        if (seen.fizz().isEmpty()) {
            consider(MeasureNext.Kind.TIME_FIZZ, piece, read(y[VoyageModel.FIZZ_TIME], FIZZ_THUMB, FIZZ_SHARE));
        }
        if (seen.rise().isEmpty()) {
            consider(
                    MeasureNext.Kind.TIME_RISE,
                    prepared.heavier(),
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

    /**
     * What a reading of each draw would show.
     *
     * @param truly what there is to be read, in the unit of the reading; infinite for a piece that stays down
     * @param thumb one standard deviation that does not grow with it, in that unit
     * @param share one that does, a share of it; 0 where a value of 0 is a reading like any other
     */
    private double[] read(double[] truly, double thumb, double share) {
        double[] read = new double[truly.length];
        for (int i = 0; i < read.length; i++) {
            double value = truly[i];
            // 0 is a rise at once and shows no time; of a reading that has no share 0 is a number like any other
            boolean known = value != 0 || share == 0;
            read[i] = !(value < NEVER) ? NEVER : known ? value + Math.hypot(thumb, share * value) * error[i] : value;
        }
        return read;
    }

    /**
     * Takes a measurement where it leaves less of the width than the best so far, and is worth the trouble.
     *
     * @param mass weight of the piece to be measured, kg
     * @param read what each draw would show
     */
    private void consider(MeasureNext.Kind kind, double mass, double[] read) {
        double[] sorted = Statistics.sorted(read);
        double left = 1 - Math.max(0, Math.min(1, CorrelationRatio.of(read, sorted, margin)));
        double after = width * Math.sqrt(left);
        if (best.isPresent() && after >= best.get().widthAfter()) {
            return;
        }
        double settles = settles(read, sorted);
        if (after <= width * NARROWER || settles >= MeasureNext.SETTLING) {
            OptionalDouble size = kind == MeasureNext.Kind.TIME_RISE
                    ? OptionalDouble.of(expected(Statistics.sorted(y[VoyageModel.HEAVIER_LEFT]))
                            .median())
                    : OptionalDouble.empty();
            best = Optional.of(new MeasureNext(kind, mass, expected(sorted), size, width, after, settles));
        }
    }

    /**
     * Share of the draws whose reading leaves a chance to float of 9 of 10 or more, or of 1 of 10 or less. Equal readings
     * follow one another as their draws do.
     *
     * @param read what each draw would show
     * @param sorted the same in ascending order
     */
    private double settles(double[] read, double[] sorted) {
        // draws in the order of what they would show, cut into classes
        int n = read.length;
        int[] placed = new int[n];
        double[] floats = new double[CLASSES];
        double floating = 0;
        for (int i = 0; i < n; i++) {
            int first = first(sorted, read[i]);
            int rank = first + placed[first]++;
            double floated = margin[i] > 0 ? 1 : 0;
            floats[(int) (((rank + 1L) * CLASSES - 1) / n)] += floated;
            floating += floated;
        }
        if (settled(floating / n)) {
            return 0;
        }
        int settled = 0;
        for (int c = 0; c < CLASSES; c++) {
            int size = (c + 1) * n / CLASSES - c * n / CLASSES;
            settled += size > 0 && settled(floats[c] / size) ? size : 0;
        }
        return settled / (double) n;
    }

    /** Where a value that is among sorted ones stands first. */
    private static int first(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Double.compare(sorted[middle], value) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Whether a chance settles the question. */
    private static boolean settled(double chance) {
        return chance >= SURE || chance <= 1 - SURE;
    }

    /** Of those that show a number at all; they come sorted. */
    private static Interval expected(double[] sorted) {
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
