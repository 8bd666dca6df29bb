package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pH of baths against another program, textbook values and a published table of dissolved tablets. */
class BathChemistryTest {
    /** OTHER PROGRAM: PHREEQC 3 with the same constants; 0.01 in pH, 1 % in I. */
    @ParameterizedTest
    @CsvSource({
        "100, 50, 0.150, 25, 6.2168, 8.5596, 0.01152, 4.377e-3",
        "100, 50, 0.150, 38, 6.1814, 8.6368, 0.01142, 4.324e-3",
        "200, 100, 0.100, 40, 6.1282, 9.0404, 0.0348, 13.228e-3",
        "60, 60, 0.150, 38, 5.4293, 5.9150, 0.00714, 4.180e-3",
        "0.5844, 0.1288, 0.0002, 25, 6.6919, 9.363, 0.0439, 9.528e-3"
    })
    void closedAndOpenBathsMeetAnotherProgram(
            double bicarbonate,
            double citric,
            double volume,
            double c,
            double closed,
            double open,
            double i,
            double gas) {
        BathChemistry bath = BathChemistry.of(bath(c, volume), mix(bicarbonate, citric, Acid.CITRIC));
        assertThat(bath.closed().ph()).isCloseTo(closed, within(0.01));
        assertThat(bath.closed().ionicStrength()).isCloseTo(i, within(0.01 * i));
        assertThat(bath.closed().dissolvedGas()).isCloseTo(gas, within(0.002 * gas));
        assertThat(bath.open().ph()).isCloseTo(open, within(0.01));
        assertThat(bath.closed().notices()).isEmpty();
    }

    /** PUBLISHED: pH of dissolved tablets, Adv. Pharm. Bull. 3 (2013) 315, table 1 (seen); 20 C and 0.2 L assumed. */
    @ParameterizedTest
    @CsvSource({
        "CITRIC, 85.9, 292.2, 6.57",
        "CITRIC, 171.8, 292.2, 6.10",
        "CITRIC, 128.8, 292.2, 6.42",
        "CITRIC, 128.8, 146.1, 5.59",
        "CITRIC, 128.8, 219.2, 6.23",
        "CITRIC, 128.8, 438.3, 6.73",
        "CITRIC, 128.8, 584.4, 6.75",
        "TARTARIC, 85.9, 292.2, 6.48"
    })
    void dissolvedTabletsAreMetWithinTwoTenths(Acid acid, double acidMg, double bicarbonateMg, double ph) {
        Reagents tablet = mix(bicarbonateMg / 1e3, acidMg / 1e3, acid);
        assertThat(BathChemistry.of(bath(20, 0.0002), tablet).closed().ph()).isCloseTo(ph, within(0.2));
    }

    /**
     * FROM MEMORY: textbook, pure water under carbon dioxide, and 0.01 molal citric acid
     * (validation/reference/equilibria.py).
     */
    @Test
    void plainCases() {
        BathChemistry water = BathChemistry.of(bath(25, 0.150), Reagents.none());
        assertThat(water.open(Math.pow(10, -3.5) * PhysicalConstants.ATMOSPHERE).ph())
                .isCloseTo(5.66, within(0.01));
        assertThat(water.open(PhysicalConstants.ATMOSPHERE).ph()).isCloseTo(3.91, within(0.01));
        assertThat(water.closed().ph()).isCloseTo(13.995 / 2, within(0.002));
        double mass = water.closed().waterMass();
        Reagents sour = Reagents.none().withAcid(Acid.CITRIC, 0.01 * mass);
        assertThat(BathChemistry.of(bath(25, 0.150), sour).closed().ph()).isCloseTo(2.62, within(0.01));
    }

    /**
     * OTHER PROGRAM (validation/reference/equilibria.py): 30, 60, 90 % of the gas gone; and the whole carbon stays on
     * the books.
     */
    @Test
    void gasThatLeavesMakesTheBathLessSour() {
        BathChemistry bath = BathChemistry.of(bath(38, 0.150), mix(100, 50, Acid.CITRIC));
        assertThat(bath.degassed(0.3).ph()).isCloseTo(6.33, within(0.01));
        assertThat(bath.degassed(0.6).ph()).isCloseTo(6.57, within(0.01));
        assertThat(bath.degassed(0.9).ph()).isCloseTo(7.16, within(0.01));
        BathWater closed = bath.closed();
        assertThat(closed.inorganicCarbon() * closed.waterMass())
                .isCloseTo(100e-3 / MolarMass.SODIUM_BICARBONATE, within(1e-12));
        assertThat(closed.gasPressure() / PhysicalConstants.ATMOSPHERE).isCloseTo(0.175, within(0.001));
        assertThat(closed.dissolvedGas() * closed.waterMass()).isCloseTo(0.644, within(0.001));
    }

    /**
     * COMPUTED by another program: the same equilibria by nested halving, without the closed form of the pair, at 25 C: 100 g
     * bicarbonate and 50 g citric acid in 150 L with 0, 50 and 200 g of Epsom salt.
     */
    @ParameterizedTest
    @CsvSource({"0, 6.2158, 0.01152", "50, 6.1013, 0.01104", "200, 6.0140, 0.02482"})
    void epsomSaltBindsCitrate(double epsom, double ph, double strength) {
        Reagents mix = mix(100, 50, Acid.CITRIC).withMagnesium(epsom / 246.475);
        BathWater closed = BathChemistry.of(bath(25, 0.150), mix).closed();
        assertThat(closed.ph()).isCloseTo(ph, within(0.005));
        assertThat(closed.ionicStrength()).isCloseTo(strength, within(0.01 * strength));
        // without citrate there is nothing to bind
        Reagents malic = mix(100, 50, Acid.MALIC);
        assertThat(BathChemistry.of(bath(25, 0.150), malic.withMagnesium(epsom / 246.475))
                        .closed()
                        .ph())
                .isCloseTo(BathChemistry.of(bath(25, 0.150), malic).closed().ph(), within(0.06));
    }

    /** SECOND-HAND: lg K 4.89 at 25 C, 8.368 kJ/mol; by hand 4.95 at 38 C. */
    @Test
    void stabilityOfThePair() {
        assertThat(MagnesiumCitrate.lgStability(298.15)).isEqualTo(4.89);
        assertThat(MagnesiumCitrate.lgStability(311.15)).isCloseTo(4.951, within(0.001));
        // what is bound, by its own law: K (M - y)(C - y)/a = y
        double y = MagnesiumCitrate.bound(5e4, 3, 0.004, 0.007);
        assertThat(5e4 * (0.007 - y) * (0.004 - y) / 3).isCloseTo(y, within(1e-12));
        double much = MagnesiumCitrate.bound(5e4, 3, 0.007, 0.004);
        assertThat(5e4 * (0.004 - much) * (0.007 - much) / 3).isCloseTo(much, within(1e-12));
    }

    /** ANALYTIC: water of alkalinity a is water with a of bicarbonate in it. */
    @Test
    void tapAlkalinityIsBicarbonate() {
        Bath bath = bath(38, 0.150);
        Reagents mix = mix(60, 60, Acid.MALIC);
        Reagents more = mix.withBicarbonate(mix.bicarbonate() + 3 * 0.150);
        double tap = BathChemistry.of(bath, mix).withTapAlkalinity(3).closed().ph();
        assertThat(tap).isEqualTo(BathChemistry.of(bath, more).closed().ph());
        assertThat(tap).isGreaterThan(BathChemistry.of(bath, mix).closed().ph());
        assertThatThrownBy(() -> BathChemistry.of(bath, mix).withTapAlkalinity(Double.NaN))
                .isInstanceOf(Refusal.class);
    }

    /** ANALYTIC: cream of tartar is tartaric acid half neutralised by a base that brings no carbon. */
    @Test
    void creamOfTartarIsHalfNeutralisedTartaricAcid() {
        Bath bath = bath(30, 0.150);
        Reagents cream = Reagents.none().withBicarbonate(0.3).withAcid(Acid.POTASSIUM_BITARTRATE, 0.2);
        Reagents tartaric = Reagents.none().withBicarbonate(0.5).withAcid(Acid.TARTARIC, 0.2);
        double pressure = 5000;
        assertThat(BathChemistry.of(bath, cream).open(pressure).ph())
                .isCloseTo(BathChemistry.of(bath, tartaric).open(pressure).ph(), within(1e-9));
    }

    /**
     * ANALYTIC: neutral water holds as much H+ as OH-, each at the root of the ion product over its coefficient, whatever
     * salt is in it: its pH stays pKw/2. A salt of single charges has its molality as ionic strength, pure water 10^(-pKw/2) over
     * the coefficient, by the limiting law with 0.509 at 25 C (from memory).
     */
    @Test
    void saltLeavesNeutralWaterNeutral() {
        BathWater pure = BathChemistry.of(bath(25, 0.150), Reagents.none()).closed();
        BathWater salted =
                BathChemistry.of(bath(25, 0.150).withSalt(0.3), Reagents.none()).closed();
        assertThat(pure.ionicStrength()).isCloseTo(Math.pow(10, -pure.ph() + 0.509 * Math.sqrt(1e-7)), within(1e-12));
        assertThat(salted.ph()).isCloseTo(pure.ph(), within(0.001));
        // molar masses to four digits
        assertThat(salted.ionicStrength()).isCloseTo(0.3 / 0.05844277 / salted.waterMass(), within(1e-5));
    }

    /**
     * ANALYTIC: an acid half neutralised, its gas gone, stands at its pK less the lg of the coefficient of its ion, by Davies
     * with 0.509, at b of each form: pK + lg((b + h)/(b - h)) - 0.509 (I^(1/2)/(1 + I^(1/2)) - 0.3 I), h = 10^-pH. Constants at
     * 25 C: textbook, from memory.
     */
    @ParameterizedTest
    @CsvSource({"LACTIC, 3.86", "ASCORBIC, 4.10"})
    void anAcidHalfNeutralisedStandsAtItsConstant(Acid acid, double constant) {
        Reagents half = Reagents.none().withBicarbonate(7.5).withAcid(acid, 15);
        BathWater water = BathChemistry.of(bath(25, 0.150), half).open(0);
        double each = 7.5 / water.waterMass();
        double root = Math.sqrt(each);
        double davies = 0.509 * (root / (1 + root) - 0.3 * each);
        double h = Math.pow(10, -constant);
        double expected = constant + Math.log10((each + h) / (each - h)) - davies;
        assertThat(water.ph()).isCloseTo(expected, within(0.005));
    }

    /** SECOND-HAND: salt drives the gas out: at one pressure its molality falls by the factor 10^(0.1 I), I in mol/kg. */
    @Test
    void saltDrivesTheGasOut() {
        BathWater fresh = BathChemistry.of(bath(25, 0.150), Reagents.none()).open(50_000);
        BathWater salted =
                BathChemistry.of(bath(25, 0.150).withSalt(0.9), Reagents.none()).open(50_000);
        assertThat(salted.ionicStrength()).isGreaterThan(0.1);
        assertThat(salted.dissolvedGas() / fresh.dissolvedGas())
                .isCloseTo(Math.pow(10, -0.1 * (salted.ionicStrength() - fresh.ionicStrength())), within(1e-9));
    }

    /** ANALYTIC: under a given pressure of the gas only charges count, and a carbonate brings the sodium of two bicarbonates. */
    @Test
    void underAGivenPressureACarbonateIsTwoBicarbonates() {
        Reagents soda = Reagents.none().withCarbonate(0.2).withAcid(Acid.CITRIC, 0.05);
        Reagents bicarbonate = Reagents.none().withBicarbonate(0.4).withAcid(Acid.CITRIC, 0.05);
        BathWater one = BathChemistry.of(bath(30, 0.150), soda).open(5000);
        BathWater other = BathChemistry.of(bath(30, 0.150), bicarbonate).open(5000);
        assertThat(one.ph()).isCloseTo(other.ph(), within(1e-9));
        assertThat(one.gasPressure()).isCloseTo(5000, within(1e-6));
        BathWater closed = BathChemistry.of(bath(30, 0.150), soda).closed();
        assertThat(closed.inorganicCarbon() * closed.waterMass()).isCloseTo(0.2, within(1e-12));
    }

    /** ANALYTIC: what is left of the carbon is what came in less what has gone; without gas over it water holds none. */
    @Test
    void theEndsOfTheRangesAreAllowed() {
        Reagents mix = mix(100, 50, Acid.CITRIC);
        BathChemistry bath = BathChemistry.of(bath(38, 0.150), mix);
        BathWater flat = bath.degassed(1);
        assertThat(flat.inorganicCarbon() * flat.waterMass())
                .isCloseTo(mix.carbon() - mix.theoreticalYield().carbonDioxide(), within(1e-12));
        assertThat(bath.open(0).dissolvedGas()).isZero();
        assertThat(bath.open(10 * PhysicalConstants.ATMOSPHERE).gasPressure())
                .isCloseTo(10 * PhysicalConstants.ATMOSPHERE, within(1e-3));
        assertThatThrownBy(() -> bath.degassed(1.001)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> bath.degassed(-0.001)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Reagents.none().withCarbonate(Double.POSITIVE_INFINITY))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> bath.open(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> bath.open(10.001 * PhysicalConstants.ATMOSPHERE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatLeavesAPublishedRangeIsSaid() {
        Reagents lactic = Reagents.none().withBicarbonate(1).withAcid(Acid.LACTIC, 0.5);
        BathWater warm = BathChemistry.of(bath(38, 0.150), lactic).closed();
        assertThat(warm.notices()).extracting(Notice::code).containsExactly("outside-validity");
        BathWater brine = BathChemistry.of(bath(25, 0.150).withSalt(15), mix(100, 50, Acid.CITRIC))
                .closed();
        assertThat(brine.notices()).extracting(Notice::code).containsExactly("outside-validity");
    }

    private static Bath bath(double c, double volume) {
        return Bath.at(celsius(c)).withVolume(volume);
    }

    /** Grams. */
    private static Reagents mix(double bicarbonate, double acidMass, Acid acid) {
        return Reagents.none()
                .withBicarbonate(bicarbonate / 1e3 / MolarMass.SODIUM_BICARBONATE)
                .withAcid(acid, acidMass / 1e3 / acid.molarMass());
    }
}
