package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.change.LimitedShare;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ANALYTIC: mass balances of liquids and moles, worked by hand beside each test from stated shares and molar masses. */
class LiquidTest {
    private final IngredientTable table = IngredientTable.standard();

    private RecipeBuilder powders() {
        return new RecipeBuilder(table, Measures.US_LEGAL)
                .own(
                        "spirit",
                        Map.of(
                                "role",
                                "alcohol",
                                "liquid density",
                                "0.8 g/cm3",
                                "water share",
                                "20 %",
                                "volatile share",
                                "70 %",
                                "surface tension",
                                "25 mN/m"))
                .own("plain oil", Map.of("role", "oil", "liquid density", "0.9 g/cm3", "surface tension", "30 mN/m"))
                .dry("sodium bicarbonate", "300 g")
                .dry("corn starch", "100 g");
    }

    /** 10 g of spirit and 20 g of oil in 400 g: water 2 g, vapour 7 g, 1 g of the spirit and 20 g of oil stay. */
    @Test
    void sharesOfTheLiquid() {
        Liquid liquid = Blend.of(
                        powders().wet("spirit", "10 g").wet("plain oil", "20 g").build())
                .liquid();
        assertThat(liquid.water()).isCloseTo(2.0 / 400, within(1e-12));
        assertThat(liquid.volatiles()).isCloseTo(7.0 / 400, within(1e-12));
        assertThat(liquid.staying()).isCloseTo(21.0 / 400, within(1e-12));
        assertThat(liquid.ratio()).isCloseTo(30.0 / 400, within(1e-12));
        assertThat(liquid.oil()).isCloseTo(21.0 / 30, within(1e-12));
        // 12.5 mL and 22.222 mL: 30 g over 34.722 mL; tensions weighed by volume
        double volume = 10 / 0.8 + 20 / 0.9;
        assertThat(liquid.density()).isCloseTo(1e3 * 30 / volume, within(1e-6));
        assertThat(liquid.surfaceTension()).isCloseTo((10 / 0.8 * 0.025 + 20 / 0.9 * 0.030) / volume, within(1e-9));
        assertThat(liquid.alcohol()).isEqualTo(Substance.ETHANOL); // nothing is said of it: assumed, with a notice
        assertThat(powders().build().notices()).extracting("code").contains("assumed-alcohol");
    }

    /** Another amount keeps every proportion; from none it is water. */
    @Test
    void anotherAmount() {
        Liquid liquid = Blend.of(
                        powders().wet("spirit", "10 g").wet("plain oil", "20 g").build())
                .liquid();
        Liquid twice = liquid.withRatio(2 * liquid.ratio());
        assertThat(twice.water()).isCloseTo(2 * liquid.water(), within(1e-15));
        assertThat(twice.volatiles()).isCloseTo(2 * liquid.volatiles(), within(1e-15));
        assertThat(twice.staying()).isCloseTo(2 * liquid.staying(), within(1e-15));
        assertThat(twice.ratio()).isCloseTo(60.0 / 400, within(1e-12));
        assertThat(twice.density()).isEqualTo(liquid.density());
        assertThat(twice.oil()).isEqualTo(liquid.oil());
        Liquid none = Blend.of(powders().build()).liquid();
        assertThat(none.ratio()).isZero();
        // PUBLISHED: water at 20 C has 998.2 kg/m3 and 72.8 mN/m (CRC Handbook, from memory)
        assertThat(none.density()).isCloseTo(998.2, within(0.05));
        assertThat(none.surfaceTension()).isCloseTo(0.0728, within(1e-4));
        assertThat(none.alcohol()).isEqualTo(Substance.UNSPECIFIED);
        Liquid water = none.withRatio(0.03);
        assertThat(water.water()).isEqualTo(0.03);
        assertThat(water.volatiles() + water.staying()).isZero();
    }

    /** By hand: 10 g of 96 % ethanol hold 9.4 g, 10 g of 70 % isopropanol 6.3 g and 20 g 12.6 g of alcohol. */
    @Test
    void theAlcoholIsTheOneOfWhichThereIsMore() {
        RecipeBuilder even = powders().wet("ethanol 96 %", "10 g").wet("isopropanol 70 %", "10 g");
        assertThat(Blend.of(even.build()).liquid().alcohol()).isEqualTo(Substance.ETHANOL);
        RecipeBuilder more = powders().wet("ethanol 96 %", "10 g").wet("isopropanol 70 %", "20 g");
        assertThat(Blend.of(more.build()).liquid().alcohol()).isEqualTo(Substance.ISOPROPANOL);
    }

    /** By hand: 4 g of fragrance in 400 g of powder and 10 g of spirit, of which 1 g stays: 4/405 dry, 4/414 damp. */
    @Test
    void aLimitIsComparedWithTheDriedPiece() {
        RecipeBuilder scented = powders().wet("spirit", "10 g").wet("lemon fragrance", "4 g");
        LimitedShare above = LimitedShare.of(
                        scented.limit("lemon fragrance", "0.98 %").build())
                .get(0);
        assertThat(above.share()).isCloseTo(4.0 / 405, within(1e-12));
        assertThat(above.kept()).isFalse();
        assertThat(LimitedShare.of(scented.limit("lemon fragrance", "0.99 %").build())
                        .get(0)
                        .kept())
                .isTrue();
    }

    /** An acid counts wherever it stands: 10 g of an own liquid acid of 90 g/mol, one group, are 0.1111 mol. */
    @Test
    void acidOnTheWetSide() {
        Blend.Moles moles = Blend.of(powders()
                        .own(
                                "sour syrup",
                                Map.of(
                                        "role",
                                        "humectant",
                                        "liquid density",
                                        "1.2 g/cm3",
                                        "molar mass",
                                        "90 g/mol",
                                        "acid groups",
                                        "1"))
                        .dry("tartaric acid", "30 g")
                        .wet("sour syrup", "9 g")
                        .build())
                .moles();
        // PUBLISHED: tartaric acid 150.087 g/mol, two groups; bicarbonate 84.007 g/mol (IUPAC 2021 atomic weights)
        double kilograms = 0.430;
        assertThat(moles.acid()).isCloseTo((0.1 + 2 * 30 / 150.087) / kilograms, within(1e-4));
        assertThat(moles.bicarbonate()).isCloseTo(300 / 84.007 / kilograms, within(1e-3));
        assertThat(moles.carbonate()).isZero();
    }

    /**
     * ANALYTIC: each carbonate takes one acid group before any gas goes off, and one carbonate gives one gas: with acid a,
     * bicarbonate b and carbonate c the gas is min(b + c, a - c), and the smaller side runs out first.
     */
    @ParameterizedTest
    @CsvSource({
        "1,1,0,1",
        "2,1,0,1",
        "1,2,0,1",
        "0,2,0,0",
        "2,0,0,0",
        "3,1,1,2",
        "4,1,1,2",
        "2,1,1,1",
        "1,1,2,0",
        "1.009,1,0,1",
        "1.011,1,0,1",
        "0.989,1,0,0.989"
    })
    void gas(double acid, double bicarbonate, double carbonate, double gas) {
        Blend.Moles moles = new Blend.Moles(acid, bicarbonate, carbonate);
        assertThat(moles.gas()).isCloseTo(gas, within(1e-12));
    }
}
