package org.fizzhull.recipe.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY HAND: shares of the dried piece, whose water has left: 90 g of powder, 10 g of oil, 5 g of water. */
class LimitedShareTest {
    private static Recipe recipe(String limit) {
        return new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "90 g")
                .wet("sunflower oil", "10 g")
                .wet("water", "5 g")
                .limit("sunflower oil", limit)
                .build();
    }

    /** 10 g in 100 g are 10 %: a limit of as much is kept, a smaller one is not, whatever the last digit. */
    @ParameterizedTest
    @CsvSource({"10 %,true", "10.1 %,true", "9.9 %,false", "50 %,true"})
    void shares(String limit, boolean kept) {
        LimitedShare share = LimitedShare.of(recipe(limit)).get(0);
        assertThat(share.share()).isCloseTo(0.1, within(1e-12));
        assertThat(share.part().ingredient().name()).isEqualTo("sunflower oil");
        assertThat(share.kept()).isEqualTo(kept);
    }

    /** One part in 1e9 of the limit is rounding: half of it is kept, the double of it is not. */
    @Test
    void rounding() {
        LimitedShare one = LimitedShare.of(recipe("10 %")).get(0);
        assertThat(new LimitedShare(one.part(), 0.1 * (1 + 0.5e-9), 0.1).kept()).isTrue();
        assertThat(new LimitedShare(one.part(), 0.1 * (1 + 2e-9), 0.1).kept()).isFalse();
    }

    /** The powders of each example come to about half a kilogram, as its description says. */
    @Test
    void examples() {
        IngredientTable table = IngredientTable.standard();
        for (Recipe recipe : new Recipe[] {
            ExampleRecipes.lemon(table), ExampleRecipes.harbourClay(table), ExampleRecipes.seaFoam(table)
        }) {
            assertThat(recipe.dryMass()).isBetween(0.5, 0.53);
            assertThat(LimitedShare.of(recipe)).isEmpty();
        }
    }
}
