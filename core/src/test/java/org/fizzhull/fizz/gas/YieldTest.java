package org.fizzhull.fizz.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.Acid;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.MolarMass;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.medium.relation.WagnerPruss2002;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses, yields and gas volumes. */
class YieldTest {
    /** OTHER PROGRAM: an open-source table of elements (older weights); 1e-4. */
    @ParameterizedTest
    @CsvSource({
        "CITRIC, 192.12352",
        "TARTARIC, 150.08684",
        "MALIC, 134.08744",
        "POTASSIUM_BITARTRATE, 188.1772",
        "ASCORBIC, 176.12412",
        "LACTIC, 90.078",
        "FUMARIC, 116.072"
    })
    void acidsWeighWhatTheyShould(Acid acid, double grams) {
        assertThat(1e3 * acid.molarMass()).isCloseTo(grams, within(1e-4 * grams));
    }

    /** OTHER PROGRAM: the same. */
    @Test
    void othersToo() {
        assertThat(MolarMass.SODIUM_BICARBONATE).isCloseTo(84.00661e-3, within(8e-6));
        assertThat(MolarMass.SODIUM_CARBONATE).isCloseTo(105.98844e-3, within(1e-5));
        assertThat(MolarMass.CITRIC_ACID_MONOHYDRATE).isCloseTo(210.1388e-3, within(2e-5));
        assertThat(MolarMass.CARBON_DIOXIDE).isCloseTo(44.0095e-3, within(4e-6));
        assertThat(MolarMass.EPSOM_SALT).isCloseTo(246.466e-3, within(2e-5));
    }

    /** OTHER PROGRAM: validation/reference/equilibria.py. */
    @Test
    void twoPartsBicarbonateOnePartCitricAcid() {
        Yield yield = grams(100, 0, Acid.CITRIC, 50).theoreticalYield();
        assertThat(yield.limiting()).isEqualTo(Yield.Limiting.ACID);
        assertThat(yield.carbonDioxide()).isCloseTo(0.78075, within(1e-5));
        assertThat(yield.gasMass()).isCloseTo(34.360e-3, within(1e-6));
        assertThat(yield.bicarbonateLeft() * MolarMass.SODIUM_BICARBONATE).isCloseTo(34.41e-3, within(1e-5));
        assertThat(yield.waterMade() * MolarMass.WATER).isCloseTo(14.07e-3, within(1e-5));
        assertThat(yield.dryVolume(celsius(38))).isCloseTo(19.93e-3, within(1e-5));
    }

    /**
     * OTHER PROGRAM (validation/reference/equilibria.py): grams of bicarbonate and of carbonate that meet one gram of
     * each acid.
     */
    @ParameterizedTest
    @CsvSource({
        "CITRIC, 1.3117, 0.8275", "TARTARIC, 1.1194, 0.7062", "MALIC, 1.2530, 0.7904",
        "POTASSIUM_BITARTRATE, 0.4464, 0.2816", "ASCORBIC, 0.4770, 0.3009", "LACTIC, 0.9326, 0.5883",
        "FUMARIC, 1.4475, 0.9131"
    })
    void equivalentMixesLeaveNothing(Acid acid, double bicarbonate, double carbonate) {
        for (Reagents mix : new Reagents[] {grams(bicarbonate, 0, acid, 1), grams(0, carbonate, acid, 1)}) {
            Yield yield = mix.theoreticalYield();
            assertThat(yield.limiting()).isEqualTo(Yield.Limiting.BALANCED);
            assertThat(yield.bicarbonateLeft() + yield.acidGroupsLeft()).isLessThan(2e-4 * mix.acidGroups());
        }
    }

    /** By definition: acid groups against one per bicarbonate and two per carbonate, mol, level to 1 % of the larger. */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 0, BALANCED", "2, 1, 0, BICARBONATE", "1, 2, 0, ACID", "0, 2, 0, ACID", "2, 0, 0, BICARBONATE",
        "3, 1, 1, BALANCED", "4, 1, 1, BICARBONATE", "2, 1, 1, ACID", "1, 1, 2, ACID", "1.009, 1, 0, BALANCED",
        "1.011, 1, 0, BICARBONATE", "0.989, 1, 0, ACID"
    })
    void whatRunsOutFirst(double acid, double bicarbonate, double carbonate, Yield.Limiting first) {
        Reagents mix = Reagents.none()
                .withBicarbonate(bicarbonate)
                .withCarbonate(carbonate)
                .withAcid(Acid.LACTIC, acid);
        assertThat(mix.theoreticalYield().limiting()).isEqualTo(first);
    }

    /** ANALYTIC: carbonate first eats one proton; too little acid frees nothing; carbon and protons are kept. */
    @Test
    void carbonateTakesItsProtonFirst() {
        Reagents weak = Reagents.none().withCarbonate(1).withBicarbonate(0.5).withAcid(Acid.LACTIC, 0.4);
        Yield none = weak.theoreticalYield();
        assertThat(none.carbonDioxide()).isZero();
        assertThat(none.carbonateLeft()).isCloseTo(0.6, within(1e-15));
        assertThat(none.bicarbonateLeft()).isCloseTo(0.9, within(1e-15));
        Reagents strong = weak.withAcid(Acid.CITRIC, 1);
        Yield some = strong.theoreticalYield();
        assertThat(some.limiting()).isEqualTo(Yield.Limiting.BICARBONATE);
        assertThat(some.carbonDioxide()).isEqualTo(1.5);
        assertThat(some.acidGroupsLeft()).isCloseTo(3.4 - 2.5, within(1e-15));
    }

    /** COMPUTED: wet molar volume 27.32 L/mol at 38 C and 1 atm, R T/(p - p_w). */
    @Test
    void bubblesAreWet() {
        double kelvin = celsius(38);
        double volume =
                Gas.wetMolarVolume(kelvin, PhysicalConstants.ATMOSPHERE, WagnerPruss2002.vapourPressure(kelvin));
        assertThat(volume).isCloseTo(27.32e-3, within(0.005e-3));
    }

    @Test
    void negativeAndUnknownAmountsAreRefused() {
        assertThatThrownBy(() -> Reagents.none().withBicarbonate(-1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Reagents.none().withCarbonate(Double.NaN)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Reagents.none().withAcid(Acid.MALIC, -1)).isInstanceOf(Refusal.class);
    }

    private static Reagents grams(double bicarbonate, double carbonate, Acid acid, double acidMass) {
        return Reagents.none()
                .withBicarbonate(bicarbonate / 1e3 / MolarMass.SODIUM_BICARBONATE)
                .withCarbonate(carbonate / 1e3 / MolarMass.SODIUM_CARBONATE)
                .withAcid(acid, acidMass / 1e3 / acid.molarMass());
    }

    /** By definition: a quarter of the gas and of its water has gone, three quarters are to come, what was over stays over. */
    @Test
    void whatIsLeftAfterPartOfTheGas() {
        Yield whole = grams(100, 10, Acid.CITRIC, 50).theoreticalYield();
        Yield left = whole.afterLosing(0.25);
        assertThat(left.carbonDioxide()).isCloseTo(0.75 * whole.carbonDioxide(), within(1e-12));
        assertThat(left.waterMade()).isCloseTo(0.75 * whole.waterMade(), within(1e-12));
        assertThat(left.bicarbonateLeft()).isEqualTo(whole.bicarbonateLeft());
        assertThat(left.limiting()).isEqualTo(whole.limiting());
        assertThat(whole.afterLosing(0)).isEqualTo(whole);
        assertThat(whole.afterLosing(1).carbonDioxide()).isZero();
        assertThatThrownBy(() -> whole.afterLosing(1.001)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> whole.afterLosing(-0.001)).isInstanceOf(IllegalArgumentException.class);
    }
}
