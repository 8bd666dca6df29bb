package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A worked case, computed apart from this code by validation/reference/packing.py. */
class WorkedCaseTest {
    private static final double DIGITS = 5.1e-7;
    private final Blend blend = Sample.sheet(0.04);
    private final Powders powders = Powders.of(blend).withOnePressScale();
    private final DeLarrard1999 model = new DeLarrard1999();

    @Test
    void blendAndLoosePacking() {
        assertThat(blend.trueDensity()).isCloseTo(1921.322, within(5.1e-4));
        assertThat(blend.volumeShares()[0]).isCloseTo(.346184, within(DIGITS));
        assertThat(blend.volumeShares()[2]).isCloseTo(.129819, within(DIGITS));
        assertThat(powders.beta[0]).isCloseTo(.677778, within(DIGITS));
        assertThat(powders.beta[1]).isCloseTo(.688889, within(DIGITS));
        assertThat(powders.beta[2]).isCloseTo(.555556, within(DIGITS));
        assertThat(powders.index[1]).isCloseTo(2.009709, within(DIGITS));
        assertThat(powders.looseIndex()).isCloseTo(2.361482, within(DIGITS));
        double[] inverse = DeLarrard1999.inverseVirtual(powders);
        assertThat(1 / inverse[0]).isCloseTo(1.063790, within(DIGITS));
        assertThat(1 / inverse[1]).isCloseTo(.796282, within(DIGITS));
        assertThat(1 / inverse[2]).isCloseTo(.858944, within(DIGITS));
    }

    @ParameterizedTest
    @CsvSource({
        "0,2.361482,.555732,1.110449",
        "5,2.492675,.565880,1.130728",
        "20,2.886256,.592247,1.183413",
        "30,3.148642,.607037,1.212967",
        "50,3.673416,.631550,1.261948",
        "100,4.985351,.673412,1.345594",
        "300,10.233088,.738671,1.475994",
        "400,12.856957,.751429,1.501486",
        "1000,28.600169,.777596,1.553773"
    })
    void pressed(double kilopascal, double index, double phi, double dampDensity) {
        Press press = Press.of(blend, powders, Sample.bare(90e3));
        Pressed piece = press.press(kilopascal * 1e3, Sample.litre());
        assertThat(powders.looseIndex() * (1 + kilopascal / 90)).isCloseTo(index, within(DIGITS));
        assertThat(piece.solidFraction()).isCloseTo(phi, within(DIGITS));
        assertThat(piece.dampMass()).isCloseTo(dampDensity, within(DIGITS));
        if (kilopascal > 0) {
            Pressed back = press.fill(piece.dampMass(), Sample.litre());
            assertThat(back.topPressure()).isCloseTo(kilopascal * 1e3, within(1e-5 * kilopascal * 1e3));
        }
    }

    @ParameterizedTest
    @CsvSource({"30,.666656", "50,.699433", "100,.738671", "400,.780700"})
    void softerPressScale(double kilopascal, double phi) {
        Press press = Press.of(blend, powders, Sample.bare(30e3));
        assertThat(press.solidFraction(kilopascal * 1e3)).isCloseTo(phi, within(DIGITS));
    }

    @ParameterizedTest
    @CsvSource({
        "1.25,50,.625571,3.533198,100.770228",
        "1.20,50,.600548,3.029233,176.823549",
        "1.30,80,.650594,4.187045,103.485059",
        "1.35,80,.675617,5.076667,69.578523"
    })
    void calibration(double dampDensity, double kilopascal, double phi, double index, double pressScale) {
        Press press = Press.of(blend, powders, Sample.bare(90e3));
        assertThat(press.fill(dampDensity, Sample.litre()).solidFraction()).isCloseTo(phi, within(DIGITS));
        assertThat(model.indexOf(
                        powders, press.fill(dampDensity, Sample.litre()).solidFraction()))
                .isCloseTo(index, within(DIGITS));
        assertThat(press.pressScale(dampDensity, kilopascal * 1e3, Sample.litre()) / 1e3)
                .isCloseTo(pressScale, within(DIGITS));
    }

    /** With bulking, spring-back and wall friction on, the press scale found from a piece makes that piece again. */
    @Test
    void calibrationRoundTrip() {
        PressingParameters all = PressingParameters.standard();
        double mass = Press.of(blend, powders, all).press(40e3, Sample.ball65()).dampMass();
        double found = Press.of(blend, powders, all.withPressScale(300e3)).pressScale(mass, 40e3, Sample.ball65());
        assertThat(found).isCloseTo(90e3, within(1e-3));
    }

    @Test
    void saysWhatCannotBe() {
        Press press = Press.of(blend, powders, Sample.bare(90e3));
        Pressed loose = press.fill(1.0, Sample.litre());
        assertThat(loose.topPressure()).isZero();
        assertThat(loose.notices()).extracting("code").containsExactly("filled-loosely");
        assertThatThrownBy(() -> press.fill(1.9, Sample.litre()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("measure the mould with water");
        assertThatThrownBy(() -> press.pressScale(1.0, 50e3, Sample.litre())).isInstanceOf(Refusal.class);
        // by hand: with 0.4 kg/kg of liquid of density r the pores are full at phi = 1/(1 + 0.4 rho/r)
        Press wet = Press.of(blend, powders, Sample.bare(90e3)).withLiquid(0.4);
        double full = 1 / (1 + 0.4 * powders.trueDensity() / blend.liquid().density());
        double most = full * powders.trueDensity() * 1.4 * 1e-3;
        assertThat(wet.pressScale(0.999 * most, 50e3, Sample.litre())).isPositive();
        assertThatThrownBy(() -> wet.pressScale(1.001 * most, 50e3, Sample.litre()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("fills every pore");
        assertThatThrownBy(() -> press.press(Double.NaN, Sample.litre())).isInstanceOf(Refusal.class);
    }

    /** ANALYTIC, Kawakita's law: bicarbonate alone. */
    @ParameterizedTest
    @CsvSource({"0,.460000", "10,.475809", "30,.501671", "100,.557490", "1000,.661703"})
    void bicarbonateAlone(double kilopascal, double phi) {
        Powders alone = Powders.of(
                new double[] {1}, new double[] {1e-4}, new double[] {.62 * 10 / 9}, new double[] {2.009708738}, 2200);
        assertThat(model.solidFraction(alone, kilopascal / 90)).isCloseTo(phi, within(DIGITS));
    }
}
