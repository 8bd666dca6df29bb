package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.fizzhull.forecast.conditioning.MeasurementSolvers;
import org.fizzhull.forecast.conditioning.PressedWeightSolver;
import org.fizzhull.forecast.conditioning.TimedVoyage;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.PressModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.numeric.Normal;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.MixingRoom;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.Posterior;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.junit.jupiter.api.Test;

/**
 * Truths drawn from the priors, measured with an error, and predicted: ANALYTIC, a truth lies in the middle 50 and 90 % of
 * the posterior draws in 50 and 90 of 100 cases. Of 200 truths the binomial standard deviations are 7.1 and 4.2; three of
 * them are allowed, and for 90 % one more truth and a half, since 128 draws give its ends at 0.9 - 1/128 on average.
 */
class HonestIntervalsTest {
    private static final int TRUTHS = 200;
    private static final int DRAWS = 128;
    private static final Workers PARALLEL =
            (count, task) -> IntStream.range(0, count).parallel().forEach(task::run);
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));

    @Test
    void afterARiseTime() {
        Question asked = Question.weighed(BALL, grams(142));
        PreparedQuestion prepared = PreparedQuestion.of(asked, Factors.standard());
        Factors factors = prepared.factors();
        TimedVoyage voyage = new TimedVoyage(prepared, OptionalDouble.of(grams(148)));
        SplittableRandom random = new SplittableRandom(11);
        int[] inside = new int[2];
        int truths = 0;
        while (truths < TRUTHS) {
            double[] truth = drawn(factors.priors(), random);
            double rise = voyage.rise(truth);
            double read = rise + 5 * Normal.quantile(uniform(random));
            if (!(rise > 0 && rise < Double.POSITIVE_INFINITY && read > 20)) {
                continue;
            }
            Observations seen =
                    Observations.none().rose(TimedPiece.rose(read).within(5).weighing(grams(148)));
            Posterior after = Posterior.of(
                    factors.priors(), DRAWS, truths, PARALLEL, 4, () -> MeasurementSolvers.of(prepared, seen));
            count(after.draws(() -> new DropModel(prepared)), new DropModel(prepared), truth, inside);
            truths++;
        }
        honest(inside);
    }

    @Test
    void afterAFizzTime() {
        Question asked = Question.weighed(BALL, grams(138));
        PreparedQuestion prepared = PreparedQuestion.of(asked, Factors.standard());
        Factors factors = prepared.factors();
        OptionalDouble timed = OptionalDouble.of(grams(145));
        TimedVoyage voyage = new TimedVoyage(prepared, timed);
        SplittableRandom random = new SplittableRandom(12);
        int[] inside = new int[2];
        for (int i = 0; i < TRUTHS; i++) {
            double[] truth = drawn(factors.priors(), random);
            double read = voyage.fizz(truth) + 8 * Normal.quantile(uniform(random));
            Observations seen =
                    Observations.none().fizzed(TimedPiece.fizzed(read).within(8).weighing(timed.getAsDouble()));
            Posterior after =
                    Posterior.of(factors.priors(), DRAWS, i, PARALLEL, 2, () -> MeasurementSolvers.of(prepared, seen));
            TimedVoyage next = new TimedVoyage(prepared, OptionalDouble.empty());
            count(
                    after.draws(() -> new TimedVoyage(prepared, OptionalDouble.empty())::fizz),
                    next::fizz,
                    truth,
                    inside);
        }
        honest(inside);
    }

    @Test
    void afterAWeighedPiece() {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        Shape dome = Dome.ofDiameter(millimetres(80));
        Making hard = new Moulded.Pressed(blend, 60e3, 1, MouldDimensions.Filling.usual(dome), DryingPlan.none());
        Factors factors = PressModel.factors(Factors.standard(), dome, hard);
        SplittableRandom random = new SplittableRandom(13);
        int[] inside = new int[2];
        WeighedPiece any = WeighedPiece.byGauge(grams(140), 30e3, 1).within(grams(0.5));
        PressedWeightSolver scale = new PressedWeightSolver(any, hard, dome, factors);
        PressModel next = new PressModel(hard, dome, factors, MixingRoom.standard(), new double[PressModel.WIDTH][1]);
        for (int i = 0; i < TRUTHS; i++) {
            double[] truth = drawn(factors.priors(), random);
            double read =
                    scale.mass(truth, uniform(random), uniform(random)) + grams(0.5) * Normal.quantile(uniform(random));
            WeighedPiece piece = WeighedPiece.byGauge(read, 30e3, 1).within(grams(0.5));
            Posterior after = Posterior.of(
                    factors.priors(),
                    DRAWS,
                    i,
                    PARALLEL,
                    8,
                    () -> MeasurementSolvers.pressed(new PressedWeightSolver(piece, hard, dome, factors), factors));
            count(
                    after.draws(() -> new PressModel(
                            hard, dome, factors, MixingRoom.standard(), new double[PressModel.WIDTH][DRAWS])),
                    next,
                    truth,
                    inside);
        }
        honest(inside);
    }

    private static void count(double[] draws, Model model, double[] truth, int[] inside) {
        double value = model.at(truth);
        double[] sorted = Statistics.sorted(draws);
        inside[0] += value > Statistics.quantile(sorted, 0.25) && value < Statistics.quantile(sorted, 0.75) ? 1 : 0;
        inside[1] += value > Statistics.quantile(sorted, 0.05) && value < Statistics.quantile(sorted, 0.95) ? 1 : 0;
    }

    private static void honest(int[] inside) {
        assertThat(inside[0]).as("in the middle 50 %").isBetween(79, 121);
        assertThat(inside[1]).as("in the middle 90 %").isBetween(166, 193);
    }

    private static double[] drawn(List<Prior> priors, SplittableRandom random) {
        double[] x = new double[priors.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = priors.get(i).quantile(uniform(random));
        }
        return x;
    }

    private static double uniform(SplittableRandom random) {
        return 1e-9 + (1 - 2e-9) * random.nextDouble();
    }
}
