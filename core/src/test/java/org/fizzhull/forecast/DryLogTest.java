package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.junit.jupiter.api.Test;

/** What weighings of a drying piece say. Expected: data made up with a known truth (ANALYTIC), Bayes' rule. */
class DryLogTest {
    private static final double DAY = 86400;
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Blend BLEND = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
            .dry("sodium bicarbonate", "300 g")
            .dry("citric acid", "150 g")
            .dry("corn starch", "60 g")
            .wet("water", "8 g")
            .wet("sweet almond oil", "10 g")
            .build());
    private static final Making MAKING = new Moulded.Filled(
            BLEND,
            0.146,
            Optional.empty(),
            DryingConditions.open(RoomAir.of(Units.celsius(21), 0.50), 6 * DAY).plan(BALL));
    private static final DryPredictor PREDICTOR = DryPredictor.standard().with(new Sampling(1, 1024));

    /**
     * Truths are draws of the same priors from another seed; the band of the ready time covers 95 of 100 of them, so of 40 at
     * least 34 (binomial, 0.95: fewer in 1 of 300 test suites).
     */
    @Test
    void theBandCoversTheTruth() {
        Factors factors = Factors.standard().asked(Question.of(BALL, MAKING));
        Moulded made = Moulded.of(MAKING);
        PlannedDrying off = new PlannedDrying(BALL, made.plan());
        double[][] truths = new double[40][];
        int[] next = {0};
        new MonteCarlo(factors.priors(), factors.columns(), 48, 77, Workers.CALLER).draws(() -> new Model() {
            private double[] last = {};

            @Override
            public double at(double[] inputs) {
                last = inputs.clone();
                return 0;
            }

            @Override
            public void keep(int draw) {
                if (next[0] < truths.length) {
                    truths[next[0]++] = last;
                }
            }
        });
        Random noise = new Random(5);
        int covered = 0;
        int used = 0;
        double narrower = 0;
        double plain = width(PREDICTOR.forecast(BALL, MAKING));
        for (double[] truth : truths) {
            Packing.Packed packed = Packing.of(made, BALL).of(Draw.of(factors.rows(), truth), 1);
            DryingCourse course =
                    off.course(off.input(packed), made.plan().phases(), ReadyTimes.LONGEST, packed.making());
            List<Double> times = List.of(0.0, 0.5 * DAY, DAY, 2 * DAY);
            List<Double> weights = new ArrayList<>();
            for (double time : times) {
                weights.add(course.at(time).mass() + 0.1e-3 * noise.nextGaussian() + 0.004);
            }
            DryLog log = new DryLog(List.of(new DryLog.Series("A", times, weights, 0.1e-3)));
            DryForecast forecast = PREDICTOR.with(log).forecast(BALL, MAKING);
            double ready = course.readyAfter().orElse(Double.POSITIVE_INFINITY);
            if (forecast.ready().isPresent() && forecast.log().orElseThrow().fits()) {
                used++;
                boolean in = ready >= forecast.ready().get().low()
                        && (ready <= forecast.ready().get().high()
                                || forecast.ready().get().high() == ReadyTimes.LONGEST);
                covered += in ? 1 : 0;
                narrower += width(forecast) < plain ? 1 : 0;
            }
        }
        assertThat(used).isGreaterThan(34);
        assertThat(covered).isGreaterThanOrEqualTo(used - 6);
        assertThat(narrower).isGreaterThan(0.6 * used);
    }

    /** Logarithmic width of the band of the ready time. */
    private static double width(DryForecast forecast) {
        return Math.log(forecast.ready().orElseThrow().high()
                / forecast.ready().orElseThrow().low());
    }

    /** Weights of the recipe's own course leave its ready time near the middle; what is to go is its own. */
    @Test
    void headlineBandAndRestFollowTheWeighings() {
        DryForecast plain = PREDICTOR.forecast(BALL, MAKING);
        DryForecast slow = PREDICTOR.with(log(plain.course(), 2.2)).forecast(BALL, MAKING);
        DryForecast usual = PREDICTOR.with(log(plain.course(), 1)).forecast(BALL, MAKING);
        assertThat(slow.ready().orElseThrow().median())
                .isGreaterThan(1.3 * usual.ready().orElseThrow().median());
        assertThat(slow.log().orElseThrow().fits()).isTrue();
        assertThat(slow.log().orElseThrow().stillToGo().median())
                .isGreaterThan(usual.log().orElseThrow().stillToGo().median());
        // the band of the picture and the course of the table move with them
        int day = slow.band().times().indexOf(DAY);
        assertThat(slow.band().mass().get(day).median())
                .isGreaterThan(usual.band().mass().get(day).median());
        assertThat(slow.course().at(DAY).mass())
                .isGreaterThan(usual.course().at(DAY).mass());
    }

    private static DryLog log(DryingCourse course, double stretch) {
        List<Double> times = List.of(0.0, 0.4 * DAY, 0.8 * DAY, 1.2 * DAY);
        List<Double> weights = new ArrayList<>();
        for (double time : times) {
            weights.add(course.at(time / stretch).mass());
        }
        return new DryLog(List.of(new DryLog.Series("A", times, weights, 0.05e-3)));
    }

    @Test
    void aPieceThatGainsWeightIsToldSo() {
        DryLog log = new DryLog(
                List.of(new DryLog.Series("A", List.of(0.0, DAY, 2 * DAY), List.of(0.146, 0.148, 0.150), 0.1e-3)));
        assertThat(log.gain()).isCloseTo(0.004, within(1e-12));
        DryForecast forecast = PREDICTOR.with(log).forecast(BALL, MAKING);
        assertThat(forecast.log().orElseThrow().fits()).isFalse();
        assertThat(forecast.notices().stream().map(Notice::code)).contains("gains-weight", "log-misfit");
        assertThat(forecast.ready()).isEqualTo(PREDICTOR.forecast(BALL, MAKING).ready());
    }

    /** ANALYTIC: the weighted variance of 1, 2, 3 around their mean is 2 over the squared uncertainty. */
    @Test
    void deviationIsTheSumOfSquaresAroundTheMean() {
        DryLog.Series piece = new DryLog.Series("", List.of(0.0, 1.0, 2.0), List.of(0.1, 0.1, 0.1), 0.001);
        assertThat(DryLog.Fit.deviation(piece, new double[] {0.001, 0.002, 0.003}))
                .isCloseTo(2, within(1e-9));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new DryLog(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryLog.Series("", List.of(0.0), List.of(0.1), 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryLog.Series("", List.of(0.0, 0.0), List.of(0.1, 0.1), 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryLog.Series("", List.of(0.0, 1.0), List.of(0.1, Double.NaN), 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** What is dried keeps what acts on its fizz: the oil and starch of the recipe, by the recipe's own shares. */
    @Test
    void theDriedPieceKeepsItsOilAndStarch() {
        DryForecast forecast = DryPredictor.standard().with(new Sampling(1, 0)).forecast(BALL, MAKING);
        var makeup = forecast.course().piece(BALL, 3 * DAY).makeup();
        assertThat(makeup.additives().oil()).isCloseTo(10.0 / 510, within(1e-9));
        assertThat(makeup.additives().starch()).isCloseTo(60.0 / 510, within(1e-9));
        DryingCourse.State state = forecast.course().at(3 * DAY);
        assertThat(makeup.fizzLeft()).isEqualTo(state.fizzLeft()).isBetween(0.5, 1.0);
    }
}
