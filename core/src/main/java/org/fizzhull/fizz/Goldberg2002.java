package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.evidence.published.ValidityRange;

/**
 * Acids with a heat and a heat capacity of each step: Goldberg, Kishore and Lennen (2002),
 * {@code ln K = ln K0 - (H/R)(1/T - 1/T0) + (Cp/R)(T0/T - 1 + ln(T/T0))}, T0 = 298.15 K. Used here from 0 to 60 C. Error
 * in pK: 0.01; citric acid lies within 0.01 of Bates and Pinching (1949) at 10 and 40 C and of the fit of measurements from
 * 5 to 150 C in J. Solution Chem. 26 (1997), doi 10.1007/BF02439444 [abstract], from 0 to 60 C.
 *
 * <p>Source: R. N. Goldberg, N. Kishore and R. M. Lennen, Thermodynamic quantities for the ionization reactions of
 * buffers, J. Phys. Chem. Ref. Data 31 (2002) 231; form seen in a handbook, constants at 25 C second-hand, heats and
 * heat capacities from memory [from memory].
 */
public final class Goldberg2002 implements AcidConstants {
    /** Citric acid. */
    public static final Goldberg2002 CITRIC = new Goldberg2002(
            "citric acid", new double[] {3.128, 4.761, 6.396}, new double[] {4070, 2230, -3380}, new double[] {
                -131, -178, -254
            });

    /** L-tartaric acid. */
    public static final Goldberg2002 TARTARIC = new Goldberg2002(
            "tartaric acid", new double[] {3.036, 4.366}, new double[] {3190, 930}, new double[] {-147, -218});

    /** Reference temperature, K. */
    private static final double T0 = 298.15;

    /** pK at 25 C, by step. */
    private final double[] pK0;
    /** H, enthalpy of each step at 25 C, J/mol. */
    private final double[] heat;
    /** Cp, change of heat capacity in each step, J/(mol K). */
    private final double[] heatCapacity;

    private final ValidityRange validity;

    private Goldberg2002(String acid, double[] pK0, double[] heat, double[] heatCapacity) {
        this.pK0 = pK0;
        this.heat = heat;
        this.heatCapacity = heatCapacity;
        validity = ValidityRange.ofTemperature(
                "Dissociation of " + acid + " by Goldberg et al. (2002)", celsius(0), celsius(60));
    }

    @Override
    public int steps() {
        return pK0.length;
    }

    @Override
    public double pK(int step, double kelvin) {
        int i = step - 1;
        double byHeat = -heat[i] / PhysicalConstants.GAS_CONSTANT * (1 / kelvin - 1 / T0);
        double byCapacity =
                heatCapacity[i] / PhysicalConstants.GAS_CONSTANT * (T0 / kelvin - 1 + Math.log(kelvin / T0));
        return pK0[i] - (byHeat + byCapacity) / Math.log(10);
    }

    @Override
    public ValidityRange validity() {
        return validity;
    }
}
