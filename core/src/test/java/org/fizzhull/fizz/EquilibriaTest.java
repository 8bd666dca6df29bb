package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.medium.relation.Kell1975;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Constants of water, carbon dioxide and acids against published and other programs' values. */
class EquilibriaTest {
    /** SECOND-HAND: phreeqc.dat, log_k -1.468, -6.352, -10.329 at 25 C. */
    @Test
    void carbonDioxideAt25C() {
        double t = celsius(25);
        assertThat(PlummerBusenberg1982.lgSolubility(t)).isCloseTo(-1.468, within(0.0005));
        assertThat(PlummerBusenberg1982.lgFirst(t)).isCloseTo(-6.352, within(0.0005));
        assertThat(PlummerBusenberg1982.lgSecond(t)).isCloseTo(-10.329, within(0.0005));
    }

    /** OTHER PROGRAM: IAPWS G7-04 Henry constant 165.64 MPa at 25 C, 0.03395 mol/kg/atm. */
    @Test
    void solubilityAgreesWithTheHenryConstantOfWater() {
        assertThat(Math.pow(10, PlummerBusenberg1982.lgSolubility(celsius(25)))).isCloseTo(0.03395, within(0.0002));
    }

    /** FROM MEMORY: Bates and Pinching (1949), J. Am. Chem. Soc. 71, 1274; measured pK of citric acid. */
    @ParameterizedTest
    @CsvSource({"10, 3.176, 4.797, 6.383", "40, 3.099, 4.750, 6.439"})
    void citricAcidMeetsMeasurement(double c, double first, double second, double third) {
        double[] measured = {first, second, third};
        for (int step = 1; step <= 3; step++) {
            assertThat(Goldberg2002.CITRIC.pK(step, celsius(c))).isCloseTo(measured[step - 1], within(0.005));
        }
    }

    /**
     * PUBLISHED: pK, heat and heat capacity of the three steps of citric acid at 25 C from the abstract of Dissociation
     * quotients for citric acid in aqueous sodium chloride media to 150 C, J. Solution Chem. 26 (1997), doi
     * 10.1007/BF02439444, carried to other temperatures by thermodynamics with a constant heat capacity; the class states 0.01.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 25, 38, 45, 60})
    void citricAcidMeetsALaterMeasurement(double c) {
        double[] pK = {3.127, 4.759, 6.397};
        double[] heat = {4.1e3, 2.2e3, -3.6e3};
        double[] capacity = {-162, -192, -231};
        double t = celsius(c);
        double t0 = celsius(25);
        for (int i = 0; i < 3; i++) {
            double lnRise =
                    -heat[i] / 8.314463 * (1 / t - 1 / t0) + capacity[i] / 8.314463 * (t0 / t - 1 + Math.log(t / t0));
            assertThat(Goldberg2002.CITRIC.pK(i + 1, t)).isCloseTo(pK[i] - lnRise / Math.log(10), within(0.01));
        }
    }

    /** SEEN: K1 = 3.48e-4 at 25 C in the abstract; 3.444 and 5.116 at 38 C (validation/reference/equilibria.py). */
    @Test
    void malicAcid() {
        assertThat(EdenBates1959.MALIC.pK(1, celsius(25))).isCloseTo(-Math.log10(3.48e-4), within(0.001));
        assertThat(EdenBates1959.MALIC.pK(2, celsius(25))).isCloseTo(5.097, within(0.001));
        assertThat(EdenBates1959.MALIC.pK(1, celsius(38))).isCloseTo(3.444, within(0.001));
        assertThat(EdenBates1959.MALIC.pK(2, celsius(38))).isCloseTo(5.116, within(0.001));
    }

    /** OTHER PROGRAM: IAPWS R11-07 by an open-source library, 13.9945, 13.5917, 13.5343 at 25, 38, 40 C. */
    @ParameterizedTest
    @CsvSource({"25, 13.9945", "38, 13.5917", "40, 13.5343"})
    void ionProductOfWater(double c, double pKw) {
        double kelvin = celsius(c);
        assertThat(-MarshallFranck1981.lgIonProduct(kelvin, Kell1975.density(kelvin)))
                .isCloseTo(pKw, within(0.01));
    }

    /** OTHER PROGRAM: permittivity 73.875 at 38 C by IAPWS; FROM MEMORY: textbook slope 0.509 to 0.511 at 25 C. */
    @Test
    void permittivityAndSlope() {
        assertThat(MalmbergMaryott1956.permittivity(celsius(38))).isCloseTo(73.875, within(0.08));
        double slope = Davies1962.slope(celsius(25), Kell1975.density(celsius(25)));
        assertThat(slope).isBetween(0.509, 0.511);
        assertThat(Davies1962.lgCoefficient(slope, 2, 0.01))
                .isCloseTo(4 * Davies1962.lgCoefficient(slope, 1, 0.01), within(1e-15));
        assertThat(Davies1962.lgCoefficient(slope, 1, 0)).isZero();
    }
}
