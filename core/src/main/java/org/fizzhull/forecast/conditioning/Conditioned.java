package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Draws;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Posterior;

/**
 * The uncertain inputs of a question after measurements: their draws, the central values that agree with them, and what
 * is to be said.
 *
 * <ol>
 *   <li>Measurements that the question cannot have are refused: fizz in still water, a weighed press piece beside a
 *       known weight, a timed piece without its weight.
 *   <li>What lies outside of what the priors expect of such a piece is believed, and said ({@link ExpectedReadings}).
 *   <li>Each proposal of the priors is solved for what was measured and weighted ({@link MeasurementSolvers}); systematic resampling
 *       makes equally heavy draws of them ({@link Posterior}). Where few agree, more proposals are drawn.
 *   <li>Fewer than 24 effective draws are a refusal: nothing of the priors agrees. Fewer than 200 give a notice.
 *   <li>The central values are the medians of the draws; errors of this one piece (scale, mould, bath) keep their
 *       middle, and the solved inputs are solved once more there.
 * </ol>
 *
 * <p>Exact for any spread of the measurement (change of variables, {@link org.fizzhull.uncertainty.sampling.ExactConditioning}); see
 * docs/physics/uncertainty.md, 4. Cost: 20 voyages a draw with a fizz time, some hundred where each draw dries too.
 * Immutable.
 */
public final class Conditioned {
    /** Proposals over draws at most where the piece is on the scale: each costs some 20 voyages. */
    private static final int MOST_PROPOSALS = 8;

    /** The same where the piece is pressed and dried in each draw, which costs as much as a hundred voyages. */
    private static final int MOST_DRIED = 2;

    /** Effective draws below which no forecast is made: three in each block (judgement). */
    private static final double LEAST_EFFECTIVE = 24;

    /**
     * Effective draws below which a notice says that they are few: the 2.5 % point then rests on five (judgement).
     */
    private static final double FEW = 200;

    /** How to mend a measurement in the bath that nothing agrees with. */
    private static final String CHECK_BATHED =
            "Check number and unit, shape and weight; a surface is believed to fizz away with 0.15 to 20 mm a minute.";

    /** How to mend a weighed piece that nothing agrees with. */
    private static final String CHECK_PRESSED =
            "Check number and unit, the mould, the recipe and how hard it was pressed.";

    /** How to mend a drying log that nothing agrees with. */
    private static final String CHECK_DRIED =
            "Check weights and times of the log, the recipe, the mould, what was filled in, and the air it dried in.";

    /** Errors of this one piece, its mould, its mix or its bath. */
    private static final Set<Input> OWN = EnumSet.of(
            Input.SCALE,
            Input.SCALE_OFFSET,
            Input.HAND,
            Input.MOULD_SIZE,
            Input.SURFACE,
            Input.DEPTH_PROFILE,
            Input.BATH_TEMPERATURE,
            Input.RECIPE_SCORES,
            Input.PRESS_REPEAT);

    /** Equally heavy draws after the measurements; empty for central values. */
    private final Optional<Posterior> posterior;
    /** Central value of each column, SI. */
    private final double[] centre;
    /** What the reader must know of the measurements. */
    private final List<Notice> notices;

    private Conditioned(Optional<Posterior> posterior, double[] centre, List<Notice> notices) {
        this.posterior = posterior;
        this.centre = centre;
        this.notices = notices;
    }

    /**
     * {@return what was measured, for a question about a piece in a bath; empty where nothing was measured}
     *
     * @param prepared the prepared question
     * @param seen what was measured on pieces of the same mix
     * @param sampling number of draws and seed
     * @param workers workers that compute the draws
     * @throws Refusal for a measurement that the question cannot have, or that nothing of the priors agrees with
     */
    public static Optional<Conditioned> on(
            PreparedQuestion prepared, Observations seen, Sampling sampling, Workers workers) {
        return seen.isEmpty() ? Optional.empty() : Optional.of(of(prepared, seen, sampling, workers));
    }

    private static Conditioned of(PreparedQuestion prepared, Observations seen, Sampling sampling, Workers workers) {
        return of(
                prepared.factors(),
                () -> MeasurementSolvers.of(prepared, seen),
                sampling,
                workers,
                proposals(prepared),
                checked(prepared, seen, sampling, workers),
                check(seen));
    }

    /**
     * {@return a run over what the measurements leave of the inputs; over the priors where nothing was measured}
     *
     * @param known what the measurements say; empty without any, or to leave them out
     * @param factors the uncertain inputs
     * @param draws number of draws, above 0
     * @param seed seed of the draws
     * @param workers what computes the blocks of draws
     */
    public static Draws draws(Optional<Conditioned> known, Factors factors, int draws, long seed, Workers workers) {
        Optional<Posterior> after = known.flatMap(Conditioned::posterior);
        return after.isPresent()
                ? after.get().thinned(draws)
                : new MonteCarlo(factors.priors(), factors.columns(), draws, seed, workers);
    }

    /** {@return how many times as many proposals may be tried for what was measured on pieces of a question} */
    static int proposals(PreparedQuestion prepared) {
        return prepared.question().making() instanceof Making.Weighed ? MOST_PROPOSALS : MOST_DRIED;
    }

    /** {@return what to check where nothing agrees with what was measured} */
    static String check(Observations seen) {
        return seen.bathed() ? CHECK_BATHED : seen.weighed().isPresent() ? CHECK_PRESSED : CHECK_DRIED;
    }

    /** {@return what is to be said of measurements; refuses what cannot have been measured on a piece of the question} */
    static List<Notice> checked(PreparedQuestion prepared, Observations seen, Sampling sampling, Workers workers) {
        Question question = prepared.question();
        seen.fizz().forEach(piece -> TimedVoyage.check(question, piece.mass(), MeasuredNotices.FIZZ));
        seen.rise().forEach(piece -> TimedVoyage.check(question, piece.mass(), MeasuredNotices.RISE));
        seen.lift().forEach(piece -> TimedVoyage.check(question, piece.mass(), MeasuredNotices.LIFT));
        seen.results().forEach(piece -> TimedVoyage.check(question, piece.mass(), MeasuredNotices.RESULT));
        seen.dried().forEach(piece -> checkDried(question, piece));
        if (seen.bathed() && question.stillWater()) {
            throw MeasuredNotices.stillWater();
        }
        if (seen.weighed().isPresent() && !(question.making() instanceof Moulded.Pressed)) {
            throw MeasuredNotices.notPressed();
        }
        List<Notice> notices = MeasuredNotices.assumptions(question, seen);
        if (sampling.samples() > 0) {
            notices.addAll(
                    ExpectedReadings.of(prepared, seen, sampling, workers).surprises());
        }
        return notices;
    }

    /** Refuses a drying log of another mix, or beside a piece that is not dried. */
    private static void checkDried(Question question, Observations.LoggedPieces piece) {
        if (question.making() instanceof Making.Weighed || !question.making().isDried()) {
            throw MeasuredNotices.notDried("a drying log, and a piece of which no drying is told");
        }
        if (!piece.making().mix().equals(question.making().mix())) {
            throw MeasuredNotices.notDried("a drying log of another mix");
        }
    }

    /**
     * {@return what was measured, for a pressed piece alone}
     *
     * @param making how the piece that is asked about is made
     * @param shape form of the mould
     * @param factors table of priors
     * @param piece the weighed piece, with others behind it
     * @param sampling number of draws and seed
     * @param workers workers that compute the draws
     * @throws Refusal {@code contradiction} where nothing of the priors agrees with the weight
     */
    public static Conditioned pressed(
            Making making, Shape shape, Factors factors, WeighedPiece piece, Sampling sampling, Workers workers) {
        List<Notice> notices = new ArrayList<>(List.of(MeasuredNotices.weighed(piece, shape)));
        if (sampling.samples() > 0) {
            notices.addAll(ExpectedReadings.weighed(making, shape, factors, piece, sampling, workers)
                    .surprises());
        }
        return of(
                factors,
                () -> MeasurementSolvers.pressed(new PressedWeightSolver(piece, making, shape, factors), factors),
                sampling,
                workers,
                MOST_PROPOSALS,
                notices,
                CHECK_PRESSED);
    }

    private static Conditioned of(
            Factors factors,
            Supplier<MeasurementSolvers> solvers,
            Sampling sampling,
            Workers workers,
            int most,
            List<Notice> notices,
            String check) {
        // without draws only the solved inputs move, and the others keep their medians
        MeasurementSolvers central = solvers.get();
        if (sampling.samples() == 0) {
            double[] centre = factors.medians();
            if (central.solve(centre, middle(central.uniforms())) == Double.NEGATIVE_INFINITY) {
                throw contradiction(
                        "none of the central values", "Ask for draws, so that the other inputs may differ.");
            }
            return new Conditioned(Optional.empty(), centre, notices);
        }
        Posterior posterior =
                Posterior.of(factors.priors(), sampling.samples(), sampling.seed(), workers, most, solvers::get);
        believed(posterior, notices, check);
        double[] agreed = agreed(factors, posterior.medians());
        central.solve(agreed, middle(central.uniforms()));
        return new Conditioned(Optional.of(posterior), agreed, notices);
    }

    /** Refuses draws of which hardly any agree, and says so where few do. */
    static void believed(Posterior posterior, List<Notice> notices, String check) {
        double effective = posterior.effective();
        if (!(effective >= LEAST_EFFECTIVE)) {
            throw contradiction("hardly any of " + posterior.proposals() + " draws", check);
        }
        if (effective < FEW) {
            notices.add(MeasuredNotices.few(effective));
        }
    }

    /** Medians of the draws; what is an error of this one piece, its mould, its mix or its bath keeps its middle. */
    static double[] agreed(Factors factors, double[] medians) {
        double[] centre = factors.medians();
        int column = 0;
        for (Factor row : factors.rows()) {
            // the middle case is mixed as the recipe says
            boolean own = OWN.contains(row.input());
            for (int k = 0; k < row.columns(); k++, column++) {
                centre[column] = own ? centre[column] : medians[column];
            }
        }
        return centre;
    }

    /** So many uniform numbers of 1/2: measurements without error. */
    private static double[] middle(int count) {
        double[] middle = new double[count];
        Arrays.fill(middle, 0.5);
        return middle;
    }

    /** The refusal of a measurement, with how to mend it. */
    private static Refusal contradiction(String with, String hint) {
        return new Refusal(
                "contradiction", "measurement", "agrees with " + with, "a measurement of such a piece", hint);
    }

    /** {@return the draws; empty where none were asked for} */
    public Optional<Posterior> posterior() {
        return posterior;
    }

    /** {@return the medians of what was not solved, with what was} */
    public double[] centre() {
        return centre.clone();
    }

    /** {@return what the reader must know} */
    public List<Notice> notices() {
        return notices;
    }

    /** {@return how many independent draws they are worth; empty where none were asked for} */
    public OptionalDouble effective() {
        return posterior.isPresent() ? OptionalDouble.of(posterior.get().effective()) : OptionalDouble.empty();
    }
}
