package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.junit.jupiter.api.Test;

/** Expected values are those of docs/physics/fizz.md, 5, which calls them assumed. */
class MixEffectsTest {
    private static final FizzParameters PLAIN = FizzParameters.standard();

    @Test
    void speedsAreThoseAssumed() {
        assertThat(speed(new Additives(0.05, 0, 0))).isCloseTo(0.6, within(1e-12));
        assertThat(speed(new Additives(0.01, 0, 0))).as("0.9 at 1 %, one digit").isCloseTo(0.9, within(0.01));
        assertThat(speed(new Additives(0, 0.05, 0))).isCloseTo(0.75, within(1e-12));
        assertThat(speed(new Additives(0, 0, 0.10))).isCloseTo(0.95, within(1e-12));
        assertThat(speed(new Additives(0.05, 0.05, 0.10))).isCloseTo(0.6 * 0.75 * 0.95, within(1e-12));
        assertThat(PLAIN.in(Additives.NONE)).isSameAs(PLAIN);
    }

    @Test
    void bubblesAreThoseAssumed() {
        assertThat(bubble(new Additives(0.02, 0, 0))).isCloseTo(0.8e-3, within(1e-12));
        assertThat(bubble(new Additives(0.03, 0, 0))).isCloseTo(1.2e-3, within(1e-12));
        assertThat(bubble(new Additives(0.20, 0, 0))).isCloseTo(1.2e-3, within(1e-12));
        assertThat(bubble(new Additives(0, 0.05, 0))).isCloseTo(0.5e-3, within(1e-12));
        assertThat(PLAIN.in(new Additives(0, 0.05, 0)).layerMultiplier()).isCloseTo(1.6 * 1.5, within(1e-12));
        // a drop of oil never makes the forecast jump
        for (double oil = 0.015; oil < 0.035; oil += 1e-4) {
            double step = bubble(new Additives(oil + 1e-4, 0, 0)) / bubble(new Additives(oil, 0, 0));
            assertThat(step).isBetween(1.0, 1.005);
        }
    }

    /** By hand: 10 g of oil and 12 g of a butter in 400 g of powder; 20 g of a foaming powder, 40 g of starch. */
    @Test
    void aBlendTellsWhatIsInIt() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "230 g")
                .dry("citric acid", "110 g")
                .dry("corn starch", "40 g")
                .dry("slsa", "20 g")
                .wet("sweet almond oil", "10 g")
                .wet("cocoa butter", "12 g")
                .wet("water", "4 g")
                .build());
        Additives mix = Additives.of(blend);
        assertThat(mix.oil()).isCloseTo(22 / 400.0, within(1e-12));
        assertThat(mix.surfactant()).isCloseTo(20 / 400.0, within(1e-12));
        assertThat(mix.starch()).isCloseTo(40 / 400.0, within(1e-12));
        assertThatThrownBy(() -> new Additives(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** COMPUTED by hand, rho xi V_m/eps for the 142 g ball: 270 when fresh, 29 at 0.5 mol/kg, 1 at about 0.02. */
    @Test
    void gasPerEnteringWaterIsThatOfTheClosedForm() {
        Bath bath = Bath.at(Units.celsius(38));
        double molar = Gas.wetMolarVolume(bath.temperature(), 101325, bath.vapourPressure());
        double density = 0.142 / (Math.PI / 6 * Math.pow(0.065, 3));
        assertThat(Gas.perEnteringWater(density, 4.6, molar, 0.46)).isCloseTo(270, within(5.0));
        assertThat(Gas.perEnteringWater(density, 0.5, molar, 0.46)).isCloseTo(29, within(0.6));
        assertThat(Gas.perEnteringWater(density, 0.02, molar, 0.46)).isCloseTo(1, within(0.25));
    }

    private static double speed(Additives mix) {
        return PLAIN.in(mix).recession38() / PLAIN.recession38();
    }

    private static double bubble(Additives mix) {
        return PLAIN.in(mix).bubbleDiameter();
    }
}
