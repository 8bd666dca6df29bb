package org.fizzhull.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** What a kitchen knows of itself reaches every later question. Expected values: geometry and the same said otherwise (ANALYTIC). */
class BenchTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard().with(new Sampling(1, 512));

    @Test
    void aBenchOfNothingIsTheDefault() {
        assertThat(Bench.none().factors()).isEqualTo(Factors.standard());
        Question question = Question.weighed(BALL, 0.142);
        assertThat(Bench.none().on(question)).isEqualTo(question);
    }

    /** A ball of 65.4 mm holds pi/6 d^3 of water at 998 kg/m3: the mould is 0.4 mm larger than stated, and the answer that of it. */
    @Test
    void waterTellsTheSizeOfItsMouldAndOfNoOther() {
        double water = 998 * Math.PI / 6 * Math.pow(0.0654, 3);
        assertThat(new Bench.MouldWater(BALL, water).sizeError()).isCloseTo(0.4e-3, within(0.005e-3));
        FloatPredictor filled = PREDICTOR.with(Bench.none().filled(BALL, water).factors());
        Interval spare = filled.forecast(Question.weighed(BALL, 0.142)).spareAtDrop();
        Interval larger = PREDICTOR
                .forecast(Question.weighed(Sphere.ofDiameter(0.0654), 0.142).measured(Measured.WATER))
                .spareAtDrop();
        assertThat(spare.median()).isCloseTo(larger.median(), within(0.2e-3));
        Question other = Question.weighed(Sphere.ofDiameter(0.060), 0.110);
        assertThat(filled.forecast(other).spareAtDrop())
                .isEqualTo(PREDICTOR.forecast(other).spareAtDrop());
        assertThatThrownBy(() -> Bench.none().filled(BALL, 0.3))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("conflict"));
    }

    @Test
    void scaleHygrometerCupsAndTrialsCount() {
        List<List<Double>> draws = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            draws.add(List.of(0.5 + 0.01 * i));
        }
        Bench bench = Bench.none()
                .with(new Learned.Draws(List.of(Input.BUBBLE_SIZE), draws))
                .weighingOn(Units.grams(0.1))
                .reading(0.02)
                .cup("citric acid", Map.of("loose cup", "205 g", "cup", "240 mL"));
        assertThat(bench.on(Question.weighed(BALL, 0.142)).scale()).isEqualTo(new Scale(1e-4));
        Factors factors = bench.factors();
        assertThat(factors.isDependent()).isTrue();
        // one standard deviation above the median of a normal law of 2 % relative humidity
        assertThat(factors.row(Input.ROOM_HUMIDITY).orElseThrow().prior().quantile(0.8413447))
                .isCloseTo(0.02, within(1e-6));
        Recipe recipe = bench.own(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL))
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid", "100 g")
                .build();
        double loose = recipe.dry().get(1).ingredient().value(Property.LOOSE_DENSITY);
        assertThat(loose).isCloseTo(0.205 / 240e-6, within(1.0)); // kg/m3
        assertThatThrownBy(() -> Bench.none().reading(0.5)).isInstanceOf(Refusal.class);
    }
}
