package org.fizzhull.drying.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.lang.reflect.InvocationTargetException;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Additives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a mix and the parameters of drying may be: by what the figures mean, and by the ranges that the refusals state. */
class MixLimitsTest {
    private static DryingInput mix(
            double rhoDry,
            double porosity,
            double air,
            double water,
            double stays,
            double oil,
            double capacity,
            double salts) {
        return new DryingInput(
                rhoDry,
                porosity,
                air,
                water,
                Alcohol.NONE,
                stays,
                oil,
                SorptionMixture.none(),
                capacity,
                false,
                salts,
                Hydrates.NONE,
                Additives.NONE);
    }

    /** By meaning: no mix is heavier than its powders, holds more air than pores, more oil than liquid, or less than none. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            dry mix in a volume of piece           | 5000 | 0.4 | 0.3 | 0.01  | 0.02  | 0.01  | 4   | 1
            porosity                               | 1100 | 1.2 | 0.3 | 0.01  | 0.02  | 0.01  | 4   | 1
            air-filled porosity                    | 1100 | 0.4 | 0.5 | 0.01  | 0.02  | 0.01  | 4   | 1
            free water per dry mix                 | 1100 | 0.4 | 0.3 | -0.01 | 0.02  | 0.01  | 4   | 1
            liquid that stays per dry mix          | 1100 | 0.4 | 0.3 | 0.01  | -0.02 | -0.02 | 4   | 1
            oil per dry mix                        | 1100 | 0.4 | 0.3 | 0.01  | 0.02  | 0.03  | 4   | 1
            carbon dioxide to be had               | 1100 | 0.4 | 0.3 | 0.01  | 0.02  | 0.01  | -1  | 1
            water activity over the soluble salts  | 1100 | 0.4 | 0.3 | 0.01  | 0.02  | 0.01  | 4   | 1.5
            dry mix in a volume of piece           | NaN  | 0.4 | 0.3 | 0.01  | 0.02  | 0.01  | 4   | 1
            water activity over the soluble salts  | 1100 | 0.4 | 0.3 | 0.01  | 0.02  | 0.01  | 4   | NaN
            """)
    void aMixThatCannotBeIsRefusedByItsField(
            String field,
            double rhoDry,
            double porosity,
            double air,
            double water,
            double stays,
            double oil,
            double capacity,
            double salts) {
        assertThatThrownBy(() -> mix(rhoDry, porosity, air, water, stays, oil, capacity, salts))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo(field));
    }

    /** By the form of a refusal: what was read stands there with its unit and without noise, also where it is no number. */
    @Test
    void theRefusalSaysWhatWasRead() {
        assertThatThrownBy(() -> mix(5000, 0.4, 0.3, 0, 0, 0, 4, 1)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.read()).isEqualTo("5000 kg/m3");
            assertThat(refusal.allowed()).isEqualTo("100 to 4000 kg/m3");
        });
        assertThatThrownBy(() -> mix(Double.NaN, 0.4, 0.3, 0, 0, 0, 4, 1))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.read()).isEqualTo("NaN kg/m3"));
    }

    /** The ends of the ranges that the refusals state are allowed. */
    @Test
    void theEndsOfTheRangesAreAllowed() {
        assertThat(mix(100, 1e-3, 1e-3, 0, 0, 0, 0, 0.1).rhoDry()).isEqualTo(100);
        assertThat(mix(4000, 0.95, 0.95, 0.5, 1, 1, 12, 1).capacity()).isEqualTo(12);
        assertThat(new Alcohol(Alcohol.Kind.ETHANOL, 0).share()).isZero();
        assertThat(new Alcohol(Alcohol.Kind.ETHANOL, 0.5).share()).isEqualTo(0.5);
        assertThat(new Hydrates(0.6, 0).gives()).isEqualTo(0.6);
        assertThat(new Hydrates(0, 0.6).takes()).isEqualTo(0.6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, 0.51, Double.NaN})
    void anAlcoholBeyondItsRangeIsRefused(double share) {
        assertThatThrownBy(() -> new Alcohol(Alcohol.Kind.ETHANOL, share)).isInstanceOf(Refusal.class);
    }

    /** By meaning: the whole mass of a crystal is not water, and none holds less than none. */
    @ParameterizedTest
    @CsvSource({"-0.1, 0", "0, -0.1", "0.7, 0", "0, 0.7", "NaN, 0", "0, NaN"})
    void moreWaterThanACrystalHoldsIsRefused(double gives, double takes) {
        assertThatThrownBy(() -> new Hydrates(gives, takes)).isInstanceOf(Refusal.class);
    }

    /** By the form of the equation: without a monolayer nothing is held; C and K are above 0, and K at most 1. */
    @Test
    void constantsOfAnIsotherm() {
        assertThat(new Gab(0, 10, 0.8).waterAt(0.5)).isZero();
        // C = K = 1 is an ideal solution, Xm a/(1 - a)
        assertThat(new Gab(0.2, 1, 1).waterAt(0.5)).isCloseTo(0.2, within(1e-15));
        for (double[] wrong : new double[][] {{-0.1, 1, 1}, {0.1, 0, 1}, {0.1, 1, 0}, {0.1, 1, 1.01}}) {
            assertThatThrownBy(() -> new Gab(wrong[0], wrong[1], wrong[2]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** By meaning: rates, shares, factors, activities and energies are not below 0, and NaN is no number. */
    @ParameterizedTest
    @CsvSource({
        "diffusivityFactor, diffusivity factor",
        "transfer, transfer",
        "fanFactor, fan factor",
        "filmActivity, film activity",
        "promptYield, prompt yield",
        "filmRate, film rate",
        "activationEnergy, activation energy",
        "oilFactor, oil factor",
        "acidLastFactor, acid-last factor",
        "reactionOrder, reaction order",
        "hydrateWaters, hydrate waters",
        "startActivity, start activity",
        "retainedGas, retained gas",
        "sealLeak, seal leak",
        "hydrateShare, hydrate share",
        "acidHydration, acid hydration"
    })
    void aParameterBelowZeroIsRefusedByItsName(String setter, String name) throws ReflectiveOperationException {
        for (double wrong : new double[] {-1, Double.NaN}) {
            DryingParametersBuilder builder = DryingParameters.standard().but();
            builder.getClass().getMethod(setter, double.class).invoke(builder, wrong);
            assertThatThrownBy(builder::build)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith(name + " " + wrong);
        }
    }

    /** By meaning: the builder changes the one that it is told and keeps the others. */
    @Test
    void theBuilderChangesOneParameterAlone() throws ReflectiveOperationException {
        DryingParameters standard = DryingParameters.standard();
        for (var changed : DryingParameters.class.getRecordComponents()) {
            double half = 0.9 * (double) changed.getAccessor().invoke(standard);
            // a fan of 1.8, an order of 0.9 and so on, all within their ranges
            DryingParameters other = changedTo(changed.getName(), half);
            for (var component : DryingParameters.class.getRecordComponents()) {
                Object expected = component.getName().equals(changed.getName())
                        ? (Object) half
                        : component.getAccessor().invoke(standard);
                assertThat(component.getAccessor().invoke(other))
                        .as(component.getName())
                        .isEqualTo(expected);
            }
        }
    }

    private static DryingParameters changedTo(String setter, double value)
            throws NoSuchMethodException, IllegalAccessException, InvocationTargetException {
        DryingParametersBuilder builder = DryingParameters.standard().but();
        builder.getClass().getMethod(setter, double.class).invoke(builder, value);
        return builder.build();
    }

    /** By hand, with the exponent 1.81 of docs/physics/drying.md: (310/298.15)^1.81 = exp(1.81 x 0.0389745) = 1.07309. */
    @Test
    void alcoholSpreadsFasterInWarmAir() {
        Alcohol some = new Alcohol(Alcohol.Kind.ETHANOL, 0.02);
        assertThat(some.diffusivity(298.15)).isCloseTo(1.2e-5, within(1e-18));
        assertThat(some.diffusivity(310) / 1.2e-5).isCloseTo(1.07309, withinPercentage(0.002));
    }

    /** By hand: a share is a part, so that the whole is allowed and more is not; K of 1 is the ideal solution. */
    @Test
    void sharesOfWhatHoldsWater() {
        assertThat(SorptionMixture.of(1, 0.1, 1, 1).water(0.5)).isCloseTo(0.1, within(1e-15));
        assertThatThrownBy(() -> SorptionMixture.of(1.01, 0.1, 1, 1))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.read()).isEqualTo("1.01 kg/kg"));
        // a powder added behind a liquid is a powder still: 0.25 x 0.2 of the first, 0.5 x 0.1 of the second at a = 1/2
        SorptionMixture both = SorptionMixture.none().andLiquid(0.5, 0.1, 1, 1).and(0.25, 0.2, 1, 1);
        assertThat(both.water(0.5)).isCloseTo(0.1, within(1e-15));
        assertThat(both.waterAsBought(0.5)).isCloseTo(0.05, within(1e-15));
        // two liquids of 0.03 and 0.01 behind a powder of 0.05
        SorptionMixture three = both.andLiquid(0.1, 0.1, 1, 1);
        assertThat(three.water(0.5)).isCloseTo(0.11, within(1e-15));
        assertThat(three.waterAsBought(0.5)).isCloseTo(0.05, within(1e-15));
    }
}
