package org.fizzhull.forecast.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.result.DryBand;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.fizzhull.uncertainty.sampling.SystematicResampling;

/**
 * What is asked of every draw of a drying forecast, a column each: fixed ones, then mass and fizz left at the times of
 * the band, then what is lost at each weighing of a log, then the inputs of the draw.
 *
 * <p>Weighings of a {@link DryLog} weigh the draws afterwards: the columns are then resampled in place
 * ({@link #condition}), so that everything read from them is after the weighings. Threads write different places;
 * nothing is read before all are written.
 */
public final class DryColumns {
    /** Gas in a film wrap, as a part of the piece's volume, from which it is seen to swell [assumed]. */
    private static final double SWOLLEN = 0.1;

    /** Column of the mass as pressed, kg. */
    private static final int DAMP = 0;
    /** Column of the mass at the end of the plan, kg. */
    private static final int LAST = 1;
    /** Column of the mass once all that can leave in the drying room has left, kg. */
    private static final int LABEL = 2;
    /** Column of the time when it is ready, s; infinite where it is not within 60 days. */
    private static final int READY = 3;
    /** Column of the share of the fizz lost at the end of the plan. */
    private static final int LOST = 4;
    /** Column of the water gone by the end of the drying, kg. */
    private static final int WATER = 5;
    /** Column of the gas made inside film wraps, over the volume of the piece. */
    private static final int FILM_GAS = 6;
    /** Column of the water that has to leave after the last weighing until it is ready, kg; 0 without weighings. */
    private static final int TO_GO = 7;
    /** Column of the class of swelling, as its least growth in volume. */
    private static final int SWELLING = 8;
    /** Number of those columns: the masses of the band begin here. */
    private static final int FIXED = 9;

    /** What happens between press and bath. */
    private final DryingPlan plan;
    /** Mass of what does not dry, kg. */
    private final double inset;
    /** Times of the band, s from pressing. */
    private final double[] times;
    /** Weighed pieces; none without a log. */
    private final List<DryLog.Series> pieces;
    /** Time of the last weighing, s. */
    private final double weighedLast;
    /** Number of inputs that are kept, at the end of the columns. */
    private final int inputs;
    /** Number of weighings of all pieces. */
    private final int weighings;
    /** The columns, one place for each draw. */
    private double[][] values;

    /**
     * Makes room for every draw.
     *
     * @param plan what happens between press and bath
     * @param inset mass of what does not dry, kg
     * @param times of the band, s
     * @param log weighings, if any
     * @param inputs number of inputs that are kept; 0 for none
     * @param draws number of them
     */
    public DryColumns(DryingPlan plan, double inset, double[] times, Optional<DryLog> log, int inputs, int draws) {
        this.plan = plan;
        this.inset = inset;
        this.times = times;
        this.inputs = inputs;
        pieces = log.map(DryLog::pieces).orElse(List.of());
        weighedLast = log.map(DryLog::end).orElse(0.0);
        int count = 0;
        for (DryLog.Series piece : pieces) {
            count += piece.times().size();
        }
        weighings = count;
        values = new double[FIXED + 2 * times.length + count + inputs][draws];
    }

    /** {@return an empty row, one place a column} */
    public double[] row() {
        return new double[values.length];
    }

    /**
     * Puts a row in its place.
     *
     * @param draw number of the draw, from 0
     * @param row its values
     */
    public void keep(int draw, double[] row) {
        for (int i = 0; i < row.length; i++) {
            values[i][draw] = row[i];
        }
    }

    /**
     * Fills a row.
     *
     * @param row where the values are written
     * @param course course of the draw
     * @param ratio volume of the draw's mould over the entered one
     * @param drawn inputs of the draw; not read where none are kept
     */
    public void write(double[] row, DryingCourse course, double ratio, double[] drawn) {
        double dried = Math.min(DryModel.dryingTime(plan.phases()), course.end());
        DryingCourse.State start = course.at(0);
        DryingCourse.State out = course.at(dried);
        DryingCourse.State last = course.last();
        row[DAMP] = course.dampMass() * ratio + inset;
        row[LAST] = last.mass() * ratio + inset;
        row[LABEL] = (out.mass() - course.excess(out) - out.alcohol()) * ratio + inset;
        row[READY] = course.readyAfter().orElse(Double.POSITIVE_INFINITY);
        row[LOST] = 1 - last.fizzLeft();
        row[WATER] = (start.water() - out.water()) * ratio;
        row[FILM_GAS] = gasInFilms(course);
        row[SWELLING] = course.swelling().leastGrowth();
        for (int k = 0; k < times.length; k++) {
            DryingCourse.State state = course.at(Math.min(times[k], course.end()));
            row[FIXED + k] = (state.mass() * ratio + inset) / row[DAMP];
            row[FIXED + times.length + k] = state.fizzLeft();
        }
        int at = FIXED + 2 * times.length;
        // what each piece of the log would have lost by each weighing
        for (DryLog.Series piece : pieces) {
            for (double lost : DryLog.Fit.lost(course, piece, ratio)) {
                row[at++] = lost;
            }
        }
        if (!pieces.isEmpty()) {
            DryingCourse.State now = course.at(Math.min(weighedLast, course.end()));
            row[TO_GO] = course.toGo(now) * ratio;
        }
        System.arraycopy(drawn, 0, row, at, inputs);
        check(row);
    }

    /** Only the time until ready may be without end. */
    private static void check(double[] row) {
        for (int i = 0; i < row.length; i++) {
            if (!(Math.abs(row[i]) < Double.POSITIVE_INFINITY) && !(i == READY && row[i] > 0)) {
                throw new IllegalStateException("a drying course gave " + row[i] + " for column " + i);
            }
        }
    }

    /** Gas made inside film wraps at 1 atm, as a part of the volume of the piece. */
    private double gasInFilms(DryingCourse course) {
        double gas = 0;
        double from = 0;
        for (DryingPhase phase : plan.phases()) {
            double to = Math.min(from + phase.duration(), course.end());
            boolean film = phase.wrap().present() && !phase.wrap().rigid() && (from > 0 || phase.storage());
            if (film && to > from) {
                double moles = (course.at(to).extent() - course.at(from).extent()) * course.rhoDry();
                gas += moles
                        * PhysicalConstants.GAS_CONSTANT
                        * phase.air().temperature()
                        / PhysicalConstants.ATMOSPHERE;
            }
            from = Math.max(from, to);
        }
        return gas;
    }

    /**
     * {@return what the weighings say of the draws} Weights each draw by how well its course meets them and, where they
     * fit, resamples the columns; see {@link DryLog.Fit}. Called once, when all draws are written.
     */
    public DryLog.Fit condition() {
        int draws = values[0].length;
        double[] chi = new double[draws];
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < draws; k++) {
            int at = FIXED + 2 * times.length;
            for (DryLog.Series piece : pieces) {
                double[] lost = new double[piece.times().size()];
                for (int i = 0; i < lost.length; i++) {
                    lost[i] = values[at++][k];
                }
                chi[k] += DryLog.Fit.deviation(piece, lost);
            }
            least = Math.min(least, chi[k]);
        }
        // weights of the draws, the best one at 1 so that nothing underflows
        double sum = 0;
        double squares = 0;
        double[] shares = new double[draws];
        for (int k = 0; k < draws; k++) {
            shares[k] = Math.exp(-0.5 * (chi[k] - least));
            sum += shares[k];
            squares += shares[k] * shares[k];
        }
        for (int k = 0; k < draws; k++) {
            shares[k] /= sum;
        }
        double misfit = Math.sqrt(least / (weighings - pieces.size()));
        DryLog.Fit unweighted = new DryLog.Fit(interval(TO_GO), misfit, sum * sum / squares);
        if (!unweighted.fits()) {
            return unweighted;
        }
        choose(SystematicResampling.places(shares, draws, 1));
        return new DryLog.Fit(interval(TO_GO), misfit, sum * sum / squares);
    }

    /** Puts the draws of these places in the place of the present ones. */
    private void choose(int[] drawn) {
        double[][] chosen = new double[values.length][drawn.length];
        for (int i = 0; i < chosen.length; i++) {
            for (int k = 0; k < drawn.length; k++) {
                chosen[i][k] = values[i][drawn[k]];
            }
        }
        values = chosen;
    }

    /** {@return the medians of the kept inputs} */
    public double[] medians() {
        double[] medians = new double[inputs];
        int from = values.length - inputs;
        for (int i = 0; i < inputs; i++) {
            medians[i] = Statistics.quantile(Statistics.sorted(values[from + i]), 0.5);
        }
        return medians;
    }

    Interval damp() {
        return interval(DAMP);
    }

    Interval last() {
        return interval(LAST);
    }

    Interval label() {
        return interval(LABEL);
    }

    ReadyTimes ready() {
        return ReadyTimes.of(values[READY]);
    }

    Interval fizzLost() {
        return interval(LOST);
    }

    Interval waterGone() {
        return interval(WATER);
    }

    /** Share of the draws whose film wrap swells. */
    double swollenFilms() {
        return shareFrom(FILM_GAS, Math.nextUp(SWOLLEN));
    }

    /** Share of the draws that lose more of their fizz. */
    double losesMoreThan(double share) {
        return shareFrom(LOST, Math.nextUp(share));
    }

    /** Share of the draws that swell so much or more. */
    double swells(DryingCourse.Swelling least) {
        return shareFrom(SWELLING, least.leastGrowth());
    }

    /** Share of the draws whose column is so much or more. */
    private double shareFrom(int column, double least) {
        int count = 0;
        for (double value : values[column]) {
            count += value >= least ? 1 : 0;
        }
        return (double) count / values[column].length;
    }

    List<Double> times() {
        return Arrays.stream(times).boxed().toList();
    }

    /** Bands over time; mass is the spread of what is left of the mass as pressed, laid on its median. */
    DryBand band() {
        List<Interval> mass = new ArrayList<>(times.length);
        List<Interval> fizz = new ArrayList<>(times.length);
        double damp = interval(DAMP).median();
        for (int k = 0; k < times.length; k++) {
            mass.add(interval(FIXED + k).times(damp));
            fizz.add(interval(FIXED + times.length + k));
        }
        return new DryBand(times(), mass, fizz);
    }

    /** Median and 95 % interval of a column, in its unit. */
    private Interval interval(int column) {
        return OutcomeStatistics.intervalOf(values[column]);
    }
}
