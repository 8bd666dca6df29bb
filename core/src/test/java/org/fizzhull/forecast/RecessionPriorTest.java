package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.fizzhull.fizz.Recession;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;

/**
 * The priors of recession are what six published times of one antacid tablet leave of wide assumptions: this is the
 * calculation, by the linear update of normal variables.
 *
 * <p>Unknown x = (ln v at 38 C and porosity 0.425, slope b, activation energy, exponent n), before: 5 mm/min x/÷1.8, 6 +-
 * 4, 30 +- 8 kJ/mol, 0.5 +- 0.29. A tablet of 3.24 g (1.916 g bicarbonate, 1.000 g citric acid, 0.325 g aspirin), taken as
 * a puck of 25 by 4 mm, so of porosity 0.145 and 4.8 mol/kg, is gone when 1.98 mm have receded from each side. Doubt: x/÷1.28 of each
 * time (thermometer, watch, what counts as gone), x/÷1.49 of all together: another material (fine heat-treated bicarbonate, no
 * oil or starch, pressed in a machine) and a thickness that is not published.
 *
 * <p>PUBLISHED: laboratory pages of two classes, March and November 2011 (chemistryreflectionjn.blogspot.com,
 * chemistryreflectionblog12.blogspot.com), read whole.
 */
class RecessionPriorTest {
    private static final double[][] CELSIUS_SECONDS = {{1.7, 115}, {23.5, 40}, {50, 25}, {2, 143}, {27, 31}, {51, 19}};
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double EACH = 0.25;
    private static final double TOGETHER = 0.4;
    private static final double WAY_MM = 1.98;
    private static final double BEFORE_POROSITY = 0.425;

    private final RealMatrix mean;
    private final RealMatrix covariance;

    RecessionPriorTest() {
        RealMatrix before = MatrixUtils.createColumnRealMatrix(new double[] {Math.log(5), 6, 30e3, 0.5});
        RealMatrix spread =
                MatrixUtils.createRealDiagonalMatrix(new double[] {Math.pow(Math.log(1.8), 2), 16, 64e6, 1.0 / 12});
        int count = CELSIUS_SECONDS.length;
        RealMatrix design = MatrixUtils.createRealMatrix(count, 4);
        RealMatrix seen = MatrixUtils.createRealMatrix(count, 1);
        RealMatrix noise = MatrixUtils.createRealMatrix(count, count);
        for (int i = 0; i < count; i++) {
            double inverse = 1 / celsius(CELSIUS_SECONDS[i][0]) - 1 / Recession.REFERENCE_TEMPERATURE;
            design.setRow(i, new double[] {1, 0.145 - BEFORE_POROSITY, -inverse / GAS_CONSTANT, Math.log(4.8 / 4.6)});
            seen.setEntry(i, 0, Math.log(WAY_MM / (CELSIUS_SECONDS[i][1] / 60)));
            for (int k = 0; k < count; k++) {
                noise.setEntry(i, k, TOGETHER * TOGETHER + (i == k ? EACH * EACH : 0));
            }
        }
        RealMatrix across = spread.multiply(design.transpose());
        RealMatrix gain =
                across.multiply(new LUDecomposition(design.multiply(across).add(noise))
                        .getSolver()
                        .getInverse());
        mean = before.add(gain.multiply(seen.subtract(design.multiply(before))));
        covariance = spread.subtract(gain.multiply(design).multiply(spread));
    }

    /** Speed and slope are drawn one by one: they belong to the porosity at which the update leaves them independent. */
    @Test
    void referencePorosity() {
        double apart = covariance.getEntry(0, 1) / covariance.getEntry(1, 1);
        assertThat(Recession.REFERENCE_POROSITY).isCloseTo(BEFORE_POROSITY - apart, within(0.005));
    }

    @Test
    void slope() {
        Prior slope = prior(Input.POROSITY_SLOPE);
        assertThat(slope.median()).isCloseTo(mean.getEntry(1, 0), within(0.05));
        assertThat(deviation(slope)).isCloseTo(Math.sqrt(covariance.getEntry(1, 1)), within(0.05));
    }

    @Test
    void speed() {
        double away = Recession.REFERENCE_POROSITY - BEFORE_POROSITY;
        double logarithm = mean.getEntry(0, 0) + away * mean.getEntry(1, 0);
        double variance = covariance.getEntry(0, 0)
                + 2 * away * covariance.getEntry(0, 1)
                + away * away * covariance.getEntry(1, 1);
        Prior speed = prior(Input.RECESSION);
        assertThat(speed.median() * 60e3).isCloseTo(Math.exp(logarithm), within(0.05));
        double factor = speed.quantile(0.841344746) / speed.median();
        assertThat(factor).isCloseTo(Math.exp(Math.sqrt(variance)), within(0.01));
    }

    /** The tablets leave the activation energy at 27.5 +- 3.4 kJ/mol: inside the prior, which stays as wide as it was. */
    @Test
    void activationEnergyHolds() {
        assertThat(mean.getEntry(2, 0)).isCloseTo(27.5e3, within(0.1e3));
        Prior energy = prior(Input.ACTIVATION_ENERGY);
        assertThat(Math.abs(energy.median() - mean.getEntry(2, 0))).isLessThan(deviation(energy));
    }

    private static Prior prior(Input input) {
        return Factors.standard().rows().stream()
                .filter(row -> row.input() == input)
                .findFirst()
                .orElseThrow()
                .prior();
    }

    private static double deviation(Prior prior) {
        return prior.quantile(0.841344746) - prior.median();
    }
}
