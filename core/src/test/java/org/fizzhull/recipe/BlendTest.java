package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.fizzhull.pressing.powder.EarlyRates;
import org.fizzhull.quantity.Measures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ANALYTIC: sums over the lines of an invented mix, worked by hand from the stated values. */
class BlendTest {
    private final IngredientTable table = IngredientTable.standard();

    /** 300 g of 2.4 g/cm3 and 100 g of 1.6 g/cm3, 10 g of oil, 6 g of butter; the second drinks 0.2 g/g. */
    private RecipeBuilder invented() {
        return new RecipeBuilder(table, Measures.US_LEGAL)
                .own(
                        "stone dust",
                        Map.of(
                                "role",
                                "salt",
                                "true density",
                                "2.4 g/cm3",
                                "loose density",
                                "1 g/cm3",
                                "deliquescence",
                                "80 %",
                                "hydrate release",
                                "30 %"))
                .own(
                        "wood dust",
                        Map.of(
                                "role",
                                "food powder",
                                "true density",
                                "1.6 g/cm3",
                                "loose density",
                                "0.5 g/cm3",
                                "liquid uptake",
                                "0.2 g/g",
                                "deliquescence",
                                "90 %"))
                .dry("stone dust", "300 g")
                .dry("wood dust", "100 g")
                .dry("corn starch", "0 g")
                .wet("sunflower oil", "10 g")
                .wet("cocoa butter", "6 g");
    }

    /** ANALYTIC: citric acid binds one water a mole, 18.015 g on 192.124 g; a quarter of this powder is citric acid. */
    @Test
    void waterThatAcidBinds() {
        Blend blend = Blend.of(new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "100 g")
                .build());
        assertThat(blend.hydrateUptake()).isCloseTo(0.25 * 18.015 / 192.124, within(1e-4));
        assertThat(Blend.of(invented().build()).hydrateUptake()).isZero();
    }

    /** By definition: a blend is its recipe. */
    @Test
    void blendsOfOneRecipeAreEqual() {
        Blend blend = Blend.of(invented().build());
        assertThat(blend)
                .isEqualTo(Blend.of(invented().build()))
                .hasSameHashCodeAs(Blend.of(invented().build()));
        assertThat(blend).isNotEqualTo(Blend.of(invented().wet("water", "1 g").build()));
    }

    @Test
    void sharesAndDensities() {
        Blend blend = Blend.of(invented().build());
        assertThat(blend.powders())
                .extracting(Ingredient::name)
                .containsExactly("stone dust", "wood dust"); // what weighs nothing is left out
        assertThat(blend.massFractions()).containsExactly(new double[] {0.75, 0.25}, within(1e-12));
        assertThat(blend.dryMass()).isCloseTo(0.4, within(1e-12));
        // 125 cm3 and 62.5 cm3: 400 g in 187.5 cm3
        assertThat(blend.trueDensity()).isCloseTo(400 / 187.5 * 1e3, within(1e-6));
        assertThat(blend.volumeShares()).containsExactly(new double[] {2.0 / 3, 1.0 / 3}, within(1e-12));
        assertThat(blend.recipe().dryMass()).isEqualTo(blend.dryMass());
        assertThat(blend.moles().gas()).isZero();
    }

    /** Own densities are good to 5 %: shared errors add up, separate ones add in squares. */
    @Test
    void spreadOfTheDensity() {
        Blend blend = Blend.of(invented().build());
        assertThat(blend.trueDensitySigma(1)).isCloseTo(0.05, within(1e-12));
        double apart = 0.05 * Math.sqrt(4.0 / 9 + 1.0 / 9);
        assertThat(blend.trueDensitySigma(0)).isCloseTo(apart, within(1e-12));
        assertThat(blend.trueDensitySigma(0.5))
                .isCloseTo(Math.sqrt(0.5 * 0.05 * 0.05 + 0.5 * apart * apart), within(1e-12));
    }

    @Test
    void waterOfSaltsAndGrains() {
        Blend blend = Blend.of(invented().build());
        assertThat(blend.saltActivity()).isCloseTo(0.8 * 0.9, within(1e-12));
        assertThat(blend.hydrateWater()).isCloseTo(0.75 * 0.3, within(1e-12));
        assertThat(blend.uptake()).isCloseTo(0.25 * 0.2, within(1e-12));
        // 1 g of wood in 401 g is below half a per cent and counts no more
        Blend little = Blend.of(RecipeChange.read("wood dust = 1 g", Measures.US_LEGAL)
                .applyTo(invented().build(), invented().table()));
        assertThat(little.saltActivity()).isCloseTo(0.8, within(1e-12));
    }

    /**
     * A second soluble acid lowers the air over the films to 0.82 to 0.86 of one acid's, three to 0.75 (UNIFAC,
     * validation/reference/deliquescence.py). The hydrate of citric acid is no second acid, and fumaric acid hardly dissolves.
     */
    @Test
    void mixedAcids() {
        assertThat(acids("citric acid")).isEqualTo(1);
        assertThat(acids("malic acid")).isEqualTo(1);
        assertThat(acids("citric acid", "citric acid monohydrate")).isEqualTo(1);
        assertThat(acids("citric acid", "fumaric acid")).isEqualTo(1);
        assertThat(acids("citric acid", "malic acid")).isBetween(0.82, 0.86);
        assertThat(acids("tartaric acid", "malic acid")).isBetween(0.82, 0.86);
        assertThat(acids("citric acid", "tartaric acid", "malic acid")).isCloseTo(0.75, within(0.04));
    }

    private static double acids(String... names) {
        RecipeBuilder mix =
                new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL).dry("sodium bicarbonate", "200 g");
        for (String name : names) {
            mix.dry(name, "40 g");
        }
        return Blend.of(mix.build()).saltActivity();
    }

    @Test
    void sharesByRole() {
        Blend blend = Blend.of(invented().build());
        assertThat(blend.share(Role.SALT)).isCloseTo(0.75, within(1e-12));
        assertThat(blend.share(Role.OIL)).isCloseTo(10.0 / 400, within(1e-12));
        assertThat(blend.share(Role.WATER)).isZero();
        assertThat(blend.oil()).isCloseTo(16.0 / 400, within(1e-12));
    }

    /** Oil coats in proportion up to 2 %; factors 0.7 and 0.6 multiply; each CO2 makes one water less a third of h. */
    @ParameterizedTest
    @CsvSource({"0,false,1", "0.01,false,0.85", "0.02,false,0.7", "0.5,false,0.7", "0,true,0.6", "0.02,true,0.42"})
    void slowing(double oil, boolean last, double factor) {
        assertThat(EarlyRates.slowing(oil, last, 0.7, 0.6)).isCloseTo(factor, within(1e-12));
        assertThat(EarlyRates.waterPerMole(0)).isCloseTo(0.018015, within(1e-6));
        assertThat(EarlyRates.waterPerMole(1.5)).isCloseTo(0.018015 / 2, within(1e-6));
    }

    /** A foaming liquid counts without its water: 10 g at 60 % of water are 4 g in 400 g. */
    @Test
    void additives() {
        Blend blend = Blend.of(invented()
                .own(
                        "foam liquid",
                        Map.of("role", "liquid surfactant", "liquid density", "1 g/cm3", "water share", "60 %"))
                .wet("foam liquid", "10 g")
                .build());
        Additives found = Additives.of(blend);
        assertThat(found.oil()).isCloseTo(16.0 / 400, within(1e-12));
        assertThat(found.surfactant()).isCloseTo(4.0 / 400, within(1e-12));
        assertThat(found.starch()).isZero();
        assertThat(found.none()).isFalse();
        assertThat(Additives.of(Optional.of(blend))).isEqualTo(found);
        assertThat(Additives.of(Optional.empty())).isEqualTo(Additives.NONE);
        assertThat(Additives.NONE.none()).isTrue();
        assertThat(new Additives(0, 0, 0.1).none()).isFalse();
        assertThat(new Additives(0, 0.1, 0).none()).isFalse();
    }

    /** 120 g and 150 g in 240 mL are 500 and 625 kg/m3. */
    @Test
    void aWeighedCup() {
        Map<String, String> cups = Map.of("loose cup", "120 g", "tapped cup", "150 g", "cup", "240 mL");
        Ingredient starch = OwnIngredient.read("corn starch", cups, table, Measures.METRIC, Map.of());
        assertThat(starch.value(Property.LOOSE_DENSITY)).isCloseTo(500, within(1e-9));
        assertThat(starch.value(Property.TAPPED_DENSITY)).isCloseTo(625, within(1e-9));
        assertThat(starch.relativeSigma(Property.LOOSE_DENSITY, 0)).isCloseTo(0.03, within(1e-12));
        assertThat(starch.relativeSigma(Property.TAPPED_DENSITY, 0)).isCloseTo(0.03, within(1e-12));
        Map<String, String> lighter = Map.of("loose cup", "150 g", "tapped cup", "120 g", "cup", "240 mL");
        assertThat(catchThrowable(() -> OwnIngredient.read("corn starch", lighter, table, Measures.METRIC, Map.of())))
                .hasMessageContaining("120 g tapped, 150 g loose");
    }

    /** A search finds names, other names and roles, and nothing else. */
    @Test
    void search() {
        assertThat(table.search("clay")).extracting(Ingredient::name).contains("kaolin", "illite clay");
        assertThat(table.search("china")).extracting(Ingredient::name).containsExactly("kaolin");
        assertThat(table.search("humectant")).extracting(Ingredient::role).containsOnly(Role.HUMECTANT);
        assertThat(table.search("no such thing")).isEmpty();
        assertThat(table.forbidden())
                .extracting(Lookup.Forbidden::name)
                .contains("borax")
                .doesNotHaveDuplicates();
    }
}
