package org.fizzhull.medium.relation;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Dynamic viscosity of fresh water at 0.1 MPa: Patek et al. (2009), adopted as IAPWS SR6-08: a sum of four powers of
 * T/300 K. Range used here: 0 to 100 C. Error: about 1 % (twice the standard uncertainty), 0.003 % from the full IAPWS
 * formulation of 2008. Drag on a rising piece depends on it.
 *
 * <p>Source: J. Patek, J. Hruby, J. Klomfar, M. Souckova and A. H. Harvey, Reference correlations for thermophysical
 * properties of liquid water at 0.1 MPa, J. Phys. Chem. Ref. Data 38 (2009) 21; IAPWS SR6-08 [from memory]. Stateless.
 */
public final class Patek2009Viscosity {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Water viscosity by Patek et al. (2009)", celsius(0), celsius(100));

    private Patek2009Viscosity() {}

    /**
     * {@return the dynamic viscosity, Pa s, at a temperature in K} Not checked; NaN gives NaN.
     *
     * @param kelvin temperature, K
     */
    public static double viscosity(double kelvin) {
        double theta = kelvin / 300;
        return 1e-6
                * (280.68 * Math.pow(theta, -1.9)
                        + 511.45 * Math.pow(theta, -7.7)
                        + 61.131 * Math.pow(theta, -19.6)
                        + 0.45903 * Math.pow(theta, -40));
    }
}
