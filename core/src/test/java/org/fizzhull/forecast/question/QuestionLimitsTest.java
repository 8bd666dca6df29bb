package org.fizzhull.forecast.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.forecast.ToldShape;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: the limits that {@link PieceLimits} and {@link Question} state, on a block of 100 cm3. */
class QuestionLimitsTest {
    private static final Shape BLOCK = Block.ofSides(0.1, 0.05, 0.02);
    private static final Blend LEMON = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    /** Pressed mixes weigh 0.3 to 1.67 g/cm3: 100 cm3 above 30 g, up to 167 g; in still water up to 25 g/cm3, 2500 g. */
    @ParameterizedTest
    @CsvSource({
        "0.0301,false,true", "0.0299,false,false", "0.1669,false,true", "0.1671,false,false", "0.0299,true,true",
        "2.499,true,true", "2.501,true,false", "0,true,false", "NaN,true,false", "-0.1,false,false"
    })
    void weights(double mass, boolean still, boolean taken) {
        if (taken) {
            PieceLimits.check(BLOCK, mass, still);
        } else {
            assertThat(refusal(() -> PieceLimits.check(BLOCK, mass, still)).field())
                    .isEqualTo("mass");
        }
        Question question = still ? Question.still(BLOCK, 0.1) : Question.weighed(BLOCK, 0.1);
        assertThat(PieceLimits.lightest(question)).isCloseTo(still ? 0 : 0.03, within(1e-12));
        assertThat(PieceLimits.heaviest(question)).isCloseTo(still ? 2.5 : 0.167, within(1e-12));
    }

    /** A slip of the point by one or three places is named; what is no slip is told to be light or heavy. */
    @ParameterizedTest
    @CsvSource({
        "0.01,Did you mean 100 g?",
        "1,Did you mean 100 g?",
        "100,Did you mean 100 g?",
        "0.0001,Did you mean 100 g?",
        "0.002,No pressed mix is that light",
        "0.5,Did you mean 50 g?",
        "0.2,No pressed mix is that heavy"
    })
    void slips(double mass, String hint) {
        Refusal refusal = refusal(() -> PieceLimits.check(BLOCK, mass, false));
        assertThat(refusal.hint()).startsWith(hint);
        assertThat(refusal.hint()).doesNotContain("The weight is that of the whole piece");
        assertThat(refusal.allowed()).isEqualTo("between 30 g and 167 g");
    }

    /** Below 10 g hundredths are shown, above tenths: 2.00 and 1.23 g, 12.3 g. */
    @ParameterizedTest
    @CsvSource({"0.0012345,1.23 g", "0.012345,12.3 g", "0.00999,9.99 g", "-0.0012345,-1.23 g", "NaN,NaN g"})
    void gramsAsShown(double mass, String shown) {
        assertThat(refusal(() -> PieceLimits.check(BLOCK, mass, false)).read()).startsWith(shown + " for ");
    }

    /** An inset counts with its weight on both limits, and is told. */
    @Test
    void withAnInset() {
        Shape loaded = Loaded.with(BLOCK, new Inset(0.2, 1e-5));
        double body = loaded.volume();
        PieceLimits.check(loaded, 0.2 + 301 * body, false);
        PieceLimits.check(loaded, 0.2 + 1669 * body, false);
        assertThat(refusal(() -> PieceLimits.check(loaded, 0.2 + 299 * body, false))
                        .hint())
                .endsWith("with what lies on it and in it, 200 g of it.");
        assertThat(refusal(() -> PieceLimits.check(loaded, 0.2 + 1671 * body, false))
                        .field())
                .isEqualTo("mass");
        assertThat(refusal(() -> PieceLimits.check(loaded, 0.2, true)).read()).startsWith("200 g for ");
        assertThat(refusal(() -> PieceLimits.check(loaded, 30, true)).hint()).startsWith("A body needs some weight");
    }

    /** A hand of 30 g: the piece at one in ten thousand (3.719 deviations, tables) would weigh 100 - 111.6 g. */
    @Test
    void spreads() {
        Refusal wide = refusal(() -> Question.weighed(BLOCK, 0.1).spread(Priors.normal(0, 0.03)));
        assertThat(wide.read()).isEqualTo("100 g with a spread that reaches down to -11.6 g");
        assertThat(Question.weighed(BLOCK, 0.1).spread(Priors.normal(0, 0.02)).making())
                .isEqualTo(new Weighed(0.1, Optional.of(Priors.normal(0, 0.02)), Optional.empty()));
        FilledMould filled = new FilledMould(LEMON, 0.1, Optional.of(Priors.normal(0, 0.03)), DryingPlan.none());
        assertThat(refusal(() -> PieceLimits.checkPiece(BLOCK, filled)).read())
                .isEqualTo("100 g with a spread that reaches down to -11.6 g");
        assertThatThrownBy(() -> Question.of(BLOCK, filled.weighing(0.1)).spread(Priors.normal(0, 0.001)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A fill of 0.3 g/cm3 does not even fill the mould loosely. */
    @Test
    void fills() {
        FilledMould loose = new FilledMould(LEMON, 0.029, Optional.empty(), DryingPlan.none());
        assertThat(refusal(() -> PieceLimits.checkFill(BLOCK, loose)).field()).isEqualTo("fill");
        assertThat(refusal(() -> PieceLimits.checkPiece(BLOCK, loose)).allowed())
                .isEqualTo("more than 30 g");
        PieceLimits.checkPiece(BLOCK, loose.weighing(0.1));
        assertThat(refusal(() -> PieceLimits.checkPiece(BLOCK, loose.weighing(1)))
                        .field())
                .isNotEqualTo("mass");
    }

    /** Ball and block are dropped, a bowl is set down; each part of a question can be asked anew and the others stay. */
    @Test
    void questions() {
        Question question = Question.weighed(BLOCK, 0.1);
        assertThat(question.into()).isEqualTo(IntoBath.DROPPED);
        assertThat(Question.weighed(Bowl.ofDiameterAndWall(0.08, 0.012), 0.07).into())
                .isEqualTo(IntoBath.PLACED);
        assertThat(question.stillWater()).isFalse();
        assertThat(question.bath()).isEqualTo(Bath.at(Units.celsius(38)));
        assertThat(question.measured()).isEqualTo(Measured.CALIPERS);
        assertThat(question.scale()).isEqualTo(new Scale(1e-3));
        Bath cold = Bath.at(Units.celsius(30));
        assertThat(question.in(cold).bath()).isEqualTo(cold);
        assertThat(question.inBath(cold)).isEqualTo(question.in(cold));
        assertThat(question.on(new Scale(0.01)).scale()).isEqualTo(new Scale(0.01));
        assertThat(question.into(IntoBath.PLACED).into()).isEqualTo(IntoBath.PLACED);
        assertThat(question.measured(Measured.RULER).measured()).isEqualTo(Measured.RULER);
        assertThat(question.weighing(0.12).making()).isEqualTo(Weighed.of(0.12));
        assertThat(refusal(() -> question.on(new Scale(0.03))).field()).isEqualTo("scale");
        FilledMould light = new FilledMould(LEMON, 0.04, Optional.empty(), DryingPlan.none());
        assertThat(Question.of(BLOCK, light).scale().step()).isCloseTo(0.04 / 50, within(1e-12));
        // what is known of an inset is on no scale: of 53 g, 3 g in steps of a gram are too little
        Shape loaded = Loaded.with(Sphere.ofDiameter(0.03), new Inset(0.05, 2.5e-6));
        assertThat(refusal(() -> Question.still(loaded, 0.053)).read()).startsWith("steps of 1.0 g for a weight of ");
        assertThat(Question.still(loaded, 0.055).scale().step()).isEqualTo(1e-3);
        assertThat(IntoBath.PLACED.word()).isEqualTo("placed");
    }

    /** A hull that encloses the volume, with or without its inset, within 2 %. */
    @Test
    void shapesAsTold() {
        ShapeCheck.check(BLOCK);
        ShapeCheck.check(new ToldShape(BLOCK, "told", 1.0));
        ShapeCheck.check(new ToldShape(BLOCK, "told", 1.0 / 1.019));
        ShapeCheck.check(new ToldShape(BLOCK, "told", 1.0 / 0.981));
        assertThat(refusal(() -> ShapeCheck.check(new ToldShape(BLOCK, "told", 1 / 1.03)))
                        .code())
                .isEqualTo("contradiction");
        assertThat(refusal(() -> ShapeCheck.check(new ToldShape(BLOCK, "told", 1 / 0.97)))
                        .code())
                .isEqualTo("contradiction");
        assertThat(refusal(() -> ShapeCheck.check(new ToldShape(BLOCK, "told", 2)))
                        .read())
                .isEqualTo("a hull of "
                        + Units.inCubicCentimetres(BLOCK.hull().orElseThrow().volume()) + " cm3 round a volume of "
                        + Units.inCubicCentimetres(2 * BLOCK.volume()) + " cm3");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(refusal(() -> ShapeCheck.check(new ToldShape(BLOCK, "told", bad)))
                            .read())
                    .isEqualTo("a volume of " + bad * BLOCK.volume() + " m3");
        }
        assertThat(refusal(() -> PieceLimits.check(new ToldShape(BLOCK, "told", 0), 0.1, false))
                        .field())
                .isEqualTo("shape");
    }
}
