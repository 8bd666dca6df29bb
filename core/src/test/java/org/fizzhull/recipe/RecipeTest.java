package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.drying.mix.Gab;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;

class RecipeTest {
    private final IngredientTable table = IngredientTable.standard();

    private RecipeBuilder builder() {
        return new RecipeBuilder(table, Measures.US_LEGAL);
    }

    /** The recipe of cli/docs/contract.md, "Recipe file", starch by weight. */
    private RecipeBuilder lighthouse() {
        return builder()
                .name("Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .wet("lemon fragrance", "3 g");
    }

    private static void refused(String code, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo(code));
    }

    /** Analytic: 150/192.123 x 3 acid groups against 300/84.0058 in 510 g; 0.78075 mol for the pair 100 + 50 g. */
    @Test
    void molesOfTheLighthouseRecipe() {
        Blend blend = Blend.of(lighthouse().build());
        assertThat(blend.moles().bicarbonate()).isCloseTo(0.3 / 0.0840058 / 0.51, within(1e-9));
        assertThat(blend.moles().gas()).isCloseTo(0.15 * 3 / 0.192123 / 0.51, within(1e-9));
        Blend pair = Blend.of(
                builder().dry("baking soda", "100 g").dry("citric acid", "50 g").build());
        assertThat(pair.moles().gas() * pair.dryMass()).isCloseTo(0.78075, within(5e-6));
        assertThat(pair.moles().gas() * pair.dryMass() * Blend.Moles.CO2 * 1e3).isCloseTo(34.360, within(5e-4));
    }

    /** Carbonate first eats an acid group: 1 mol carbonate with 2 mol groups gives 1 mol gas (analytic). */
    @Test
    void carbonateTakesAcidFirst() {
        assertThat(new Blend.Moles(2, 0, 1).gas()).isEqualTo(1);
        assertThat(new Blend.Moles(1, 3, 2).gas()).isZero();
        assertThat(new Blend.Moles(3, 1, 1).gas()).isEqualTo(2);
    }

    /** A name of a powder and of a liquid is the one that may stand where it stands, and that is told. */
    @Test
    void theSectionTellsWhichOfTwoIsMeant() {
        Recipe oil = builder()
                .dry("baking soda", "300 g")
                .wet("lavender", "2 g")
                .limit("lavender", "1 %")
                .build();
        assertThat(oil.wet().get(0).ingredient().role()).isEqualTo(Role.FRAGRANCE);
        assertThat(oil.wet().get(0).ingredient().name()).isEqualTo("lavender");
        assertThat(oil.limits()).containsKey("lavender");
        assertThat(oil.notices()).anyMatch(notice -> notice.text().contains("essential oil, the only liquid"));
        Recipe buds =
                builder().dry("baking soda", "300 g").dry("lavender", "2 g").build();
        assertThat(buds.dry().get(1).ingredient().role()).isEqualTo(Role.BOTANICAL);
    }

    /** By hand: 10 g of oil, 4 g of water and 3 g of fragrance on 510 g of powder. */
    @Test
    void liquidsAreSplit() {
        Liquid liquid = Blend.of(lighthouse().build()).liquid();
        assertThat(liquid.ratio()).isCloseTo(17.0 / 510, within(1e-12));
        assertThat(liquid.water()).isCloseTo(4.0 / 510, within(1e-12));
        assertThat(liquid.staying()).isCloseTo(13.0 / 510, within(1e-12));
        Liquid spirit = Blend.of(builder()
                        .dry("baking soda", "100 g")
                        .wet("isopropyl alcohol 91%", "10 g")
                        .build())
                .liquid();
        assertThat(spirit.water() + spirit.volatiles()).isCloseTo(0.1, within(1e-12));
        assertThat(spirit.alcohol()).isEqualTo(Substance.ISOPROPANOL);
    }

    /** Half a cup of 240 mL by the loose density; a US customary cup is smaller by 236.588/240. */
    @Test
    void cupsGoThroughTheLooseDensity() {
        Recipe.Part half = builder().dry("corn starch", "1/2 cup").build().dry().get(0);
        double loose = table.require("corn starch").ingredient().value(Property.LOOSE_DENSITY);
        assertThat(half.mass()).isCloseTo(120e-6 * loose, within(1e-12));
        assertThat(half.sigma() / half.mass()).isCloseTo(0.2, within(1e-9));
        Recipe.Part other = new RecipeBuilder(table, Measures.US_CUSTOMARY)
                .dry("corn starch", "1/2 cup")
                .build()
                .dry()
                .get(0);
        assertThat(other.mass() / half.mass()).isCloseTo(236.588 / 240, within(1e-9));
        Recipe.Part drops = builder()
                .dry("baking soda", "100 g")
                .wet("lemon fragrance", "12 drops")
                .build()
                .wet()
                .get(0);
        assertThat(drops.mass()).isCloseTo(12 * 0.05e-6 * 980, within(1e-12));
    }

    /** By hand: middle and standard deviation of an even spread; two and one parts of 600 g. */
    @Test
    void rangesAndParts() {
        Recipe.Part water = lighthouse()
                .wet("glycerin", "4 to 8 g")
                .build()
                .part("glycerin")
                .orElseThrow();
        assertThat(water.mass()).isCloseTo(0.006, within(1e-12));
        assertThat(water.sigma()).isCloseTo(0.004 / Math.sqrt(12), within(1e-12));
        Recipe parts = builder()
                .total("600 g")
                .dry("baking soda", "2 parts")
                .dry("citric acid", "1 part")
                .wet("water", "1 g")
                .build();
        assertThat(parts.dry().get(0).mass()).isCloseTo(0.4, within(1e-12));
        assertThat(parts.mass()).isCloseTo(0.601, within(1e-12));
        refused("missing", () -> builder().dry("baking soda", "2 parts").build());
        refused("conflict", () -> lighthouse().total("500 g").build());
        assertThat(lighthouse().total("530 g").build()).isEqualTo(lighthouse().build());
        Recipe ranged = lighthouse().wet("glycerin", "4 to 8 g").build();
        Recipe shifted = ranged.shifted(new double[] {5, 5, 5, 5, 5, 5, -1});
        assertThat(shifted.dryMass()).isEqualTo(ranged.dryMass());
        assertThat(shifted.part("glycerin").orElseThrow().mass())
                .isCloseTo(0.006 - 0.004 / Math.sqrt(12), within(1e-12));
    }

    @Test
    void refusals() {
        refused("repeated", () -> builder().dry("baking soda", "1 g").dry("bicarb", "2 g"));
        refused(
                "misplaced",
                () -> builder().dry("baking soda", "1 g").dry("water", "2 g").build());
        refused(
                "misplaced",
                () -> builder()
                        .dry("baking soda", "1 g")
                        .wet("citric acid", "2 g")
                        .build());
        refused("empty", () -> builder().dry("baking soda", "0 g").build());
        refused("forbidden-ingredient", () -> builder().dry("borax", "5 g"));
        refused("ambiguous-ingredient", () -> builder().dry("corn flour", "5 g"));
        refused("not-in-recipe", () -> lighthouse().price("kaolin", "3 / kg"));
        assertThatThrownBy(() -> builder().dry("baking soda", "300")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> builder().dry("baking soda", "-3 g")).isInstanceOf(Refusal.class);
        assertThat(lighthouse().build().notices()).extracting("code").containsExactly("assumed-ingredient");
    }

    /** By definition of the limits: 10 t and 10 m3, and half the powder's weight in liquid, six standard deviations included. */
    @Test
    void amountsBeyondTheirLimits() {
        assertThat(RecipeBuilder.amount("x", "10000 kg", Measures.US_LEGAL).value())
                .isCloseTo(1e4, within(1e-9));
        assertThat(RecipeBuilder.amount("x", "10000 L", Measures.US_LEGAL).value())
                .isCloseTo(10, within(1e-12));
        assertThat(RecipeBuilder.amount("x", "0 g", Measures.US_LEGAL).value()).isZero();
        for (String much : new String[] {"10001 kg", "10001 L"}) {
            assertThatThrownBy(() -> RecipeBuilder.amount("x", much, Measures.US_LEGAL))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.allowed()).isEqualTo("at most 10 t or 10 m3"));
        }
        assertThat(wet("50 g", "0 g").wetMass()).isCloseTo(0.05, within(1e-12));
        refused("too-much-liquid", () -> wet("50.1 g", "0 g"));
        // by hand: ranges of 4 g have 4/sqrt(12) each, six of both together 9.80 g
        assertThat(wet("18 to 22 g", "18 to 22 g").wetMass()).isCloseTo(0.04, within(1e-12));
        assertThatThrownBy(() -> wet("19 to 23 g", "19 to 23 g"))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.read()).isEqualTo("51.8 g of liquid for 100.0 g of powder"));
        refused("conflict", () -> lighthouse().total("540 g").build());
        assertThat(lighthouse().limit("lemon fragrance", "100 %").build().limits())
                .containsEntry("lemon fragrance", 1.0);
        refused("out-of-range", () -> lighthouse().limit("lemon fragrance", "0 %"));
        RecipeBuilder full = builder();
        for (int i = 0; i < RecipeBuilder.MOST_LINES; i++) {
            full.own("sand " + i, Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3"))
                    .dry("sand " + i, "1 g");
        }
        assertThat(full.build().dry()).hasSize(RecipeBuilder.MOST_LINES);
        assertThatThrownBy(() -> full.dry("baking soda", "1 g")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> full.own("shell", Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3")))
                .isInstanceOf(Refusal.class);
    }

    private Recipe wet(String water, String oil) {
        return builder()
                .dry("baking soda", "100 g")
                .wet("water", water)
                .wet("sweet almond oil", oil)
                .build();
    }

    private static Price price(Recipe recipe, String ingredient) {
        return Objects.requireNonNull(recipe.prices().get(ingredient), ingredient);
    }

    /** By hand: price over mass, the oil with 0.914 g/mL; packs are rounded up. */
    @Test
    void pricesAndLimits() {
        Recipe recipe = lighthouse()
                .price("bicarb", "3.10 / kg")
                .price("citric acid", "4.50 / 500 g")
                .price("sweet almond oil", "2/250 mL")
                .limit("lemon fragrance", "1 %")
                .build();
        assertThat(price(recipe, "sodium bicarbonate").perKilogram()).isCloseTo(3.10, within(1e-12));
        assertThat(price(recipe, "citric acid").perKilogram()).isCloseTo(9.00, within(1e-12));
        assertThat(price(recipe, "sweet almond oil").perKilogram()).isCloseTo(2 / (0.25 * 0.914), within(1e-9));
        assertThat(recipe.limits()).containsEntry("lemon fragrance", 0.01);
        assertThat(price(recipe, "citric acid").packs(1.0)).isEqualTo(2);
        assertThat(price(recipe, "citric acid").packs(1.01)).isEqualTo(3);
        refused("missing-unit", () -> lighthouse().price("bicarb", "3.10"));
        refused("not-a-number", () -> lighthouse().price("bicarb", "3,10 / kg"));
        refused("out-of-range", () -> lighthouse().limit("lemon fragrance", "120 %"));
    }

    /** By hand: grams added, taken and set. */
    @Test
    void changes() {
        Recipe base = lighthouse().build();
        Recipe clay = change("kaolin +20 g", base);
        assertThat(clay.dryMass()).isCloseTo(0.53, within(1e-12));
        assertThat(change("clay - 5 g", clay).part("kaolin").orElseThrow().mass())
                .isCloseTo(0.015, within(1e-12));
        assertThat(change("kaolin -20 g", clay).part("kaolin")).isEmpty();
        assertThat(change("water=6 g", base).part("water").orElseThrow().mass()).isCloseTo(0.006, within(1e-12));
        assertThat(change("castor oil +5 g", base).wet()).hasSize(4);
        refused("out-of-range", () -> change("water -5 g", base));
        refused("not-in-recipe", () -> change("kaolin -5 g", base));
        refused("not-in-recipe", () -> change("kaolin = 0 g", base));
        assertThat(change("kaolin +0 g", base)).isEqualTo(base);
        refused("ambiguous-ingredient", () -> change("clay +5 g", base));
        refused("unreadable", () -> change("kaolin 5 g", base));
        assertThatThrownBy(() -> change("kaolin + lots", base)).isInstanceOf(Refusal.class);
    }

    /** By hand: the densities as given, 15, 30 and more grams on a cup as written. */
    @Test
    void ownIngredients() {
        Recipe oats = lighthouse()
                .own("oat flour", Map.of("true density", "1.42 g/cm3", "loose density", "0.48 g/cm3"))
                .own(
                        "driftwood dust",
                        Map.of("true density", "1.5 g/cm3", "loose density", "0.3 g/cm3", "grain", "caster"))
                .own(HarbourAcid.NAME, HarbourAcid.SAID)
                .dry("oat flour", "10 g")
                .dry("driftwood dust", "5 g")
                .dry(HarbourAcid.NAME, "15 g")
                .build();
        Ingredient flour = oats.part("oat flour").orElseThrow().ingredient();
        assertThat(flour.value(Property.LOOSE_DENSITY)).isCloseTo(480, within(1e-9));
        assertThat(Gab.of(flour)).isPresent();
        Ingredient dust = oats.part("driftwood dust").orElseThrow().ingredient();
        assertThat(dust.value(Property.TAPPED_DENSITY)).isCloseTo(375, within(1e-9));
        assertThat(dust.value(Property.GRAIN_SIZE)).isCloseTo(250e-6, within(1e-12));
        Ingredient acid = oats.part("harbour acid").orElseThrow().ingredient();
        assertThat(acid.molesPerKilogram(Property.ACID_GROUPS)).isCloseTo(2 / 0.15, within(1e-9));
        assertThat(acid.value(Property.GRAIN_SIZE)).isCloseTo(300e-6, within(1e-15));
        refused("missing", () -> builder().own("sand", Map.of("true density", "2.6 g/cm3")));
        refused("forbidden-ingredient", () -> builder().own("borax", Map.of("true density", "1.7 g/cm3")));
        refused("unknown-key", () -> builder().own("sand", Map.of("weight", "3 g")));
        refused("out-of-range", () -> builder().own("sand", Map.of("true density", "26 g/cm3")));
        refused(
                "out-of-range",
                () -> builder().own("sand", Map.of("true density", "2.6 g/cm3", "loose density", "2.7 g/cm3")));
        refused("missing-unit", () -> builder().own("sand", Map.of("molar mass", "60")));
    }

    private Recipe change(String text, Recipe recipe) {
        return RecipeChange.read(text, Measures.US_LEGAL).applyTo(recipe, table);
    }

    /** By hand: 118 g and 150 g in 240 mL; half a cup of it is 59 g. Any of its names leads to it, in no other does it stand. */
    @Test
    void cupsOfTheUsersOwn() {
        Recipe mix = lighthouseWithCups("1/2 cup");
        Ingredient starch = mix.part("maize starch").orElseThrow().ingredient();
        assertThat(starch.value(Property.LOOSE_DENSITY)).isCloseTo(118 / 0.240, within(1e-9));
        assertThat(starch.value(Property.TAPPED_DENSITY)).isCloseTo(150 / 0.240, within(1e-9));
        assertThat(starch.relativeSigma(Property.LOOSE_DENSITY, 0)).isCloseTo(0.03, within(1e-12));
        assertThat(starch.datum(Property.TAPPED_DENSITY).orElseThrow().source().citation())
                .isEqualTo("your recipe, line 9");
        assertThat(starch.value(Property.TRUE_DENSITY)).isCloseTo(1480, within(1e-9));
        assertThat(mix.part("maize starch").orElseThrow().mass()).isCloseTo(0.059, within(1e-12));
        assertThat(mix.notices()).extracting("code").doesNotContain("own-unused");
        assertThat(lighthouseWithCups("").notices()).extracting("code").contains("own-unused");
        RecipeBuilder unused =
                lighthouse().own("harbour oat", Map.of("true density", "1.4 g/cm3", "loose cup", "95 g"));
        assertThat(unused.build().notices()).isEqualTo(unused.build().notices());
        refused("ambiguous-ingredient", () -> builder().own("corn flour", Map.of("loose cup", "118 g")));
    }

    private Recipe lighthouseWithCups(String line) {
        RecipeBuilder builder = builder()
                .own(
                        "maize starch",
                        Map.of("loose cup", "118 g", "tapped cup", "150 g"),
                        Map.of("loose cup", "your recipe, line 8", "tapped cup", "your recipe, line 9"))
                .dry("bicarb", "200 g")
                .dry("citric acid", "100 g");
        return line.isEmpty()
                ? builder.build()
                : builder.dry("cornstarch", line).build();
    }

    /**
     * Fines pack by their oil absorption (docs/physics/packing.md, 2): a cup of them neither moves nor sharpens the
     * packing, and says so.
     */
    @Test
    void aCupOfFinesSaysWhatItDoes() {
        Recipe clay = builder()
                .own("kaolin", Map.of("loose cup", "90 g", "tapped cup", "150 g"))
                .dry("bicarb", "200 g")
                .dry("citric acid", "100 g")
                .dry("kaolin", "20 g")
                .build();
        assertThat(clay.notices()).extracting("code").contains("cup-of-fines");
        Ingredient table = IngredientTable.standard().require("kaolin").ingredient();
        Ingredient own = clay.part("kaolin").orElseThrow().ingredient();
        assertThat(own.relativeSigma(Property.LOOSE_DENSITY, 0))
                .isCloseTo(table.relativeSigma(Property.LOOSE_DENSITY, 1), within(1e-12));
    }
}
