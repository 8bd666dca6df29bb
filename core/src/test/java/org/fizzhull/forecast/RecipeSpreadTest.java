package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** What a recipe leaves open reaches the draws: ranges of amounts, and cups that narrow the powders. */
class RecipeSpreadTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final PressPredictor PREDICTOR = PressPredictor.standard().with(new Sampling(1, 1024));

    private static RecipeBuilder mix() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL);
    }

    private static PressForecast.PieceOut pressed(RecipeBuilder recipe) {
        return PREDICTOR.piece(BALL, making(recipe));
    }

    private static Making making(RecipeBuilder recipe) {
        Blend blend = Blend.of(recipe.dry("sodium bicarbonate", "200 g").build());
        return new Moulded.Pressed(blend, 30e3, 1, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none());
    }

    private static double width(Interval x) {
        return (x.high() - x.low()) / x.median();
    }

    /** By hand: saturation is all but proportional to the liquid; 2 to 30 g has a standard deviation of half of 16 g. */
    @Test
    void aRangeBecomesASpread() {
        PressForecast.PieceOut exact = pressed(mix().dry("citric acid", "100 g").wet("water", "16 g"));
        PressForecast.PieceOut range = pressed(mix().dry("citric acid", "100 g").wet("water", "2 to 30 g"));
        assertThat(range.central().dampMass()).isCloseTo(exact.central().dampMass(), within(1e-12));
        assertThat(width(range.saturation())).isGreaterThan(1.3 * width(exact.saturation()));
    }

    /** ANALYTIC: a piece on the scale weighs what it weighs, whatever its mix was: only scale and press are left. */
    @Test
    void aWeighedPieceSettlesARangeToo() {
        Making range = making(mix().dry("citric acid", "100 g").wet("water", "2 to 30 g"));
        Interval before = PREDICTOR.piece(BALL, range).dampMass();
        PressForecast.PieceOut known =
                PREDICTOR.with(WeighedPiece.byGauge(before.median(), 30e3, 1)).piece(BALL, range);
        assertThat(known.central().dampMass()).isCloseTo(before.median(), within(1e-3));
        assertThat(known.dampMass().high() - known.dampMass().low()).isLessThan(8e-3);
        assertThat(before.high() - before.low()).isGreaterThan(24e-3);
    }

    /** The cups are those of the table's own densities, so that the median stays and the spread alone shrinks. */
    @Test
    void cupsNarrowTheWeight() {
        IngredientTable table = IngredientTable.standard();
        PressForecast.PieceOut fromTable =
                pressed(mix().dry("citric acid", "100 g").wet("water", "6 g"));
        PressForecast.PieceOut fromCups = pressed(mix().own("sodium bicarbonate", cups(table, "sodium bicarbonate"))
                .own("citric acid", cups(table, "citric acid"))
                .dry("citric acid", "100 g")
                .wet("water", "6 g"));
        assertThat(fromCups.central().dampMass()).isCloseTo(fromTable.central().dampMass(), within(1e-6));
        assertThat(width(fromCups.dampMass())).isLessThan(0.9 * width(fromTable.dampMass()));
    }

    private static Map<String, String> cups(IngredientTable table, String name) {
        var known = table.require(name).ingredient();
        double cup = 240e-6;
        return Map.of(
                "loose cup",
                1e3 * cup * known.value(Property.LOOSE_DENSITY) + " g",
                "tapped cup",
                1e3 * cup * known.value(Property.TAPPED_DENSITY) + " g");
    }
}
