package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.StillModel;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Scatter;
import org.fizzhull.uncertainty.CorrelationRatio;
import org.fizzhull.uncertainty.Draws;
import org.fizzhull.uncertainty.Model;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Posterior;
import org.fizzhull.uncertainty.Sensitivity;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;

/** One prepared question walked in every draw, and what the draws say together. Used once, by one thread. */
final class FloatDraws {
    private final PreparedQuestion posed;
    private final Sampling sampling;
    private final Workers workers;
    private final double[][] columns;

    FloatDraws(PreparedQuestion posed, Sampling sampling, Workers workers) {
        this.posed = posed;
        this.sampling = sampling;
        this.workers = workers;
        columns = new double[VoyageModel.CRITICAL_WIDTH][Math.max(1, sampling.samples())];
    }

    /** {@return one draw at the given values of the inputs: no band, no indices} */
    Result central(double[] centre) {
        Model model = model().get();
        double spare = model.at(centre);
        model.keep(0);
        Optional<Interval> mass = posed.question().making() instanceof Weighed
                ? Optional.empty()
                : Optional.of(Interval.certain(columns[VoyageModel.MASS][0]));
        OutcomeStatistics fates =
                posed.question().stillWater() ? OutcomeStatistics.NONE : OutcomeStatistics.central(columns);
        return new Result(Interval.certain(spare), mass, fates, critical(), columns, List.of());
    }

    /** {@return all draws of the priors, with the indices of the inputs} */
    Result drawn() {
        // a made piece is pressed and dried anew for each input of its making
        int part = posed.question().making() instanceof Weighed ? 4 : 8;
        return result(prior().sensitivity(model(), part));
    }

    /** {@return the draws that agree with what was measured} */
    Result narrowed(Posterior run) {
        Walked walked = walked(run);
        CorrelationRatio found = run.ratios(walked.spare, posed.factors().columns());
        double[] none = new double[posed.factors().rows().size()];
        Arrays.fill(none, Double.NaN);
        return result(new Sensitivity(walked.spare, found.firstOrder(), none, found.error(), found.error()));
    }

    /** {@return draws without indices} */
    Walked walked(Draws run) {
        double[] spare = run.draws(model());
        CriticalWeights critical = critical();
        return new Walked(spare, mass(), OutcomeStatistics.of(posed, columns, critical), critical);
    }

    /** {@return the draws of the priors} */
    MonteCarlo prior() {
        Factors asked = posed.factors();
        return new MonteCarlo(asked.priors(), asked.columns(), sampling.samples(), sampling.seed(), workers);
    }

    private Result result(Sensitivity found) {
        CriticalWeights critical = critical();
        return new Result(
                OutcomeStatistics.interval95(Statistics.sorted(found.draws())),
                mass(),
                OutcomeStatistics.of(posed, columns, critical),
                critical,
                columns,
                drivers(found));
    }

    private Supplier<Model> model() {
        return posed.question().stillWater() ? () -> new StillModel(posed, columns) : VoyageModel.each(posed, columns);
    }

    private CriticalWeights critical() {
        return new CriticalWeights(columns, Scatter.of(posed));
    }

    /** The weight of a made piece; a weighed one is what the scale says. */
    private Optional<Interval> mass() {
        return posed.question().making() instanceof Weighed
                ? Optional.empty()
                : Optional.of(OutcomeStatistics.interval95(Statistics.sorted(columns[VoyageModel.MASS])));
    }

    /** Largest share first; equal ones in the order of the table. */
    private List<Driver> drivers(Sensitivity found) {
        Factors asked = posed.factors();
        List<Driver> drivers = new ArrayList<>(asked.rows().size());
        for (int i = 0; i < asked.rows().size(); i++) {
            drivers.add(Driver.of(asked.rows().get(i).input(), found, i));
        }
        drivers.sort(Comparator.comparingDouble(Driver::share).reversed());
        return drivers;
    }

    /** What the draws say: the spare, kg, the mass, kg, where the piece is made, and what becomes of it. */
    record Result(
            Interval spare,
            Optional<Interval> mass,
            OutcomeStatistics fates,
            CriticalWeights critical,
            double[][] columns,
            List<Driver> drivers) {}

    /** Draws of the spare, kg, and what they say of the piece. */
    record Walked(double[] spare, Optional<Interval> mass, OutcomeStatistics fates, CriticalWeights critical) {}
}
