package org.fizzhull.forecast.prepared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** BY HAND: how pieces of a batch scatter; BY DEFINITION: which columns several questions have in common. */
class PreparedQuestionsTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private static Blend mix(String third) {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .dry(third, "20 g")
                .wet("water", "3 g")
                .build());
    }

    private static Question filled(Blend blend) {
        return Question.of(BALL, new FilledMould(blend, 0.13, Optional.empty(), DryingPlan.none()));
    }

    private static Question pressed() {
        return Question.of(
                BALL,
                new PressedMould(mix("kaolin"), 5e4, 1.6, MouldDimensions.Filling.usual(BALL), DryingPlan.none()));
    }

    private static Scatter scatter(Question question, Factors factors) {
        return Scatter.of(PreparedQuestion.of(question, factors));
    }

    private static Draw draw(Input first, double one, Input second, double two) {
        return Draw.of(
                List.of(
                        new Factor(first, Priors.certain(one), INVENTED),
                        new Factor(second, Priors.certain(two), INVENTED)),
                new double[] {one, two});
    }

    /** A scale of 1 g reads evenly to half a gram each way: a quarter of the readings lie above a quarter of a gram. */
    @Test
    void oneWeighedPiece() {
        Scatter one = scatter(Question.weighed(BALL, 0.13), Factors.standard());
        assertThat(one.below(0)).isCloseTo(0.5, within(1e-12));
        assertThat(one.below(0.25e-3)).isCloseTo(0.75, within(1e-9));
        assertThat(one.below(1)).isEqualTo(1);
        assertThat(one.below(-1)).isZero();
        assertThat(one.single()).isTrue();
        assertThat(one.chosen()).isTrue();
        assertThat(one.entered()).isEqualTo(0.13);
        assertThat(one.more(0.14)).isCloseTo(0.01, within(1e-15));
        assertThat(one.widest()).isCloseTo(0.5e-3, within(1e-9));
        Draw off = draw(Input.SCALE_OFFSET, 0.001, Input.HAND, 0.003);
        assertThat(one.mean(off, 0.134, 0)).isCloseTo(0.131, within(1e-15));
        assertThat(one.gain(off, 0.134, 0)).isEqualTo(1);
        // what is known exactly is below any limit above it
        Scatter exact = scatter(Question.weighed(BALL, 0.13), Factors.standard().without(Input.SCALE));
        assertThat(exact.below(1e-9)).isEqualTo(1);
        assertThat(exact.below(0)).isZero();
        assertThat(exact.widest()).isZero();
    }

    /**
     * A hand of 4 g and readings of 1 g / sqrt(12): 4.0104 g together, of which 4 g are 0.9974 deviations, 84.07 %. One in
     * 10^10 lies 6.3613 deviations off (tables).
     */
    @Test
    void aBatch() {
        Question question = Question.weighed(BALL, 0.13).spread(Priors.normal(0, 0.004));
        Scatter batch = scatter(question, Factors.standard());
        assertThat(batch.single()).isFalse();
        assertThat(batch.below(0)).isCloseTo(0.5, within(1e-12));
        assertThat(batch.below(0.004)).isCloseTo(0.8407, within(1e-4));
        assertThat(batch.below(-0.004)).isCloseTo(0.1593, within(1e-4));
        assertThat(batch.widest()).isCloseTo(0.004 * 6.3613 + 0.5e-3, within(1e-6));
        assertThat(batch.alike(scatter(question, Factors.standard()))).isTrue();
        assertThat(batch.alike(scatter(question.weighing(0.131), Factors.standard())))
                .isFalse();
        assertThat(batch.alike(scatter(question, Factors.standard().without(Input.SCALE))))
                .isFalse();
    }

    /** Of 135 g by a fill that is 5 g off, 2 g of them by the scale, 132 g are that of all pieces; an inset is not scaled. */
    @Test
    void aFill() {
        Scatter fill = scatter(filled(mix("kaolin")), Factors.standard());
        Draw off = draw(Input.SCALE_OFFSET, 0.002, Input.HAND, 0.003);
        assertThat(fill.mean(off, 0.135, 0)).isCloseTo(0.132, within(1e-12));
        assertThat(fill.mean(off, 0.155, 0.02)).isCloseTo(0.152, within(1e-12));
        // dried to 120 g, a gram more in the fill is 120/135 g more in the piece
        assertThat(fill.gain(off, 0.12, 0)).isCloseTo(0.12 / 0.135, within(1e-12));
        assertThat(fill.gain(off, 0.14, 0.02)).isCloseTo(0.12 / 0.135, within(1e-12));
        assertThat(fill.entered()).isEqualTo(0.13);
        assertThat(fill.single()).isFalse();
        assertThat(fill.chosen()).isTrue();
    }

    /** A piece pressed 5 % harder than usual leads back to what the usual pressure makes; a hand repeats to a factor 1.15. */
    @Test
    void aPress() {
        Question question = pressed();
        Scatter press = scatter(question, Factors.standard());
        assertThat(press.chosen()).isFalse();
        assertThat(press.entered()).isZero();
        assertThat(press.more(5)).isZero();
        assertThat(press.widest()).isZero();
        assertThat(press.single()).isFalse();
        assertThat(press.below(0)).isCloseTo(0.5, within(1e-9));
        assertThat(press.below(Math.log(1.15))).isCloseTo(0.8413447, within(1e-6));
        Maker maker = Maker.of(question.making(), BALL);
        Draw usual = draw(Input.PRESS_REPEAT, 1, Input.PROMPT_YIELD, 0);
        Draw harder = draw(Input.PRESS_REPEAT, 1.05, Input.PROMPT_YIELD, 0);
        double middle = maker.make(usual, 1).mass();
        double more = maker.make(harder, 1).mass();
        assertThat(more).isGreaterThan(middle);
        assertThat(press.mean(usual, middle, 0)).isCloseTo(middle, within(1e-15));
        assertThat(press.mean(harder, more, 0)).isCloseTo(middle, within(0.05 * (more - middle)));
        assertThat(press.gain(usual, middle, 0) * Math.log(1.05))
                .isCloseTo(more - middle, within(0.05 * (more - middle)));
        assertThat(press.mean(harder, more + 0.02, 0.02)).isCloseTo(middle + 0.02, within(0.05 * (more - middle)));
    }

    /** What is heavier by a tenth than its water, inset included, sinks at first; no piece is heavier than its limit. */
    @Test
    void heavierPieces() {
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        PreparedQuestion prepared = PreparedQuestion.of(Question.weighed(loaded, 0.13), Factors.standard());
        double water = prepared.question().bath().density();
        assertThat(prepared.heavier()).isCloseTo(1.1 * water * (loaded.volume() + 5e-6), within(1e-12));
        Question heavy = Question.weighed(Loaded.with(BALL, new Inset(0.005, 70e-6)), 0.1);
        double limit = 0.005 + 1670 * heavy.shape().volume();
        PreparedQuestion hollow = PreparedQuestion.of(heavy, Factors.standard());
        assertThat(hollow.heavier()).isLessThanOrEqualTo(limit);
        Question other = heavy.weighing(0.11);
        assertThat(hollow.ask(other).question()).isEqualTo(other);
        assertThat(hollow.ask(other).factors()).isEqualTo(hollow.factors());
        assertThat(hollow.form()).isNotNull();
        PreparedQuestion still = PreparedQuestion.of(Question.still(BALL, 0.13), Factors.standard());
        assertThatThrownBy(still::form).isInstanceOf(NoSuchElementException.class);
        assertThat(PreparedQuestion.forOneVoyage(Question.still(BALL, 0.13), Factors.standard())
                        .waterborne())
                .isEmpty();
        assertThat(PreparedQuestion.forOneVoyage(Question.weighed(BALL, 0.13), Factors.standard())
                        .waterborne())
                .isPresent();
    }

    /** Two mixes share bicarbonate and acid, and have one powder of their own: three scores each. */
    @Test
    void columnsInCommon() {
        List<Question> two = List.of(filled(mix("kaolin")), filled(mix("talc")), filled(mix("kaolin")));
        CommonColumns common = new CommonColumns(two, Factors.standard());
        int[] first = common.places(0);
        int[] second = common.places(1);
        assertThat(second).hasSameSizeAs(first);
        assertThat(common.places(2)).containsExactly(first);
        assertThat(common.uniforms()).hasSize(first.length + 3);
        long apart = Arrays.stream(second).filter(at -> at >= first.length).count();
        assertThat(apart).isEqualTo(3);
        assertThat(Arrays.stream(first).distinct().count()).isEqualTo(first.length);
        assertThat(Arrays.stream(second).distinct().count()).isEqualTo(second.length);
        first[0] = 99;
        assertThat(common.places(0)[0]).isNotEqualTo(99);
    }

    /** Two moulds have one size error where they are one mould, and each its own where they are told apart. */
    @Test
    void mouldsApart() {
        List<Question> two = List.of(Question.weighed(BALL, 0.13), Question.weighed(Sphere.ofDiameter(0.06), 0.11));
        int together = new CommonColumns(two, Factors.standard()).uniforms().size();
        assertThat(new CommonColumns(two, Factors.standard(), true).uniforms()).hasSize(together + 1);
        List<Question> same = List.of(two.get(0), two.get(0).weighing(0.12));
        assertThat(new CommonColumns(same, Factors.standard(), true).uniforms()).hasSize(together);
    }

    /** Own amounts of a recipe with ranges are its own columns: one for each line. 128 columns are the most. */
    @Test
    void amountsAndLimits() {
        Blend ranged = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "90 to 110 g")
                .build());
        Blend other = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "80 to 120 g")
                .build());
        CommonColumns one = new CommonColumns(List.of(filled(ranged)), Factors.standard());
        CommonColumns two = new CommonColumns(List.of(filled(ranged), filled(other)), Factors.standard());
        assertThat(two.uniforms()).hasSize(one.uniforms().size() + 2);
        RecipeBuilder full = new RecipeBuilder(IngredientTable.standard(), Measures.METRIC);
        for (int i = 0; i < 45; i++) {
            full.own("sand " + i, Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3"))
                    .dry("sand " + i, "1 g");
        }
        Question many = filled(Blend.of(full.build()));
        assertThatThrownBy(() -> new CommonColumns(List.of(many), Factors.standard()))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo("too-many"));
    }
}
