package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DryColumns;
import org.fizzhull.forecast.model.DryDraws;
import org.fizzhull.forecast.model.DryModel;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;

/**
 * Answers when a pressed piece is dry, what it then weighs and what part of its fizz is gone by then.
 *
 * <pre>{@code
 * var making = new Moulded.Filled(Blend.of(recipe), Units.grams(140), Optional.empty(), plan);
 * DryForecast dry = DryPredictor.standard().forecast(ball, making);
 * dry.ready().ifPresent(seconds -> ...); // median and 95 % interval of the time when it is ready, s from pressing
 * }</pre>
 *
 * <p>One course is computed finely by the central values ({@link org.fizzhull.drying.run.Drying}), one coarsely in each
 * draw. A piece is ready when 95 % of the water that can leave in that air has left; it is waited for up to 60 days.
 * Weighings of drying pieces ({@link DryLog}) weight the draws afterwards, measurements on pressed or bathed pieces of
 * the mix condition them before.
 *
 * <p>The inputs drawn are all those of a voyage of the same piece, although the bath plays no part here: the Sobol
 * points of a draw depend on the number of columns, so draw i dries as it does for {@link FizzPredictor} and
 * {@link FloatPredictor} with the same sampling, and all three tell one loss of fizz. Cost: about a millisecond a draw.
 * Immutable; safe to share between threads. Equations, ranges and sources: docs/physics/drying.md.
 */
public final class DryPredictor extends Predictor<DryPredictor> {
    /** Seconds in an hour. */
    private static final double HOUR = 3600;

    /** Most steps of the series of times: as many as a chart can show. */
    private static final int STEPS = 84;

    /** Steps of the series, h: the finest that needs no more than {@link #STEPS} of them is taken. */
    private static final double[] NICE_HOURS = {0.5, 1, 2, 3, 4, 6, 12, 24, 48, 72, 96, 168, 336, 720, 2160};

    /** Weighings of pieces of the batch while they dry, if any. */
    private final Optional<DryLog> log;
    /** What was measured on other pieces of the same mix. */
    private final Observations seen;

    private DryPredictor(Factors factors, Sampling sampling, Workers workers, Optional<DryLog> log, Observations seen) {
        super(factors, sampling, workers);
        Given.all("log, observations", log, seen);
        this.log = log;
        this.seen = seen;
    }

    @Override
    protected DryPredictor drawing(Factors others, Sampling other, Workers by) {
        return new DryPredictor(others, other, by, log, seen);
    }

    /** {@return the usual predictor: the default priors, 4,096 draws from seed 1, on the calling thread} */
    public static DryPredictor standard() {
        return new DryPredictor(
                Factors.standard(), Sampling.standard(), Workers.CALLER, Optional.empty(), Observations.none());
    }

    /**
     * {@return this predictor knowing weighings of pieces of the batch while they dry; without draws they are not used}
     * The plan has to last until the last weighing.
     *
     * @param weighings weights and times of pieces of the batch
     */
    public DryPredictor with(DryLog weighings) {
        Given.all("weighings", weighings);
        return new DryPredictor(factors, sampling, workers, Optional.of(weighings), seen);
    }

    /**
     * {@return this predictor knowing a weighed piece of the same mix, and times in a 38 C bath}
     *
     * @param measured observations of pieces of the same mix
     */
    public DryPredictor with(Observations measured) {
        return new DryPredictor(factors, sampling, workers, log, measured);
    }

    /**
     * {@return the time when a piece is ready by the central values, s from pressing, waited for up to 60 days; empty
     * where it is not ready by then} Coarsely computed, to some per cent: for searches that ask it of many plans.
     *
     * @param shape form of the piece
     * @param making a fill or a pressed piece, with its drying plan
     * @throws IllegalArgumentException for a weighed piece, or a plan without a phase
     */
    public OptionalDouble readyAfter(Shape shape, Making making) {
        PieceLimits.checkPiece(shape, making);
        Moulded made = Moulded.of(making);
        CentralChain central = central(shape, made, factors(factors, shape, making));
        return Drying.runAndWait(
                        central.input, made.plan().phases(), ReadyTimes.LONGEST, central.parameters, Resolution.COARSE)
                .readyAfter();
    }

    /**
     * {@return the forecast of a mix that fills a mould or is pressed into it and then goes through a plan}
     *
     * @param shape form of the piece
     * @param making a fill or a pressed piece, with a plan of at least one phase
     * @throws IllegalArgumentException for a weighed piece, a plan without a phase, or a weighing after the end of the
     *     plan
     * @throws org.fizzhull.quantity.Refusal for a fill that its mould cannot hold
     */
    public DryForecast forecast(Shape shape, Making making) {
        Moulded made = Moulded.of(making);
        DryingPlan plan = made.plan();
        PieceLimits.checkPiece(shape, making);
        if (log.isPresent() && log.get().end() > plan.duration()) {
            throw new IllegalArgumentException("the last weighing is after the end of the plan");
        }
        // the draws, after what was measured on other pieces; then the weighings choose among them
        Factors asked = factors(factors, shape, making);
        Optional<Conditioned> known = seen.isEmpty()
                ? Optional.empty()
                : Conditioned.on(PreparedQuestion.of(Question.of(shape, making), factors), seen, sampling, workers);
        double[] centre = known.isPresent() ? known.get().centre() : asked.medians();
        boolean drawing = sampling.samples() > 0;
        Optional<DryLog> used = drawing ? log : Optional.empty();
        DryColumns columns = new DryColumns(
                plan,
                shape.insetMass(),
                times(plan),
                used,
                used.isPresent() ? centre.length : 0,
                Math.max(1, sampling.samples()));
        if (drawing) {
            Conditioned.draws(known, asked, sampling.samples(), sampling.seed(), workers)
                    .draws(() -> new DryModel(shape, made, asked, columns));
        }
        Optional<DryLog.Fit> fit = used.isPresent() ? Optional.of(columns.condition()) : Optional.empty();
        if (fit.isPresent() && fit.get().fits()) {
            centre = columns.medians();
        }
        // the one course that is shown, by the values that the weighings leave
        CentralChain central = central(shape, made, asked, centre);
        DryingCourse course = Drying.runAndWait(
                central.input, plan.phases(), ReadyTimes.LONGEST, central.parameters, Resolution.FINE);
        if (!drawing) {
            double[] row = columns.row();
            columns.write(row, course, 1, centre);
            columns.keep(0, row);
        }
        double seconds = DryModel.dryingTime(plan.phases());
        var first = plan.phases().get(0);
        return new DryForecastRecord(
                new DryForecast.Asked(shape, made.blend(), plan, beforeBath(asked), sampling, log),
                course,
                new DryDraws(columns),
                fit,
                known.map(Conditioned::notices).orElse(List.of()),
                known(Drying.humidityFor(central.input, first, central.parameters, seconds)),
                Drying.safeHumidity(central.input, central.parameters),
                JarPressure.of(
                        central.input.capacity(),
                        course.dryMass(),
                        1,
                        JarPressure.volume(shape) - shape.volume(),
                        first.air().temperature()));
    }

    /**
     * All inputs that a voyage of this piece would draw: the Sobol points of a draw depend on the number of columns.
     */
    private static Factors factors(Factors base, Shape shape, Making making) {
        return base.asked(Question.of(shape, making));
    }

    /** The inputs that matter before the bath: those that a drying forecast lists. */
    private static Factors beforeBath(Factors all) {
        List<Factor> rows = new ArrayList<>();
        for (Factor row : all.rows()) {
            if (row.input().isOfMaking()) {
                rows.add(row);
            }
        }
        return new Factors(rows);
    }

    /** The piece by the medians of all inputs. */
    static CentralChain central(Shape shape, Moulded made) {
        return central(shape, made, factors(Factors.standard(), shape, made));
    }

    private static CentralChain central(Shape shape, Moulded made, Factors asked) {
        return central(shape, made, asked, asked.medians());
    }

    /** The piece by one value of each column, SI; refuses a plan without a phase. */
    private static CentralChain central(Shape shape, Moulded made, Factors asked, double[] values) {
        if (made.plan().phases().isEmpty()) {
            throw new IllegalArgumentException("a drying forecast needs a plan with a phase");
        }
        Draw draw = Draw.of(asked.rows(), values);
        Packing.Packed packed = Packing.of(made, shape).of(draw, 1);
        return new CentralChain(
                new PlannedDrying(shape, made.plan()).input(packed),
                packed.making().drying());
    }

    /**
     * Times of the series, s: multiples of the finest of {@link #NICE_HOURS} that needs at most {@link #STEPS}, and
     * the end.
     */
    private static double[] times(DryingPlan plan) {
        double end = plan.duration();
        // the finest step that needs no more rows than are shown
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

    /** A number, or empty for NaN. */
    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * A piece by one set of values, as drying takes it.
     *
     * @param input the mix as pressed
     * @param parameters uncertain parameters of drying
     */
    record CentralChain(DryingInput input, DryingParameters parameters) {}
}
