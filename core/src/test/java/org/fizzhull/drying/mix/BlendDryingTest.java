package org.fizzhull.drying.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.drying.Mixes;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.drying.solver.WaterActivity;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.junit.jupiter.api.Test;

/** From a recipe to its drying. */
class BlendDryingTest {
    private static RecipeBuilder lighthouse() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "8 g");
    }

    private static DryingInput input(RecipeBuilder recipe) {
        Blend blend = Blend.of(recipe.build());
        double ratio = blend.liquid().ratio();
        return BlendDrying.of(blend, 1100, 0.42, 0.38, ratio);
    }

    /**
     * ANALYTIC: shares of 510 g of powder; starch of 11.2 % moisture as bought at 50 % RH (GAB, docs/physics/drying.md,
     * 2).
     */
    @Test
    void sharesOfTheLighthouseRecipe() {
        DryingInput mix = input(lighthouse());
        assertThat(mix.freeWater()).isCloseTo(8.0 / 510, within(1e-12));
        assertThat(mix.oil()).isCloseTo(10.0 / 510, within(1e-12));
        assertThat(mix.stays()).isCloseTo(10.0 / 510, within(1e-12));
        assertThat(mix.capacity()).isCloseTo(0.15 * 3 / 0.192123 / 0.51, within(1e-3));
        assertThat(mix.sorbents().waterAsBought(0.5)).isCloseTo(60.0 / 510 * 0.126276 / 1.126276, within(1e-6));
        assertThat(mix.alcohol().share()).isZero();
        assertThat(mix.dampRatio()).isCloseTo(528.0 / 510, within(1e-12));
    }

    /** ANALYTIC: 70 % isopropanol brings three tenths of its mass as water; half the liquid halves everything wet. */
    @Test
    void alcoholIsSplit() {
        Blend blend = Blend.of(lighthouse().wet("isopropanol 70 %", "10 g").build());
        DryingInput all = BlendDrying.of(blend, 1100, 0.42, 0.36, blend.liquid().ratio());
        DryingInput half =
                BlendDrying.of(blend, 1100, 0.42, 0.39, blend.liquid().ratio() / 2);
        assertThat(all.alcohol().kind()).isEqualTo(Alcohol.Kind.ISOPROPANOL);
        assertThat(all.freeWater() + all.alcohol().share()).isCloseTo(18.0 / 510, within(1e-12));
        assertThat(half.alcohol().share()).isCloseTo(all.alcohol().share() / 2, within(1e-12));
        assertThat(half.oil()).isCloseTo(all.oil() / 2, within(1e-12));
    }

    /** ANALYTIC: glycerin comes dry and takes up water until it holds its ideal share at the room's humidity. */
    @Test
    void glycerinSorbs() {
        DryingInput mix = input(lighthouse().wet("glycerin", "10 g"));
        var course = Drying.run(mix, List.of(Mixes.open(0.5, 300)), DryingParameters.standard(), Resolution.FINE);
        double share = 10.0 / 510;
        double before = mix.sorbents().waterAsBought(0.5) + mix.freeWater();
        double held = share * 18.015 / 92.09;
        double table = WaterActivity.LEAST_SLOPE * 0.5 / mix.rhoDry();
        assertThat(course.at(0).waterOfDry() - before)
                .isCloseTo(course.promptExtent() * 0.018015 * 2 / 3, within(table));
        assertThat(course.last().waterOfDry())
                .isCloseTo(mix.sorbents().waterAsBought(0.5) + held, within(table + 1e-5));
    }

    /** What holds water from the air counts per kg of powder: a powder without the water it was bought with. */
    @Test
    void sorbentsOfARecipe() {
        IngredientTable table = IngredientTable.standard();
        Recipe recipe = new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("corn starch", "100 g")
                .wet("glycerin", "8 g")
                .build();
        List<Sorbent> sorbents = SorptionMixture.of(recipe, 1.5).sorbents();
        Gab starch = Gab.of(table.require("corn starch").ingredient()).orElseThrow();
        assertThat(sorbents.get(0).share()).isCloseTo(0.25 / (1 + starch.waterAt(0.5)), within(1e-12));
        assertThat(sorbents).extracting(Sorbent::powder).containsExactly(true, false);
        // half as much liquid again as the recipe has
        assertThat(sorbents.get(1).share()).isCloseTo(1.5 * 8.0 / 400, within(1e-12));
    }
}
