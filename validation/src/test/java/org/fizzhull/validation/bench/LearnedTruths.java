package org.fizzhull.validation.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.fizzhull.forecast.conditioning.TimedVoyage;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.learn.Learner;
import org.fizzhull.learn.Trial;
import org.fizzhull.medium.Bath;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.HeldUnder;

/**
 * Benches drawn from the priors by plain random numbers, each with a mould and six weighed pieces of it, of their own scale, bath and grains,
 * that are let go, some held under water, some timed; what is learned of the bench is held against its truth. Simulation-based
 * calibration (Talts et al. 2018, arXiv:1804.06788, from memory): the rank of a truth among the draws is uniform.
 */
public final class LearnedTruths {
    private static final Shape BALL = Sphere.ofDiameter(0.065);
    private static final Bath BATH = Bath.at(311.15);
    private static final double[] MASSES = {0.132, 0.137, 0.141, 0.144, 0.148, 0.153};
    private static final double SECONDS = 4;
    private static final double SLIP = 0.01;
    private static final int CLASSES = 5;

    private final List<Input> inputs =
            Factors.standard().rows().stream().map(Factor::input).toList();
    private final List<Ranks> ranks;

    /** Share of the draws below the truth, of each input. */
    private record Ranks(double[] below) {}

    /** @param benches how many */
    public LearnedTruths(int benches) {
        ranks = IntStream.range(0, benches).parallel().mapToObj(this::bench).toList();
    }

    /** Pearson's chi-squared of the ranks of an input in five classes: 4 degrees of freedom. */
    public double ranks(Input input) {
        int k = inputs.indexOf(input);
        int[] counts = new int[CLASSES];
        for (Ranks each : ranks) {
            counts[(int) Math.min(CLASSES - 1, CLASSES * each.below()[k])]++;
        }
        double expected = (double) ranks.size() / CLASSES;
        double sum = 0;
        for (int count : counts) {
            sum += (count - expected) * (count - expected) / expected;
        }
        return sum;
    }

    /** Truths of all inputs inside their 95 % intervals, %. */
    public double inside() {
        long inside = ranks.stream()
                .mapToLong(each -> Arrays.stream(each.below())
                        .filter(share -> share > 0.025 && share < 0.975)
                        .count())
                .sum();
        return 100.0 * inside / ranks.size() / inputs.size();
    }

    /** Trials that contradict one another by chance are refused, and others are made. */
    private Ranks bench(int number) {
        SplittableRandom random = new SplittableRandom(1000 + number);
        while (true) {
            double[] scores = new double[inputs.size()];
            for (int k = 0; k < scores.length; k++) {
                scores[k] = score(random);
            }
            try {
                List<List<Double>> draws =
                        Learner.learn(trials(scores, random), number).draws().draws();
                double[] below = new double[scores.length];
                for (List<Double> draw : draws) {
                    for (int k = 0; k < below.length; k++) {
                        below[k] += draw.get(k) < scores[k] ? 1.0 / draws.size() : 0;
                    }
                }
                return new Ranks(below);
            } catch (Refusal contradiction) {
                // the next ones
            }
        }
    }

    private List<Trial> trials(double[] scores, SplittableRandom random) {
        List<Trial> trials = new ArrayList<>();
        double size = score(random);
        for (int i = 0; i < MASSES.length; i++) {
            Question question = Question.weighed(BALL, MASSES[i]).in(BATH);
            PreparedQuestion prepared = PreparedQuestion.of(question, Factors.standard());
            double[] values = values(prepared.factors(), scores, size, random);
            DropModel drop = new DropModel(prepared);
            double own = HeldPiece.ownLift(BALL, BATH);
            boolean floats = drop.at(values) + own * score(random) > 0 != random.nextDouble() < SLIP;
            Trial trial = Trial.of(
                    "piece " + i,
                    BALL,
                    MASSES[i],
                    BATH,
                    floats ? DroppedPiece.Result.FLOATED : DroppedPiece.Result.SANK);
            if (i % 2 == 0) {
                boolean felt = random.nextDouble() < HeldPiece.PLUME_FELT;
                double reading = new HeldUnder(prepared.form(), BATH).reading(drop.launch(), SECONDS, felt);
                trials.add(trial.lifting(reading + own * score(random) + HeldPiece.DEVIATION * score(random), SECONDS));
            } else {
                double time = new TimedVoyage(prepared, OptionalDouble.empty()).fizz(values);
                double read = time + TimedPiece.fizzed(time).deviation() * score(random);
                trials.add(trial.fizzing(Math.max(20, read)));
            }
        }
        return trials;
    }

    /** The bench's own values and the size of its mould, all else drawn for this piece. */
    private double[] values(Factors factors, double[] scores, double size, SplittableRandom random) {
        List<Prior> priors = factors.priors();
        double[] values = new double[priors.size()];
        for (int column = 0; column < values.length; column++) {
            values[column] = priors.get(column).atScore(score(random));
        }
        int mould = factors.column(Input.MOULD_SIZE);
        values[mould] = priors.get(mould).atScore(size);
        for (int k = 0; k < scores.length; k++) {
            int column = factors.column(inputs.get(k));
            values[column] = priors.get(column).atScore(scores[k]);
        }
        return values;
    }

    private static double score(SplittableRandom random) {
        return Normal.quantile(random.nextDouble(1e-12, 1));
    }
}
