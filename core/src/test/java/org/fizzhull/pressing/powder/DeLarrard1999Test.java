package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values: validation/reference/packing.py unless said. */
class DeLarrard1999Test {
    private static final double DIGITS = 5.1e-7;
    private final DeLarrard1999 model = new DeLarrard1999();

    private static Powders binary(double coarse, double ratio, double beta) {
        return Powders.of(
                new double[] {coarse, 1 - coarse},
                new double[] {1e-3, ratio * 1e-3},
                new double[] {beta, beta},
                new double[] {4.1, 4.1},
                2000);
    }

    @ParameterizedTest
    @CsvSource({
        ".05,.225774,.074055",
        ".1,.319209,.146185",
        ".2,.451179,.284458",
        ".5,.711958,.646447",
        ".8,.897962,.910557"
    })
    void interactionFunctions(double ratio, double loosening, double wall) {
        assertThat(SizeEffects.loosening(ratio)).isCloseTo(loosening, within(DIGITS));
        assertThat(SizeEffects.wall(ratio)).isCloseTo(wall, within(DIGITS));
    }

    @ParameterizedTest
    @CsvSource({
        ".8,.823196,.885928,.735634,.647862",
        ".7,.893622,.859515,.774269,.677223",
        ".6,.977226,.834632,.772925,.685666",
        ".4,1.202165,.788951,.728076,.656100",
        ".2,1.561621,.748012,.681761,.612870"
    })
    void binaryMixes(double coarse, double gammaCoarse, double gammaFine, double atNine, double poured) {
        Powders mix = binary(coarse, 0.1, 0.711111111);
        double[] inverse = DeLarrard1999.inverseVirtual(mix);
        assertThat(1 / inverse[0]).isCloseTo(gammaCoarse, within(1.1e-6));
        assertThat(1 / inverse[1]).isCloseTo(gammaFine, within(1.1e-6));
        assertThat(model.atIndex(mix, 9)).isCloseTo(atNine, within(DIGITS));
        assertThat(model.atIndex(mix, 4.1)).isCloseTo(poured, within(DIGITS));
        assertThat(model.indexOf(mix, model.atIndex(mix, 9))).isCloseTo(9, within(1e-9));
    }

    @Test
    void oneSizeGivesBackItsOwnPacking() {
        assertThat(model.atIndex(binary(0, 0.1, 0.711111111), 9)).isCloseTo(0.64, within(1e-8));
        assertThat(model.atIndex(binary(1, 0.1, 0.711111111), 9)).isCloseTo(0.64, within(1e-8));
        // equal grains mixed with themselves are the same grains
        assertThat(model.atIndex(binary(0.3, 1, 0.711111111), 9)).isCloseTo(0.64, within(1e-8));
    }

    /** Furnas, no interaction: 1/max(y/phi, y + (1 - y)/phi). Sizes a million apart leave a = 0.001. */
    @ParameterizedTest
    @CsvSource({"0,.625", ".2,.675676", ".4,.735294", ".6,.806452", ".72,.856164", ".8,.781250", "1,.625"})
    void farSizesReachFurnas(double coarse, double phi) {
        assertThat(model.virtual(binary(coarse, 1e-12, 0.625))).isCloseTo(phi, within(2e-6));
    }

    /** Recursive limit phi_n = 1 - (1 - phi)^n with class k taking phi (1 - phi)^(k-1) of the volume. */
    @ParameterizedTest
    @CsvSource({"2,.859375", "3,.947266", "4,.980225"})
    void farSizesReachTheRecursiveLimit(int classes, double limit) {
        double phi = 0.625;
        double[] share = new double[classes];
        double[] size = new double[classes];
        double[] beta = new double[classes];
        double[] index = new double[classes];
        for (int k = 0; k < classes; k++) {
            share[k] = phi * Math.pow(1 - phi, k) / (1 - Math.pow(1 - phi, classes));
            size[k] = Math.pow(1e-9, k);
            beta[k] = phi;
            index[k] = 4;
        }
        assertThat(model.virtual(Powders.of(share, size, beta, index, 2000))).isCloseTo(limit, within(2e-4));
    }

    /**
     * McGeary (1961), vibrated shot, from memory: binary maximum 0.84 near 72 % coarse; the band of 0.03 is twice the
     * difference of the two models.
     */
    @Test
    void mcGearysBinaryMaximumIsMetByTheVirtualPackingOfMeasuredShot() {
        assertThat(model.virtual(binary(0.72, 1.0 / 316, 0.625))).isCloseTo(0.84, within(0.03));
    }

    /** The maxima computed by it apart from this code, mono-size 0.625 at K = 9. */
    @ParameterizedTest
    @CsvSource({".302,.63,.714533", ".15,.64,.750423", ".06,.66,.779030", ".013,.68,.800457"})
    void binaryMaxima(double ratio, double coarse, double phi) {
        assertThat(model.atIndex(binary(coarse, ratio, 0.625 * 10 / 9), 9)).isCloseTo(phi, within(DIGITS));
    }

    @Test
    void aMixOfThreeSolvedApart() {
        double[] share = {.346184107, .523996853, .129819040};
        double sum = share[0] + share[1] + share[2];
        for (int i = 0; i < 3; i++) {
            share[i] /= sum;
        }
        double up = 1 + 1 / 4.1;
        Powders mix = Powders.of(
                share,
                new double[] {400e-6, 100e-6, 15e-6},
                new double[] {.55 * up, .46 * up, .34 * up},
                new double[] {4.1, 4.1, 4.1},
                1921.322);
        assertThat(model.atIndex(mix, 4.1)).isCloseTo(.566348, within(DIGITS));
        assertThat(model.atIndex(mix, 9)).isCloseTo(.637683, within(DIGITS));
        assertThat(model.atIndex(mix, 12)).isCloseTo(.653071, within(DIGITS));
        assertThat(model.virtual(mix)).isCloseTo(.695441, within(DIGITS));
    }

    /** One powder is exactly Kawakita's law with a = 1/(K0 + 1), 1/b = Pk (analytic). */
    @ParameterizedTest
    @CsvSource({"0,.562745", ".5,.602098", "1,.623913", "10,.684816"})
    void onePowderIsKawakita(double squeeze, double printed) {
        Powders one = Powders.of(new double[] {1}, new double[] {1e-4}, new double[] {0.7}, new double[] {4.1}, 2000);
        double a = 1 / 5.1;
        double loose = 0.7 * 4.1 / 5.1;
        double kawakita = loose * (1 + squeeze) / (1 + squeeze * (1 - a));
        assertThat(model.solidFraction(one, squeeze))
                .isCloseTo(kawakita, within(1e-14))
                .isCloseTo(printed, within(DIGITS));
    }
}
