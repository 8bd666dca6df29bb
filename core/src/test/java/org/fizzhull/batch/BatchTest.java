package org.fizzhull.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchTest {
    private final IngredientTable table = IngredientTable.standard();

    /** By hand, US legal: cup 240, tablespoon 15, teaspoon 5 mL. */
    @ParameterizedTest
    @CsvSource({
        "240,1 cup",
        "540,2 1/4 cups",
        "80,1/3 cup",
        "15,1 tbsp",
        "47.5,3 tbsp + 1/2 tsp",
        "5,1 tsp",
        "7.5,1 1/2 tsp",
        "1.25,1/4 tsp",
        "0.35,7 drops",
        "0.02,1 drop",
        "90,1/4 cup + 2 tbsp",
        "2400,10 cups"
    })
    void spoons(double millilitres, String words) {
        assertThat(new Spoons(Measures.US_LEGAL).text(millilitres * 1e-6)).isEqualTo(words);
    }

    /**
     * Read back by the reader of quantities, the words are within 3 % unless they say "about", which they need not above
     * 21 mL: half a quarter teaspoon there is 3 %.
     */
    @Test
    void spoonsAreTrue() {
        Spoons spoons = new Spoons(Measures.METRIC);
        for (double v = 0.7e-6; v < 3e-3; v *= 1.013) {
            String words = spoons.text(v);
            assertThat(words).doesNotContain("0.");
            if (words.startsWith("about ")) {
                assertThat(v).as(words).isLessThan(21e-6);
                continue;
            }
            double sum = 0;
            for (String part : words.split(" \\+ ", -1)) {
                sum += org.fizzhull.quantity.QuantityText.parseExact(
                        "spoons", part, org.fizzhull.quantity.Dimension.VOLUME, Measures.METRIC);
            }
            assertThat(sum).as(words).isCloseTo(v, within(0.03001 * v));
        }
    }

    /** 48 pieces and 2 spares of 146 g: by hand 50 x 146 g x 1.02 = 7.45 kg, four mixes of 13 pieces, 1.94 kg each. */
    @Test
    void fortyEightPieces() {
        Batch batch = Batch.plan(ExampleRecipes.lemon(table), 0.146, 48, 3600, 2.0, 0, Measures.US_LEGAL);
        assertThat(batch.mixes()).isEqualTo(4);
        assertThat(batch.piecesPerMix()).isEqualTo(13);
        assertThat(batch.sparePieces()).isEqualTo(4);
        assertThat(batch.mixMass()).isCloseTo(13 * 0.146 * 1.02, within(1e-12));
        double sum = batch.lines().stream().mapToDouble(Batch.Line::mass).sum();
        assertThat(sum).isCloseTo(batch.mixMass(), within(1e-12));
        assertThat(batch.lines().get(0).mass() / batch.lines().get(1).mass()).isCloseTo(2, within(1e-12));
        assertThat(batch.costEach()).isEmpty();
        // by hand: 52 places of 85 mm in 4 rows of 13 or 6 of 9; 9 x 6 is 1.5 long to wide, with two places empty
        Rack rack = Rack.of(batch.allPieces(), 0.065, 0.065);
        assertThat(rack.columns() * rack.rows()).isBetween(52, 56);
        assertThat(rack.length()).isCloseTo(rack.columns() * 0.085, within(1e-12));
        assertThat(rack.area()).isCloseTo(rack.columns() * rack.rows() * 0.085 * 0.085, within(1e-12));
        assertThat(rack.length() / rack.width()).isBetween(1.0, 2.6);
    }

    /** By hand: of 50 pieces with a fifth crumbling 40 are left; 4 % of 100 and one at least where hardly any does. */
    @Test
    void sparesForWhatCrumbles() {
        assertThat(Batch.spares(40, 0.2)).isEqualTo(10);
        assertThat(Batch.spares(100, 0)).isEqualTo(4);
        assertThat(Batch.spares(100, 0.01)).isEqualTo(4);
        assertThat(Batch.spares(3, 0)).isEqualTo(1);
        assertThat(Batch.spares(10, 0.9)).isEqualTo(10);
    }

    /** Every piece has a place, however the numbers fall, and no row is empty. */
    @Test
    void aRackHoldsAll() {
        for (int pieces = 1; pieces < 300; pieces++) {
            Rack rack = Rack.of(pieces, 0.09, 0.05);
            assertThat(rack.columns() * rack.rows()).isGreaterThanOrEqualTo(pieces);
            assertThat(rack.columns() * (rack.rows() - 1)).isLessThan(pieces);
        }
    }

    /** Five minutes at half a minute a piece are ten pieces a mix. */
    @Test
    void workingTimeMakesMixesSmaller() {
        Recipe recipe = ExampleRecipes.lemon(table);
        assertThat(Batch.plan(recipe, 0.146, 48, 300, 2.0, 0, Measures.US_LEGAL).piecesPerMix())
                .isEqualTo(10);
        Batch hasty = Batch.plan(recipe, 0.146, 48, 0, 2.0, 0, Measures.US_LEGAL);
        assertThat(hasty.notices()).extracting("code").containsExactly("press-at-once");
        // 29.9 s is less than one piece takes, 30 s is one
        Batch single = Batch.plan(recipe, 0.146, 48, 29.9, 2.0, 0, Measures.US_LEGAL);
        assertThat(single.piecesPerMix()).isEqualTo(1);
        assertThat(single.notices()).extracting("code").containsExactly("press-at-once");
        assertThat(Batch.plan(recipe, 0.146, 48, 30, 2.0, 0, Measures.US_LEGAL).notices())
                .isEmpty();
        Batch endless = Batch.plan(recipe, 0.146, 48, Double.POSITIVE_INFINITY, 2.0, 0, Measures.US_LEGAL);
        assertThat(endless.piecesPerMix()).isEqualTo(13);
        assertThatThrownBy(() -> Batch.plan(recipe, 0.146, 48, 300, 3.0, 0, Measures.US_LEGAL))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Batch.plan(recipe, Double.NaN, 48, 300, 2.0, 0, Measures.US_LEGAL))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Batch.plan(recipe, 0.146, 0, 300, 2.0, 0, Measures.US_LEGAL))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void costs() {
        Recipe recipe = new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid", "100 g")
                .price("sodium bicarbonate", "3 / kg")
                .build();
        Batch batch = Batch.plan(recipe, 0.1, 10, 3600, 2.0, 0, Measures.US_LEGAL);
        // 11 pieces of 102 g, two thirds of it bicarbonate at 3 a kilogram, over the 10 asked for
        assertThat(batch.costEach().orElseThrow()).isCloseTo(11 * 0.102 * 2 / 3 * 3 / 10, within(1e-12));
        assertThat(batch.lines().get(0).packs()).isEqualTo(1);
        assertThat(batch.notices()).extracting("code").containsExactly("no-price");
    }

    @Test
    void orderOfMixing() {
        var steps = MixingOrder.of(ExampleRecipes.harbourClay(table));
        assertThat(steps.get(0).ingredients()).containsExactly("cocoa butter");
        assertThat(steps.get(2).ingredients()).containsExactly("sodium bicarbonate", "kaolin", "table salt");
        assertThat(steps.get(2).mayStop()).isTrue();
        assertThat(steps.get(3).ingredients()).containsExactly("citric acid");
        assertThat(steps.get(3).caution()).contains("mask");
        assertThat(steps.get(5).ingredients()).containsExactly("witch hazel");
        assertThat(steps.get(steps.size() - 1).caution()).contains("lid");
        long named = steps.stream().mapToLong(s -> s.ingredients().size()).sum();
        assertThat(named).isEqualTo(7);
        Recipe acidLast = new RecipeBuilder(table, Measures.US_LEGAL)
                .acidLast(true)
                .dry("bicarb", "2 g")
                .dry("citric acid", "1 g")
                .wet("water", "1 g")
                .build();
        assertThat(MixingOrder.of(acidLast))
                .extracting(
                        s -> s.ingredients().isEmpty() ? "" : s.ingredients().get(0))
                .containsExactly("sodium bicarbonate", "water", "citric acid", "");
    }
}
