package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.CommonColumns;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Posterior;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: after all solvers everything that was measured is met at once, and the weights multiply. */
class MeasurementSolversTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question WEIGHED = Question.weighed(BALL, 0.15);
    private static final Moulded.Pressed MADE = new Moulded.Pressed(
            Blend.of(ExampleRecipes.lemon(IngredientTable.standard())),
            3e4,
            1.6,
            MouldDimensions.Filling.usual(BALL),
            DryingPlan.none());
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(WEIGHED, Factors.standard());
    private static final PreparedQuestion PRESSED = PreparedQuestion.of(Question.of(BALL, MADE), Factors.standard());
    private static final Observations NONE = Observations.none();

    private static double solve(PreparedQuestion prepared, Observations seen, double[] inputs) {
        double[] middle = new double[7];
        Arrays.fill(middle, 0.5);
        return MeasurementSolvers.of(prepared, seen).solve(inputs, middle);
    }

    private static int[] columns(PreparedQuestion prepared, Input... inputs) {
        return Arrays.stream(inputs).mapToInt(prepared.factors()::column).toArray();
    }

    @Test
    void eachMeasurementSolvesItsInput() {
        TimedPiece fizz = TimedPiece.fizzed(200);
        TimedPiece rose = TimedPiece.rose(95);
        assertThat(MeasurementSolvers.of(PREPARED, NONE).solved()).isEmpty();
        assertThat(MeasurementSolvers.of(PREPARED, NONE.fizzed(fizz)).solved())
                .containsExactly(columns(PREPARED, Input.RECESSION));
        assertThat(MeasurementSolvers.of(PREPARED, NONE.rose(rose).held(HeldPiece.of(0.15, 4)))
                        .solved())
                .containsExactly(columns(PREPARED, Input.BUBBLE_SIZE));
        Observations all = NONE.weighed(WeighedPiece.byHand(0.15, 3e4))
                .rose(rose.weighing(0.15))
                .fizzed(fizz.weighing(0.15));
        MeasurementSolvers solvers = MeasurementSolvers.of(PRESSED, all);
        assertThat(solvers.solved())
                .containsExactly(columns(PRESSED, Input.PRESS_SCALE, Input.BUBBLE_SIZE, Input.RECESSION));
        assertThat(solvers.uniforms()).isEqualTo(7);
        assertThat(MeasurementSolvers.weighing(PRESSED, all).solved()).isEmpty();
    }

    @Test
    void fizzAndRiseAreMetAtOnce() {
        double[] inputs = PREPARED.factors().medians();
        Observations seen = NONE.fizzed(TimedPiece.fizzed(220)).rose(TimedPiece.rose(95));
        assertThat(solve(PREPARED, seen, inputs)).isFinite();
        TimedVoyage voyage = new TimedVoyage(PREPARED, OptionalDouble.empty());
        assertThat(voyage.fizz(inputs)).isCloseTo(220, within(0.25));
        assertThat(voyage.rise(inputs)).isCloseTo(95, within(0.5));
    }

    @Test
    void pressAndLiftAreMetAtOnceAndTheirWeightsMultiply() {
        WeighedPiece press = WeighedPiece.byHand(0.15, 3e4);
        HeldPiece held = HeldPiece.of(0.147, 4).weighing(0.142);
        double[] both = PRESSED.factors().medians();
        double weight = solve(PRESSED, NONE.weighed(press).held(held), both);
        double[] one = PRESSED.factors().medians();
        double pressed = solve(PRESSED, NONE.weighed(press), one);
        double lifted = solve(PRESSED, NONE.held(held), one);
        assertThat(weight).isCloseTo(pressed + lifted, within(1e-9));
        assertThat(both).containsExactly(one);
        assertThat(new PressedWeightSolver(press, MADE, BALL, PRESSED.factors()).mass(both, 0.5, 0.5))
                .isCloseTo(0.15, within(1e-9));
    }

    @Test
    void aDrawThatIsGivenUpStaysAsItWas() {
        double[] inputs = PRESSED.factors().medians();
        Observations never = NONE.weighed(WeighedPiece.byHand(0.15, 3e4))
                .held(HeldPiece.of(0.03, 4).weighing(0.142));
        assertThat(solve(PRESSED, never, inputs)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(PRESSED.factors().medians());
        Observations light = NONE.weighed(WeighedPiece.byHand(0.03, 3e4))
                .fizzed(TimedPiece.fizzed(200).weighing(0.142));
        assertThat(solve(PRESSED, light, inputs)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(PRESSED.factors().medians());
    }

    @Test
    void aWeighedPieceAlone() {
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        Factors factors = PRESSED.factors();
        MeasurementSolvers alone =
                MeasurementSolvers.pressed(new PressedWeightSolver(piece, MADE, BALL, factors), factors);
        double[] inputs = factors.medians();
        double[] middle = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
        double[] same = factors.medians();
        assertThat(alone.solve(inputs, middle)).isEqualTo(solve(PRESSED, NONE.weighed(piece), same));
        assertThat(inputs).containsExactly(same);
    }

    /**
     * BY DEFINITION: the common columns hold uniform numbers, the solved one as F(p), with F the cumulative prior of the question that
     * was measured: its quantiles in each draw show the reading, to its deviation of 2 g.
     */
    @Test
    void commonColumnsHoldThePlacesOfWhatWasSolved() {
        HeldPiece held = HeldPiece.of(0.147, 4).weighing(0.142);
        Question other = Question.weighed(Sphere.ofDiameter(0.06), 0.12);
        CommonColumns common = new CommonColumns(List.of(other, WEIGHED), Factors.standard(), true);
        Sampling sampling = new Sampling(1, 256);
        CommonPosterior known =
                CommonPosterior.of(common, 1, List.of(PREPARED), List.of(NONE.held(held)), sampling, Workers.CALLER);
        assertThat(known.notices()).isNotEmpty();
        Posterior draws = known.draws();
        assertThat(draws.effective()).isGreaterThan(50);
        int[] places = common.places(1);
        List<Prior> priors = PREPARED.factors().priors();
        DunkReadings dunk = new DunkReadings(PREPARED, List.of(held));
        double[] readings = draws.draws(() -> uniforms -> {
            double[] own = new double[places.length];
            for (int i = 0; i < own.length; i++) {
                own[i] = priors.get(i).quantile(uniforms[places[i]]);
            }
            return dunk.reading(own, true);
        });
        double mean = Arrays.stream(readings).average().orElseThrow();
        double spread = Math.sqrt(Arrays.stream(readings)
                .map(reading -> (reading - mean) * (reading - mean))
                .average()
                .orElseThrow());
        // the error of the dunk, and what the next piece differs by; the draws that feel no plume lie further off
        double expected = Math.hypot(dunk.deviation(), dunk.own());
        assertThat(mean).isCloseTo(0.147, within(0.5 * expected));
        assertThat(spread).isBetween(0.6 * expected, 1.6 * expected);
        double[] centre = known.centre(PREPARED, places);
        assertThat(dunk.reading(centre, true)).isCloseTo(0.147, within(expected));
        double[] medians = PREPARED.factors().medians();
        int size = PREPARED.factors().column(Input.MOULD_SIZE);
        assertThat(centre[size]).isEqualTo(medians[size]);
    }

    @Test
    void commonDrawsThatNothingAgreesWithAreRefused() {
        CommonColumns common = new CommonColumns(List.of(WEIGHED), Factors.standard(), true);
        Observations never = NONE.held(HeldPiece.of(0.03, 4).weighing(0.142));
        assertThatThrownBy(() -> CommonPosterior.of(
                        common, 0, List.of(PREPARED), List.of(never), new Sampling(1, 128), Workers.CALLER))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hardly any");
    }

    /** BY DEFINITION: what is measured on pieces of a second question weighs the draws, and is not solved for. */
    @Test
    void aSecondQuestionWeighsTheDraws() {
        Question second = Question.weighed(Sphere.ofDiameter(0.06), 0.12);
        PreparedQuestion other = PreparedQuestion.of(second, Factors.standard());
        CommonColumns common = new CommonColumns(List.of(WEIGHED, second), Factors.standard(), true);
        HeldPiece one = HeldPiece.of(0.147, 4).weighing(0.142);
        HeldPiece two = HeldPiece.of(0.118, 4).weighing(0.114);
        Sampling sampling = new Sampling(1, 256);
        CommonPosterior first =
                CommonPosterior.of(common, 0, List.of(PREPARED), List.of(NONE.held(one)), sampling, Workers.CALLER);
        CommonPosterior both = CommonPosterior.of(
                common, 0, List.of(PREPARED, other), List.of(NONE.held(one), NONE.held(two)), sampling, Workers.CALLER);
        DunkReadings dunk = new DunkReadings(other, List.of(two));
        assertThat(spread(both, common.places(1), other, dunk))
                .isLessThan(0.8 * spread(first, common.places(1), other, dunk));
        assertThat(both.notices().size()).isGreaterThan(first.notices().size());
    }

    private static double spread(CommonPosterior known, int[] places, PreparedQuestion prepared, DunkReadings dunk) {
        List<Prior> priors = prepared.factors().priors();
        double[] readings = known.draws().draws(() -> uniforms -> {
            double[] own = new double[places.length];
            for (int i = 0; i < own.length; i++) {
                own[i] = priors.get(i).quantile(uniforms[places[i]]);
            }
            return dunk.reading(own, true);
        });
        double mean = Arrays.stream(readings).average().orElseThrow();
        return Math.sqrt(Arrays.stream(readings)
                .map(reading -> (reading - mean) * (reading - mean))
                .average()
                .orElseThrow());
    }
}
