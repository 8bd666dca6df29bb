package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.Drying;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.DryingInput;
import org.fizzhull.drying.DryingParameters;
import org.fizzhull.drying.JarPressure;
import org.fizzhull.drying.Resolution;
import org.fizzhull.drying.SafeHumidity;
import org.fizzhull.evidence.Interval;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;

/**
 * Answers when a pressed piece is dry, what it then weighs and what fizz it lost: {@code
 * DryPredictor.standard().forecast(ball, making)}. Immutable; safe to share between threads.
 */
public final class DryPredictor {
    private static final double HOUR = 3600;

    /** Most steps of the series. */
    private static final int STEPS = 84;

    private static final double[] NICE_HOURS = {0.5, 1, 2, 3, 4, 6, 12, 24, 48, 72, 96, 168, 336, 720, 2160};

    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;

    private DryPredictor(Factors factors, Sampling sampling, Workers workers) {
        this.factors = Objects.requireNonNull(factors, "factors");
        this.sampling = sampling;
        this.workers = workers;
    }

    /** 4,096 draws from seed 1, on the calling thread. */
    public static DryPredictor standard() {
        return new DryPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER);
    }

    /** With other priors: the rows of drying that they name or leave out. */
    public DryPredictor with(Factors others) {
        return new DryPredictor(others, sampling, workers);
    }

    /** With other draws. */
    public DryPredictor with(Sampling other) {
        return new DryPredictor(factors, other, workers);
    }

    /** With other workers; the answer stays the same to the byte. */
    public DryPredictor with(Workers others) {
        return new DryPredictor(factors, sampling, others);
    }

    /**
     * By the central values, the course of a making in the mould as entered, its drying drawn out to 60 days and the
     * storage left away: what a weighing log is held against.
     */
    public DryingCourse course(Shape shape, Making making) {
        DryModel.Made made = DryModel.Made.of(making);
        Central central = central(shape, made, factors);
        return Drying.run(central.input, DryModel.longer(made.plan().phases()), central.parameters, Resolution.FINE);
    }

    /**
     * The forecast of a mix that fills a mould or is pressed into it and then goes through a plan with at least one
     * phase.
     */
    public DryForecast forecast(Shape shape, Making making) {
        DryModel.Made made = DryModel.Made.of(making);
        DryingPlan plan = made.plan();
        if (making instanceof FilledMould filled) {
            PieceLimits.checkFill(shape, filled);
        }
        Central central = central(shape, made, factors);
        DryingCourse course =
                Drying.runAndWait(central.input, plan.phases(), DryModel.LONGEST, central.parameters, Resolution.FINE);
        double[] times = times(plan);
        double[][] y =
                sampling.samples() == 0 ? row(shape, made, course, times) : drawn(shape, made, central.factors, times);
        double[] ready = Statistics.sorted(y[DryModel.READY]);
        OptionalDouble needs = known(Drying.humidityFor(
                central.input, plan.phases().get(0), central.parameters, DryModel.dryingTime(plan.phases())));
        double free = DryForecast.jarVolume(shape) - shape.volume();
        DryForecast forecast = new DryForecast(
                shape,
                made.blend(),
                plan,
                central.factors,
                sampling,
                course,
                interval(y[DryModel.DAMP]),
                interval(y[DryModel.FINAL]),
                interval(y[DryModel.LABEL]),
                ready(ready),
                boxed(ready),
                interval(y[DryModel.LOST]),
                needs,
                SafeHumidity.of(central.input, central.parameters),
                JarPressure.of(
                        central.input.capacity(),
                        course.dryMass(),
                        1,
                        free,
                        plan.phases().get(0).air().temperature()),
                band(times, y),
                List.of());
        return DryNotices.on(forecast, central.input);
    }

    /** Median, low and high; an upper point beyond the longest wait is given as that wait. */
    static Optional<Interval> ready(double[] sorted) {
        double median = Statistics.quantile(sorted, 0.5);
        if (!(median <= DryModel.LONGEST)) {
            return Optional.empty();
        }
        double high = Statistics.quantile(sorted, 0.975);
        return Optional.of(new Interval(
                median, Statistics.quantile(sorted, 0.025), high <= DryModel.LONGEST ? high : DryModel.LONGEST));
    }

    private double[][] drawn(Shape shape, DryModel.Made made, Factors factors, double[] times) {
        double[][] columns = new double[DryModel.width(times)][sampling.samples()];
        MonteCarlo run =
                new MonteCarlo(factors.priors(), factors.columns(), sampling.samples(), sampling.seed(), workers);
        run.draws(() -> new DryModel(shape, made, factors, times, columns));
        return columns;
    }

    private static double[][] row(Shape shape, DryModel.Made made, DryingCourse course, double[] times) {
        double[] row = new double[DryModel.width(times)];
        double dried = DryModel.dryingTime(made.plan().phases());
        DryModel.write(row, course, shape.insetMass(), 1, dried, times);
        row[DryModel.READY] = course.readyAfter().orElse(Double.POSITIVE_INFINITY);
        double[][] columns = new double[row.length][1];
        for (int i = 0; i < row.length; i++) {
            columns[i][0] = row[i];
        }
        return columns;
    }

    static Central central(Shape shape, DryModel.Made made, Factors base) {
        if (made.plan().phases().isEmpty()) {
            throw new IllegalArgumentException("a drying forecast needs a plan with a phase");
        }
        Factors asked = base.over(StandardPriors.ofQuestion(Question.of(shape, made.making())));
        double[] none = {};
        DryModel model = new DryModel(shape, made, asked, none, new double[DryModel.width(none)][1]);
        Packing.Packed packed = model.packed(asked.medians());
        return new Central(asked, model.off().input(packed), packed.making().drying());
    }

    /** Even times in a step that people like, and the end. */
    private static double[] times(DryingPlan plan) {
        double end = 0;
        for (var phase : plan.phases()) {
            end += phase.duration();
        }
        double step = NICE_HOURS[NICE_HOURS.length - 1] * HOUR;
        for (double hours : NICE_HOURS) {
            if (end <= STEPS * hours * HOUR) {
                step = hours * HOUR;
                break;
            }
        }
        int whole = (int) Math.floor(end / step * (1 + 1e-12));
        boolean rest = end - whole * step > 1;
        double[] times = new double[whole + (rest ? 2 : 1)];
        for (int k = 0; k <= whole; k++) {
            times[k] = Math.min(end, k * step);
        }
        times[times.length - 1] = end;
        return times;
    }

    private static DryBand band(double[] times, double[][] y) {
        List<Double> at = new ArrayList<>(times.length);
        List<Interval> mass = new ArrayList<>(times.length);
        List<Interval> fizz = new ArrayList<>(times.length);
        double damp = interval(y[DryModel.DAMP]).median();
        for (int k = 0; k < times.length; k++) {
            at.add(times[k]);
            mass.add(interval(y[DryModel.MASS + k]).times(damp));
            fizz.add(interval(y[DryModel.MASS + times.length + k]));
        }
        return new DryBand(at, mass, fizz);
    }

    private static Interval interval(double[] draws) {
        return Fates.interval95(Statistics.sorted(draws));
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /** What the medians of all inputs say. */
    record Central(Factors factors, DryingInput input, DryingParameters parameters) {}
}
