package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;

/**
 * Measurements beyond the one that each input is solved for: each weights the draws by its likelihood, a normal density
 * of what was measured around what the draw makes of that piece. With x_i what was measured, s_i its deviation and y_i
 * what the draw makes of it,
 *
 * <pre>  ln w = -1/2 sum_i ((x_i - y_i)/s_i)^2</pre>
 *
 * <p>A result weights them by the chance of {@link DroppedPiece}, a drying log by that of {@link DriedCourse}. Costs effective
 * draws, which a notice reports, and a voyage or a course of drying a piece and draw. One instance serves one thread.
 */
final class FurtherMeasurements {
    /** Logarithm of the likelihood of each measurement, less a constant, for values of the inputs, SI. */
    private final List<ToDoubleFunction<double[]>> likelihoods = new ArrayList<>();

    /** Those of a question that nothing is solved for: fizz and rise times behind the first, lifts behind a rise. */
    static FurtherMeasurements of(PreparedQuestion prepared, Observations seen) {
        FurtherMeasurements further = new FurtherMeasurements();
        further.bathed(
                prepared,
                Observations.behind(seen.fizz()),
                Observations.behind(seen.rise()),
                seen.rise().isEmpty() ? List.of() : seen.lift());
        further.seen(prepared, seen);
        return further;
    }

    /** All of them, for inputs that are drawn together from a bench: what stands in whole draws is not solved for. */
    static FurtherMeasurements all(PreparedQuestion prepared, Observations seen) {
        FurtherMeasurements further = new FurtherMeasurements();
        seen.weighed().ifPresent(piece -> {
            PressedWeightSolver press = new PressedWeightSolver(
                    piece, prepared.question().making(), prepared.question().shape(), prepared.factors());
            further.likelihoods.add(press::logLikelihood);
        });
        further.bathed(prepared, seen.fizz(), seen.rise(), seen.lift());
        further.seen(prepared, seen);
        return further;
    }

    /** Those of weighed pieces alone. */
    static FurtherMeasurements pressed(PressedWeightSolver press) {
        FurtherMeasurements further = new FurtherMeasurements();
        further.likelihoods.add(press::logLikelihood);
        return further;
    }

    /** Adds what no input is solved for: results and drying logs. */
    private void seen(PreparedQuestion prepared, Observations seen) {
        double own = HeldPiece.ownLift(
                prepared.question().shape(), prepared.question().bath());
        for (DroppedPiece piece : seen.results()) {
            TimedVoyage voyage = new TimedVoyage(prepared, piece.mass());
            boolean floated = piece.result() == DroppedPiece.Result.FLOATED;
            likelihoods.add(inputs -> Math.log(DroppedPiece.chance(floated, voyage.spare(inputs), own)));
        }
        for (Observations.LoggedPieces piece : seen.dried()) {
            likelihoods.add(new DriedCourse(prepared, piece)::logLikelihood);
        }
    }

    /** Adds measurements in the bath. */
    private void bathed(
            PreparedQuestion prepared, List<TimedPiece> fizzed, List<TimedPiece> rose, List<HeldPiece> held) {
        for (TimedPiece piece : fizzed) {
            TimedVoyage voyage = new TimedVoyage(prepared, piece.mass());
            likelihoods.add(inputs -> off(voyage.fizz(inputs), piece));
        }
        for (TimedPiece piece : rose) {
            TimedVoyage voyage = new TimedVoyage(prepared, piece.mass());
            likelihoods.add(inputs -> rise(voyage, inputs, piece));
        }
        if (!held.isEmpty()) {
            likelihoods.add(new DunkReadings(prepared, held)::logLikelihood);
        }
    }

    /** Logarithm of the likelihood of all of them, less a constant, for values of the inputs, SI. */
    double logLikelihood(double[] inputs) {
        double sum = 0;
        for (ToDoubleFunction<double[]> likelihood : likelihoods) {
            sum += likelihood.applyAsDouble(inputs);
        }
        return sum;
    }

    /**
     * Logarithm of the likelihood of a rise, with the width that was seen; minus infinity where the piece does not come
     * up.
     */
    private static double rise(TimedVoyage voyage, double[] inputs, TimedPiece piece) {
        double time = voyage.rise(inputs);
        return time < Double.POSITIVE_INFINITY
                ? off(time, piece) + piece.logWidth(voyage.width())
                : Double.NEGATIVE_INFINITY;
    }

    /** Logarithm of the normal density of a time, s, around what the draw makes of it, less a constant. */
    private static double off(double time, TimedPiece piece) {
        double off = (piece.time() - time) / piece.deviation();
        return -0.5 * off * off;
    }
}
