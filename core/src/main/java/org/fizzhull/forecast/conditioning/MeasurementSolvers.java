package org.fizzhull.forecast.conditioning;

import java.util.Optional;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.uncertainty.sampling.ExactConditioning;
import org.jspecify.annotations.Nullable;

/**
 * Everything that was measured on pieces of a question, solved draw by draw:
 *
 * <ol>
 *   <li>the press scale for a weighed piece ({@link PressedWeightSolver}), which the bath does not touch;
 *   <li>the speed of recession for a fizz time ({@link FizzTimeSolver}) together with what a rise or a lift pins at each speed
 *       ({@link RiseTimeSolver}, {@link LiftReadingSolver}); one alone where only one was measured;
 *   <li>what was measured beyond that weights the draw ({@link FurtherMeasurements}).
 * </ol>
 *
 * <p>Inputs that are drawn together, as a bench leaves them, stand in whole draws: nothing is solved for, and every
 * measurement weights them. One instance serves one thread. Called by {@link org.fizzhull.uncertainty.sampling.Posterior}.
 */
public final class MeasurementSolvers implements ExactConditioning {
    /**
     * Uniform numbers a draw, by place: 0 error of scale, 1 of the hand, 2 of the press; 3 of rise or lift; 4 of the
     * fizz time, 5 the choice between its roots; 6 the choice of the lift. As many whatever was measured, so that draws
     * stay comparable.
     */
    private static final int UNIFORMS = 7;

    /** Solves the press scale; null where nothing was weighed. */
    private final @Nullable PressedWeightSolver press;
    /** Solves what a rise or a lift tells; null where neither was measured. */
    private final @Nullable LiftSolver lift;
    /** Solves the speed of recession, with {@link #lift} inside; null where no fizz time was taken. */
    private final @Nullable FizzTimeSolver fizz;
    /** What weights the draw beyond that. */
    private final FurtherMeasurements further;
    /** Columns that are solved. */
    private final int[] solved;
    /** Values of the inputs while they are solved: a draw that is given up leaves the caller's array as it was. */
    private final double[] scratch;

    private MeasurementSolvers(
            @Nullable PressedWeightSolver press,
            @Nullable LiftSolver lift,
            @Nullable FizzTimeSolver fizz,
            FurtherMeasurements further,
            Factors factors) {
        this.press = press;
        this.lift = lift;
        this.fizz = fizz;
        this.further = further;
        int count = (press != null ? 1 : 0) + (lift != null ? 1 : 0) + (fizz != null ? 1 : 0);
        solved = new int[count];
        int at = 0;
        if (press != null) {
            solved[at++] = factors.column(Input.PRESS_SCALE);
        }
        if (lift != null) {
            solved[at++] = lift.column();
        }
        if (fizz != null) {
            solved[at] = factors.column(Input.RECESSION);
        }
        scratch = new double[factors.priors().size()];
    }

    /**
     * {@return pins of weighed pieces alone, for one thread}
     *
     * @param press solves the press scale for them
     * @param factors table of priors
     */
    public static MeasurementSolvers pressed(PressedWeightSolver press, Factors factors) {
        return factors.isDependent()
                ? new MeasurementSolvers(null, null, null, FurtherMeasurements.pressed(press), factors)
                : new MeasurementSolvers(press, null, null, new FurtherMeasurements(), factors);
    }

    /**
     * {@return pins of all that was measured, for one thread}
     *
     * @param prepared the prepared question
     * @param seen what was measured on pieces of the same mix
     */
    public static MeasurementSolvers of(PreparedQuestion prepared, Observations seen) {
        Question question = prepared.question();
        Factors factors = prepared.factors();
        if (factors.isDependent()) {
            return weighing(prepared, seen);
        }
        PressedWeightSolver press = seen.weighed()
                .map(piece -> new PressedWeightSolver(piece, question.making(), question.shape(), factors))
                .orElse(null);
        LiftSolver lift = lift(prepared, seen);
        FizzTimeSolver fizz = Observations.first(seen.fizz())
                .map(piece -> new FizzTimeSolver(
                        new TimedVoyage(prepared, piece.mass()),
                        piece,
                        factors.column(Input.RECESSION),
                        factors.solved(Input.RECESSION),
                        Optional.ofNullable(lift)))
                .orElse(null);
        return new MeasurementSolvers(press, lift, fizz, FurtherMeasurements.of(prepared, seen), factors);
    }

    /** {@return the same that solve for nothing: each draw is weighted by all that was measured} */
    static MeasurementSolvers weighing(PreparedQuestion prepared, Observations seen) {
        return new MeasurementSolvers(null, null, null, FurtherMeasurements.all(prepared, seen), prepared.factors());
    }

    /**
     * What a rise or a lift pins; null without either. The rise is solved for where there is one: it tells less than a
     * lift does, and to weight by what tells more costs least.
     */
    private static @Nullable LiftSolver lift(PreparedQuestion prepared, Observations seen) {
        if (seen.rise().isEmpty() && seen.lift().isEmpty()) {
            return null;
        }
        Factors factors = prepared.factors();
        if (seen.rise().isEmpty()) {
            return LiftReadingSolver.of(new DunkReadings(prepared, seen.lift()), factors);
        }
        TimedPiece rose = seen.rise().get(0);
        return new RiseTimeSolver(
                new TimedVoyage(prepared, rose.mass()),
                rose,
                factors.column(Input.BUBBLE_SIZE),
                factors.solved(Input.BUBBLE_SIZE));
    }

    @Override
    public int[] solved() {
        return solved.clone();
    }

    @Override
    public int uniforms() {
        return UNIFORMS;
    }

    @Override
    public double solve(double[] inputs, double[] u) {
        // the press first: what it solves decides the piece that the bath gets
        System.arraycopy(inputs, 0, scratch, 0, scratch.length);
        double weight = press == null ? 0 : press.solve(scratch, u[0], u[1], u[2]);
        if (lift != null) {
            lift.measure(u[3], u[6]);
        }
        if (weight > Double.NEGATIVE_INFINITY && fizz != null) {
            weight += fizz.solve(scratch, fizz.truth(u[4]), u[5]);
        } else if (weight > Double.NEGATIVE_INFINITY && lift != null) {
            weight += lift.solve(scratch, false);
        }
        // the solved values go to the caller only where all was met
        if (weight > Double.NEGATIVE_INFINITY) {
            weight += further.logLikelihood(scratch);
            for (int column : solved) {
                inputs[column] = scratch[column];
            }
        }
        return weight;
    }
}
