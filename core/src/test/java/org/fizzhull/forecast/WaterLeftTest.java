package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.junit.jupiter.api.Test;

/** THERE AND BACK: a fill is dried by the drying forecast; from the weight that it tells, its makeup is found again. */
class WaterLeftTest {
    private static final double DAY = 86400;
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final double FILL = 0.146;

    private static DryingPlan plan(Shape shape) {
        return DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 2 * DAY)
                .plan(shape);
    }

    private static DryingCourse course(Shape shape) {
        return DryPredictor.standard()
                .with(new Sampling(1, 0))
                .forecast(shape, new Moulded.Filled(MIX, FILL, Optional.empty(), plan(shape)))
                .course();
    }

    /** Coarse against fine course: to some per cent of the fizz lost, and of the water. */
    private static void alike(Piece.Makeup found, Piece.Makeup dried) {
        assertThat(found.trueDensity()).isCloseTo(dried.trueDensity(), within(1e-3 * dried.trueDensity()));
        assertThat(1 - found.fizzLeft()).isCloseTo(1 - dried.fizzLeft(), within(0.05 * (1 - dried.fizzLeft())));
        assertThat(found.gasCapacity()).isCloseTo(dried.gasCapacity(), within(5e-3 * dried.gasCapacity()));
        assertThat(found.additives()).isEqualTo(dried.additives());
    }

    @Test
    void theFillIsInferredFromTheDryWeight() {
        DryingCourse dried = course(BALL);
        double mass = dried.at(2 * DAY).mass();
        alike(
                WaterLeft.after(BALL, MIX, mass, plan(BALL)),
                dried.piece(BALL, 2 * DAY).makeup());
    }

    @Test
    void anInsetIsNotPartOfTheFill() {
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        DryingCourse dried = course(loaded);
        double mass = dried.at(2 * DAY).mass() + 0.02;
        Piece.Makeup expected = dried.piece(loaded, 2 * DAY).makeup();
        alike(WaterLeft.after(loaded, MIX, mass, plan(loaded)), expected);
        alike(WaterLeft.of(loaded, MIX, FILL, mass, plan(loaded)), expected);
    }

    /** The weighing says how far along its course it is: half a day here, and three days where it was dried on after the plan. */
    @Test
    void theWeighingSaysHowFarItIs() {
        DryingCourse dried = course(BALL);
        for (double time : new double[] {0.5 * DAY, 1.5 * DAY}) {
            alike(
                    WaterLeft.of(BALL, MIX, FILL, dried.at(time).mass(), plan(BALL)),
                    dried.piece(BALL, time).makeup());
        }
        DryingPlan half = plan(BALL).openFor(0.5 * DAY);
        alike(
                WaterLeft.of(BALL, MIX, FILL, dried.at(DAY).mass(), half),
                dried.piece(BALL, DAY).makeup());
    }

    @Test
    void weightsThatDisagreeAreRefused() {
        // what it weighs once the prompt gas has left, to a tenth of a gram
        double fresh = Math.rint(1e4 * course(BALL).at(0).mass()) / 10;
        for (double mass : new double[] {0.12, 0.15}) {
            assertThatThrownBy(() -> WaterLeft.of(BALL, MIX, FILL, mass, plan(BALL)))
                    .isInstanceOfSatisfying(Refusal.class, refusal -> {
                        assertThat(refusal.code()).isEqualTo("weights-disagree");
                        assertThat(refusal)
                                .hasMessageContaining(1e3 * mass + " g from a fill of 146.0 g")
                                .hasMessageContaining("and " + fresh + " g for this mix");
                    });
        }
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        assertThatThrownBy(() -> WaterLeft.of(loaded, MIX, FILL, 0.17, plan(loaded)))
                .hasMessageContaining("and " + (fresh + 20) + " g for this mix");
        assertThatThrownBy(() -> WaterLeft.after(BALL, MIX, 0.5, plan(BALL))).isInstanceOf(Refusal.class);
    }
}
