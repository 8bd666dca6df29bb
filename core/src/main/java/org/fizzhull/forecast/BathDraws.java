package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DrawnWeights;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.StillModel;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.piece.Piece;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.CorrelationRatio;
import org.fizzhull.uncertainty.sampling.Draws;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Posterior;
import org.fizzhull.uncertainty.sampling.Sensitivity;

/**
 * The draws of one question about the bath and what is counted over them. Serves one answer of a
 * {@link FloatPredictor}.
 *
 * <p>Where the draws come from, in this order:
 *
 * <ol>
 *   <li>no draws asked for, or nothing uncertain: one row of central values, no chances;
 *   <li>measurements: the draws that they leave ({@link Conditioned}), resampled to equal weights;
 *   <li>inputs learned together from a bench: their whole draws, unweighted;
 *   <li>otherwise the priors themselves, Sobol points in eight blocks.
 * </ol>
 *
 * <p>What decides is told by pick-and-freeze indices in the last case, by correlation ratios where the inputs depend on
 * one another (cases 2 and 3). Draw i is the same with and without these indices, whose mixed rows cost little for a
 * weighed piece; a made one is pressed and dried anew in those of its making.
 */
final class BathDraws {
    /** Indices of what is made: one row in so many where each presses a piece. */
    private static final int PRESSED_ANEW = 8;
    /** The same where each presses and dries one: half of all courses went into these. */
    private static final int DRIED_ANEW = 16;

    /** The question, its uncertain inputs and the form that all its voyages share. */
    private final PreparedQuestion prepared;
    /** Number of draws, 0 for central values, and seed. */
    private final Sampling sampling;
    /** What runs the blocks of draws. */
    private final Workers workers;
    /** What was measured; none as a rule. */
    private final Observations seen;
    /** The inputs after the measurements; empty without any. */
    private final Optional<Conditioned> known;

    BathDraws(PreparedQuestion prepared, Sampling sampling, Workers workers, Observations seen) {
        this.prepared = prepared;
        this.sampling = sampling;
        this.workers = workers;
        this.seen = seen;
        known = Conditioned.on(prepared, seen, sampling, workers);
    }

    /** {@return the central value of each uncertain input, measurements counted} */
    double[] centre() {
        return known.isPresent() ? known.get().centre() : prepared.factors().medians();
    }

    /** {@return the piece by the central values} */
    Piece piece() {
        return new DropModel(prepared).piece(centre());
    }

    /** {@return what the draws say and what decides it} */
    Drawn withDrivers() {
        return drawn(true);
    }

    /** {@return what the draws say, without the cost of the indices} */
    Drawn withoutDrivers() {
        return drawn(false);
    }

    /** Makes the draws and counts them, with or without the indices of what decides. */
    private Drawn drawn(boolean drivers) {
        Factors asked = prepared.factors();
        if (sampling.samples() == 0 || asked.rows().isEmpty()) {
            return central(centre());
        }
        Optional<Posterior> after = known.isPresent() ? known.get().posterior() : bench();
        if (after.isPresent()) {
            Walked walked = walked(after.get());
            return walked.drawn(drivers ? ratios(after.get(), walked.spare) : List.of());
        }
        if (!drivers) {
            return walked(prior()).drawn(List.of());
        }
        // draws of the priors with mixed rows for the indices
        double[][] columns = columns(sampling.samples());
        Sensitivity found = prior().sensitivity(model(columns), parts(asked));
        return new Walked(prepared, found.draws(), columns).drawn(drivers(asked, found));
    }

    /** One row in so many for the indices of each input: fewer where the piece is pressed anew, or dried too. */
    private int[] parts(Factors asked) {
        Making making = prepared.question().making();
        int made = making.plan().phases().isEmpty() ? PRESSED_ANEW : DRIED_ANEW;
        int[] parts = new int[asked.rows().size()];
        for (int i = 0; i < parts.length; i++) {
            Input input = asked.rows().get(i).input();
            boolean anew = input.isOfMaking() || input == Input.MOULD_SIZE;
            parts[i] = anew && !(making instanceof Making.Weighed) ? made : MonteCarlo.QUARTER;
        }
        return parts;
    }

    /** Inputs that are drawn together have no pick-and-freeze indices: their draws are taken like those of a measurement. */
    private Optional<Posterior> bench() {
        Factors asked = prepared.factors();
        return asked.isDependent()
                ? Optional.of(Posterior.unweighted(asked.priors(), sampling.samples(), sampling.seed(), workers))
                : Optional.empty();
    }

    /** Draws of the priors alone, as many as were asked for. */
    private MonteCarlo prior() {
        Factors asked = prepared.factors();
        return new MonteCarlo(asked.priors(), asked.columns(), sampling.samples(), sampling.seed(), workers);
    }

    /** First-order indices of dependent inputs from the draws themselves; totals do not exist there and are NaN. */
    private List<Forecast.Driver> ratios(Posterior run, double[] spare) {
        CorrelationRatio found = run.ratios(spare, prepared.factors().columns());
        double[] none = new double[prepared.factors().rows().size()];
        Arrays.fill(none, Double.NaN);
        return drivers(
                prepared.factors(), new Sensitivity(spare, found.firstOrder(), none, found.error(), found.error()));
    }

    /** {@return what measurements did to the answer, and what is to be said of them; empty without measurements} */
    Optional<MeasurementEffect> narrowing() {
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Drawn before = sampling.samples() == 0
                ? central(prepared.factors().medians())
                : walked(prior()).drawn(List.of());
        return Optional.of(MeasurementEffect.bathed(
                seen,
                known.get().effective(),
                before.outcomes.probability(),
                before.outcomes.riseTime(),
                before.outcomes.fizzTime(),
                before.spare));
    }

    /** {@return what is to be said of the measurements} */
    List<Notice> notices() {
        return known.isPresent() ? known.get().notices() : List.of();
    }

    /** One draw with these values of the inputs, SI: intervals are points and there are no chances. */
    private Drawn central(double[] values) {
        double[][] columns = columns(1);
        Model model = model(columns).get();
        double spare = model.at(values);
        model.keep(0);
        Optional<Interval> mass = prepared.question().making() instanceof Making.Weighed
                ? Optional.empty()
                : Optional.of(Interval.certain(columns[VoyageModel.MASS][0]));
        OutcomeStatistics outcomes =
                prepared.question().stillWater() ? OutcomeStatistics.NONE : OutcomeStatistics.central(columns);
        return new Drawn(
                Interval.certain(spare),
                mass,
                outcomes,
                new DrawnWeights(columns, Scatter.of(prepared)),
                columns,
                List.of());
    }

    /** Empty columns of {@link VoyageModel}, one place for each draw. */
    private static double[][] columns(int draws) {
        return new double[VoyageModel.CRITICAL_WIDTH][draws];
    }

    /**
     * One model for each thread that writes into the columns: of the balance alone in still water, else of the voyage.
     */
    private Supplier<Model> model(double[][] columns) {
        return prepared.question().stillWater()
                ? () -> new StillModel(prepared, columns)
                : VoyageModel.each(prepared, columns);
    }

    /** Runs every draw and keeps spare and columns. */
    private Walked walked(Draws run) {
        double[][] columns = columns(sampling.samples());
        return new Walked(prepared, run.draws(model(columns)), columns);
    }

    /** What decides, largest share first; equal shares keep the order of the rows. */
    private static List<Forecast.Driver> drivers(Factors asked, Sensitivity found) {
        List<Forecast.Driver> drivers = new ArrayList<>(asked.rows().size());
        for (int i = 0; i < asked.rows().size(); i++) {
            Forecast.Driver driver = Forecast.Driver.of(asked.rows().get(i).input(), found, i);
            int at = drivers.size();
            while (at > 0 && drivers.get(at - 1).share() < driver.share()) {
                at--;
            }
            drivers.add(at, driver);
        }
        return drivers;
    }

    /**
     * What the draws of a question say.
     *
     * @param spare what the piece could carry at the drop before it sinks, kg; negative where it goes down
     * @param mass of a made piece as it goes into the bath, kg; empty for a weighed one
     * @param outcomes outcomes of the pieces: chances, rise time, fizz time
     * @param critical the heaviest weight that floats in each draw
     * @param columns of {@link VoyageModel}, one place for each draw
     * @param drivers what decides the spare, largest total first; empty where not asked for
     */
    record Drawn(
            Interval spare,
            Optional<Interval> mass,
            OutcomeStatistics outcomes,
            CriticalWeights critical,
            double[][] columns,
            List<Forecast.Driver> drivers) {}

    /** Draws of the spare, kg, and the columns beside it. */
    private record Walked(PreparedQuestion prepared, double[] spare, double[][] columns) {
        /** Counts the columns. */
        Drawn drawn(List<Forecast.Driver> drivers) {
            CriticalWeights critical = new DrawnWeights(columns, Scatter.of(prepared));
            Optional<Interval> mass = prepared.question().making() instanceof Making.Weighed
                    ? Optional.empty()
                    : Optional.of(OutcomeStatistics.intervalOf(columns[VoyageModel.MASS]));
            return new Drawn(
                    OutcomeStatistics.intervalOf(spare),
                    mass,
                    OutcomeStatistics.of(prepared, columns, critical),
                    critical,
                    columns,
                    drivers);
        }
    }
}
