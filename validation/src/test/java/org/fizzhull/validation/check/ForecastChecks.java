package org.fizzhull.validation.check;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.FloatVerdict;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.validation.bench.DunkedTruths;
import org.fizzhull.validation.bench.WeighedTruths;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/**
 * Does the band of a batch's share hold the truth as often as it says? Batches are simulated: what is common to a batch is
 * drawn once from its prior by plain random numbers, each piece gets its own hand and reading, and its voyage is walked.
 * And how far do pieces held under water narrow what is to spare of the next one?
 */
public final class ForecastChecks extends Bindings {
    private static final double GRAM = 1e-3;

    public ForecastChecks() {
        super("forecast");
        bind("batch-band", ForecastChecks::covered);
        bind("ball-at-once", in -> ball(in).probability().orElseThrow().floatsAtOnce());
        bind("ball-spare", ForecastChecks::spare);
        Map<String, DunkedTruths> runs = new HashMap<>();
        bind("dunk-width", in -> dunked(runs, in).narrowed());
        bind("dunk-third", in -> dunked(runs, in).narrowed() <= in.number("at_most") ? 1 : 0);
        bind("dunk-inside", in -> dunked(runs, in).inside());
        Map<Integer, WeighedTruths> benches = new HashMap<>();
        bind("weighed-within", in -> weighed(benches, in).spread() <= in.number("at_most_percent") ? 1 : 0);
        bind("weighed-inside", in -> weighed(benches, in).inside());
    }

    private static WeighedTruths weighed(Map<Integer, WeighedTruths> benches, Inputs in) {
        return benches.computeIfAbsent((int) in.number("weighed"), WeighedTruths::new);
    }

    /** Both rows of a simulation are of one run. */
    private static DunkedTruths dunked(Map<String, DunkedTruths> runs, Inputs in) {
        double size = in.number("size_mm");
        double error = in.number("error_g");
        int dunks = (int) in.number("dunks");
        int readings = (int) in.number("readings");
        return runs.computeIfAbsent(
                size + " " + error + " " + dunks + " " + readings,
                key -> new DunkedTruths(
                        size < 1 ? Measured.CALIPERS : Measured.NOMINAL, error * GRAM, dunks, readings));
    }

    private static Forecast ball(Inputs in) {
        return FloatPredictor.standard()
                .forecast(Question.weighed(Sphere.ofDiameter(0.065), in.number("mass_g") * GRAM));
    }

    /** The low, middle or high point of what is to spare at the drop, g. */
    private static double spare(Inputs in) {
        Interval spare = ball(in).spareAtDrop();
        double percent = in.number("percent");
        return (percent < 50 ? spare.low() : percent > 50 ? spare.high() : spare.median()) / GRAM;
    }

    /** Of 100 simulated batches, how many have a share that floats to the end inside the band. */
    private static double covered(Inputs in) {
        Shape shape = ShapeText.read(in.word("shape"));
        double mass = in.number("mass_g") * GRAM;
        Prior hand = Priors.normal(0, in.number("hand_g") * GRAM);
        int batches = (int) in.number("batches");
        int pieces = (int) in.number("pieces");
        FloatPredictor predictor = FloatPredictor.standard();
        Question asked = Question.weighed(shape, mass).spread(hand);
        Interval band = predictor.critical(asked).batch().share();
        FloatPredictor central = predictor.with(new Sampling(1, 0));
        SplittableRandom random = new SplittableRandom(2026);
        int inside = 0;
        for (int batch = 0; batch < batches; batch++) {
            Factors truth = common(asked, random);
            int floats = 0;
            for (int piece = 0; piece < pieces; piece++) {
                double shown = mass + hand.quantile(uniform(random));
                Prior reading = Factors.standard()
                        .asked(asked)
                        .row(Input.SCALE)
                        .orElseThrow()
                        .prior();
                FloatPredictor one = central.with(truth.fix(Input.SCALE, reading.quantile(uniform(random))));
                boolean up =
                        one.forecast(Question.weighed(shape, shown)).verdict().answer() == FloatVerdict.Answer.FLOATS;
                floats += up ? 1 : 0;
            }
            double share = floats / (double) pieces;
            double half = 0.5 / pieces;
            inside += share > band.low() - half && share < band.high() + half ? 1 : 0;
        }
        return 100.0 * inside / batches;
    }

    /** One state of everything that the pieces of a batch share. */
    private static Factors common(Question asked, SplittableRandom random) {
        Factors truth = Factors.standard();
        for (Factor row : Factors.standard().asked(asked).rows()) {
            if (row.input().kind() == Input.Kind.BATCH) {
                truth = truth.fix(row.input(), row.prior().quantile(uniform(random)));
            }
        }
        return truth;
    }

    private static double uniform(SplittableRandom random) {
        return 1e-9 + (1 - 2e-9) * random.nextDouble();
    }
}
