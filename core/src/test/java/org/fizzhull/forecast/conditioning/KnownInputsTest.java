package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** Results, drying logs and the table that measurements leave. Expected values: Bayes' rule by other ways (ANALYTIC). */
class KnownInputsTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.145);
    private static final Sampling SAMPLING = new Sampling(1, 4096);
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard().with(SAMPLING);
    private static final double DAY = 86400;

    private static Observations dunked() {
        return Observations.none().held(HeldPiece.of(0.151, 5).weighing(0.142));
    }

    /** Two ways to the same answer: the measured question itself, and the table that its measurements leave. */
    @Test
    void theTableLeftGivesTheForecastOfTheMeasuredQuestion() {
        Forecast itself = PREDICTOR.with(dunked()).forecast(QUESTION);
        KnownInputs known = KnownInputs.of(
                new Observations.MeasuredPieces(QUESTION, dunked()), Factors.standard(), SAMPLING, Workers.CALLER);
        Forecast elsewhere = PREDICTOR.with(known.factors()).forecast(QUESTION);
        assertThat(chance(elsewhere)).isCloseTo(chance(itself), within(0.02)); // 1,024 whole draws
        assertThat(chance(itself)).isGreaterThan(chance(PREDICTOR.forecast(QUESTION)) + 0.2);
        // the 2.5 and 97.5 % points rest on 25 draws each
        assertThat(width(elsewhere.spareAtDrop())).isCloseTo(width(itself.spareAtDrop()), within(1.2e-3));
        assertThat(known.notices()).extracting(Notice::code).contains("measured-lift-as");
    }

    @Test
    void nothingMeasuredLeavesTheTableAsItIs() {
        KnownInputs known = KnownInputs.of(
                new Observations.MeasuredPieces(QUESTION, Observations.none()),
                Factors.standard(),
                SAMPLING,
                Workers.CALLER);
        assertThat(known.factors()).isEqualTo(Factors.standard());
        assertThat(known.notices()).isEmpty();
    }

    /**
     * Bayes' rule by hand: draw i, whose heaviest floater weighs L_i, says of a piece of mass m that it sinks with e + (1 - 2 e)
     * Phi((m - L_i)/s); the weighted share of the draws that float the piece asked about is the chance afterwards. Near its
     * limit a piece is spared 1 g by 1 g less of weight, to some per cent.
     */
    @Test
    void aResultWeighsTheDrawsByItsChance() {
        double[] limits = PREDICTOR.forecast(QUESTION).critical().atOnce();
        NormalDistribution normal = new NormalDistribution(0, HeldPiece.ownLift(BALL, QUESTION.bath()));
        double all = 0;
        double floats = 0;
        double known = 0;
        for (double limit : limits) {
            double weight = (0.01 + 0.98 * normal.cumulativeProbability(0.142 - limit))
                    * (0.01 + 0.98 * normal.cumulativeProbability(limit - 0.136));
            all += weight;
            floats += limit >= 0.145 ? weight : 0;
            known += limit >= 0.145 ? 1.0 / limits.length : 0;
        }
        Observations seen = Observations.none()
                .dropped(DroppedPiece.of(DroppedPiece.Result.FLOATED, 0.136))
                .dropped(DroppedPiece.of(DroppedPiece.Result.SANK, 0.142));
        Forecast forecast = PREDICTOR.with(seen).forecast(QUESTION);
        double chance = forecast.probability().orElseThrow().floatsAtOnce();
        assertThat(chance).isCloseTo(floats / all, within(0.03));
        assertThat(Math.abs(chance - known)).as("it tells something").isGreaterThan(0.05);
        assertThat(width(forecast.spareAtDrop()))
                .isLessThan(0.75 * width(PREDICTOR.forecast(QUESTION).spareAtDrop()));
        assertThat(forecast.notices()).extracting(Notice::code).contains("measured-result-as");
    }

    /**
     * BY DEFINITION: the table holds whole draws in the order of the bubble size, each of which shows the reading to its error; the
     * scores of the powders, of which it says next to nothing, keep their standard normal spread in each column.
     */
    @Test
    void wholeDrawsAreKept() {
        Question pressed = Question.of(
                BALL,
                new Moulded.Pressed(
                        Blend.of(ExampleRecipes.lemon(IngredientTable.standard())),
                        3e4,
                        1.6,
                        MouldDimensions.Filling.usual(BALL),
                        DryingPlan.none()));
        HeldPiece held = HeldPiece.of(0.147, 4).weighing(0.142);

        KnownInputs known = KnownInputs.of(
                new Observations.MeasuredPieces(pressed, Observations.none().held(held)),
                Factors.standard(),
                new Sampling(1, 256),
                Workers.CALLER);
        Factors asked = known.factors().asked(pressed);
        assertThat(asked.isDependent()).isTrue();
        List<Prior> priors = asked.priors();
        int bubble = asked.column(Input.BUBBLE_SIZE);
        int scores = asked.column(Input.POWDER_SCORES);
        int count = asked.row(Input.POWDER_SCORES).orElseThrow().columns();
        DunkReading dunk = new DunkReading(PreparedQuestion.of(pressed, known.factors()), held);
        double[][] drawn = new double[256][];
        double before = 0;
        double[] readings = new double[256];
        for (int i = 0; i < drawn.length; i++) {
            double[] u = new double[priors.size()];
            Arrays.fill(u, (i + 0.5) / drawn.length);
            double[] inputs = new double[u.length];
            for (int k = 0; k < inputs.length; k++) {
                inputs[k] = priors.get(k).quantile(u, k);
            }
            assertThat(inputs[bubble]).isGreaterThanOrEqualTo(before);
            before = inputs[bubble];
            readings[i] = dunk.first(inputs);
            drawn[i] = inputs;
        }
        // 2 g of the reading and what the next piece differs by, and the scales that feel no plume
        assertThat(StatUtils.percentile(readings, 50)).isCloseTo(0.147, within(0.002));
        assertThat(Math.sqrt(StatUtils.variance(readings))).isLessThan(0.005);
        for (int k = scores; k < scores + count; k++) {
            int column = k;
            double[] values =
                    Arrays.stream(drawn).mapToDouble(draw -> draw[column]).toArray();
            assertThat(StatUtils.mean(values)).isBetween(-0.5, 0.5);
            assertThat(Math.sqrt(StatUtils.variance(values))).isBetween(0.7, 1.3);
        }
        // one column stands for what was drawn of it, several for their prior beside the draws
        Prior scored = known.factors().row(Input.POWDER_SCORES).orElseThrow().prior();
        assertThat(scored.quantile(0.975)).isCloseTo(1.95996, within(1e-4));
        double widest =
                known.factors().row(Input.BUBBLE_SIZE).orElseThrow().prior().quantile(1 - 1e-9);
        assertThat(widest).isGreaterThanOrEqualTo(before).isLessThan(1.5 * before);
        // what each press asks again keeps its prior
        assertThat(known.factors().row(Input.PRESS_REPEAT)).isEmpty();
        assertThat(asked.row(Input.PRESS_REPEAT)).isPresent();
    }

    /** A drying log of other pieces and the weighings of the piece itself follow one rule: alike conditions, alike answers. */
    @Test
    void aDryingLogOfOtherPiecesNarrowsAsTheWeighingsOfThePiece() {
        DryPredictor predictor = DryPredictor.standard().with(new Sampling(1, 1024));
        Making making = making(21);
        DryForecast prior = predictor.forecast(BALL, making);
        DryLog log = log(prior);
        DryForecast own = predictor.with(log).forecast(BALL, making);
        Observations seen = Observations.none().dried(new Observations.LoggedPieces(BALL, making, log));
        DryForecast others = predictor.with(seen).forecast(BALL, making);
        Interval expected = own.ready().orElseThrow();
        Interval ready = others.ready().orElseThrow();
        assertThat(ready.median()).isCloseTo(expected.median(), within(0.08 * expected.median()));
        assertThat(Math.log(ready.high() / ready.low()))
                .isLessThan(0.8
                        * Math.log(prior.ready().orElseThrow().high()
                                / prior.ready().orElseThrow().low()));
        // and a piece in other air is narrower for it, too
        Interval cool = predictor.forecast(BALL, making(16)).ready().orElseThrow();
        Interval known = predictor.with(seen).forecast(BALL, making(16)).ready().orElseThrow();
        assertThat(Math.log(known.high() / known.low())).isLessThan(0.9 * Math.log(cool.high() / cool.low()));
    }

    @Test
    void aLogBesideAPieceThatIsNotDriedHereIsRefused() {
        DryForecast prior = DryPredictor.standard().with(new Sampling(1, 128)).forecast(BALL, making(21));
        Observations seen = Observations.none().dried(new Observations.LoggedPieces(BALL, making(21), log(prior)));
        assertThatThrownBy(() -> PREDICTOR.with(seen).forecast(QUESTION))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("conflict"));
        assertThatThrownBy(() -> new Observations.LoggedPieces(BALL, making(21), late()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("conflict"));
    }

    /** The course of the central values, weighed in a bowl of 4 g at 0, 12, 24 and 48 h, twice as slow as expected. */
    private static DryLog log(DryForecast prior) {
        List<Double> times = List.of(0.0, DAY / 2, DAY, 2 * DAY);
        List<Double> weights = times.stream()
                .map(time -> 0.004 + prior.course().at(time / 2).mass())
                .toList();
        return new DryLog(List.of(new DryLog.Series("A", times, weights, 0.1e-3)));
    }

    private static DryLog late() {
        return new DryLog(List.of(new DryLog.Series("A", List.of(0.0, 30 * DAY), List.of(0.15, 0.14), 0.1e-3)));
    }

    private static Making making(double celsius) {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        return new Moulded.Filled(
                blend,
                0.146,
                Optional.empty(),
                DryingConditions.open(RoomAir.of(Units.celsius(celsius), 0.50), 6 * DAY)
                        .plan(BALL));
    }

    private static double chance(Forecast forecast) {
        return forecast.probability().orElseThrow().floatsToTheEnd();
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }
}
