package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.MonteCarlo;

/**
 * What was to be expected of the measured pieces before they were measured, of each kind the first piece: 95 %
 * intervals over at most 1,024 draws of the priors. A reading outside is reported as a surprise and not refused,
 * since the priors may be wrong. Only the rise of a piece that floats at once in every draw is refused. Made by
 * {@link Conditioned}.
 *
 * @param seen what was measured
 * @param fizz time of the timed piece, s
 * @param rise time of the timed piece, s, of the draws that rise later
 * @param risers share of the draws that rise later, 0 to 1
 * @param floaters share of the draws that float at once, 0 to 1
 * @param mass of the weighed piece, kg
 * @param lift reading of the piece held under, kg
 */
record ExpectedReadings(
        Observations seen,
        Optional<Interval> fizz,
        Optional<Interval> rise,
        double risers,
        double floaters,
        Optional<Interval> mass,
        Optional<Interval> lift) {

    /** A 95 % point is known well enough from so many. */
    private static final int DRAWS = 1024;

    /** Share of the draws below which a rise was hardly to be expected. */
    private static final double HARDLY = 0.025;

    /** Draws what a measurement of each kind would have shown. */
    static ExpectedReadings of(PreparedQuestion prepared, Observations seen, Sampling sampling, Workers workers) {
        Question question = prepared.question();
        Factors asked = prepared.factors();
        MonteCarlo run = run(asked, sampling, workers);
        Optional<Interval> fizz = Observations.first(seen.fizz())
                .map(piece -> OutcomeStatistics.intervalOf(run.draws(() -> {
                    TimedVoyage voyage = new TimedVoyage(prepared, piece.mass());
                    return voyage::fizz;
                })));
        double[] rise = Observations.first(seen.rise())
                .map(piece -> run.draws(() -> {
                    TimedVoyage voyage = new TimedVoyage(prepared, piece.mass());
                    return voyage::rise;
                }))
                .orElse(new double[0]);
        // 0 is up at once, infinity never: the times between are those of the risers
        double floaters = 0;
        int risers = 0;
        double[] times = new double[rise.length];
        for (double time : rise) {
            if (time > 0 && time < Double.POSITIVE_INFINITY) {
                times[risers++] = time;
            }
            floaters += time > 0 ? 0 : 1.0 / rise.length;
        }
        Optional<Interval> when = risers == 0
                ? Optional.empty()
                : Optional.of(OutcomeStatistics.intervalOf(Arrays.copyOf(times, risers)));
        // what the scale would have shown of a pressed piece, and of one held under
        Optional<Interval> mass =
                seen.weighed().map(piece -> mass(question.making(), question.shape(), asked, piece, run));
        Optional<Interval> lift = Observations.first(seen.lift())
                .map(piece -> OutcomeStatistics.intervalOf(run.draws(() -> {
                    DunkReading bowl = new DunkReading(prepared, piece);
                    return bowl::first;
                })));
        return new ExpectedReadings(seen, fizz, when, risers / (double) Math.max(1, rise.length), floaters, mass, lift);
    }

    /** The same of a weighed press piece alone. */
    static ExpectedReadings weighed(
            Making making, Shape shape, Factors factors, WeighedPiece piece, Sampling sampling, Workers workers) {
        return new ExpectedReadings(
                Observations.none().weighed(piece),
                Optional.empty(),
                Optional.empty(),
                0,
                0,
                Optional.of(mass(making, shape, factors, piece, run(factors, sampling, workers))),
                Optional.empty());
    }

    /** Interval of the weight of a pressed piece, kg, hand and press at their medians. */
    private static Interval mass(Making making, Shape shape, Factors factors, WeighedPiece piece, MonteCarlo run) {
        return OutcomeStatistics.intervalOf(run.draws(() -> {
            PressedWeightSolver solve = new PressedWeightSolver(piece, making, shape, factors);
            return inputs -> solve.mass(inputs, 0.5, 0.5);
        }));
    }

    /** At most 1,024 draws of the priors. */
    private static MonteCarlo run(Factors factors, Sampling sampling, Workers workers) {
        return new MonteCarlo(
                factors.priors(), factors.columns(), Math.min(DRAWS, sampling.samples()), sampling.seed(), workers);
    }

    /**
     * What lies outside of what was expected.
     *
     * @throws org.fizzhull.quantity.Refusal {@code contradiction} for the rise of a piece that floats at once in every
     *     draw
     */
    List<Notice> surprises() {
        List<Notice> notices = new ArrayList<>();
        Observations.first(seen.fizz()).ifPresent(piece -> {
            if (outside(piece.time(), fizz.orElseThrow())) {
                notices.add(MeasuredNotices.fizzSurprise(piece.time(), fizz.get()));
            }
        });
        if (!seen.rise().isEmpty()) {
            TimedPiece piece = seen.rise().get(0);
            if (floaters > 1 - 1e-9) {
                throw MeasuredNotices.floats(piece);
            }
            if (risers < HARDLY) {
                notices.add(MeasuredNotices.hardlyRises(risers));
            } else if (outside(piece.time(), rise.orElseThrow())) {
                notices.add(MeasuredNotices.riseSurprise(piece.time(), rise.get()));
            }
        }
        Observations.first(seen.lift()).ifPresent(piece -> {
            double reading = piece.first().reading();
            if (outside(reading, lift.orElseThrow())) {
                notices.add(MeasuredNotices.liftSurprise(reading, lift.get()));
            }
        });
        if (seen.weighed().isPresent() && outside(seen.weighed().get().dampMass(), mass.orElseThrow())) {
            notices.add(MeasuredNotices.weightSurprise(seen.weighed().get().dampMass(), mass.get()));
        }
        return notices;
    }

    /** Whether a value lies outside an interval. */
    private static boolean outside(double value, Interval expected) {
        return value < expected.low() || value > expected.high();
    }
}
