package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * DL-malic acid: Eden and Bates (1959), pK1 = A1/T - 5.1382 + 0.013550 T, pK2 = A2/T - 6.2364 + 0.019353 T. 0 to 50 C;
 * 0.005. A1 and A2 are not readable in the scan that was seen: they are set here so that K1 = 3.48e-4 (seen) and pK2 =
 * 5.097 at 25 C.
 *
 * <p>Source: M. Eden and R. G. Bates, Dissociation constants and related thermodynamic quantities for DL-malic acid in
 * water from 0 to 50 C, J. Res. Natl. Bur. Stand. 62 (1959) 161; abstract, two numbers reconstructed [seen].
 */
public final class EdenBates1959 implements AcidConstants {
    /** Malic acid. */
    public static final EdenBates1959 MALIC = new EdenBates1959();

    private static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Dissociation of malic acid by Eden and Bates (1959)", celsius(0), celsius(50));

    private EdenBates1959() {}

    @Override
    public int steps() {
        return 2;
    }

    @Override
    public double pK(int step, double kelvin) {
        // 1358.5 and 1658.8 are the two constants set here
        return step == 1 ? 1358.5 / kelvin - 5.1382 + 0.013550 * kelvin : 1658.8 / kelvin - 6.2364 + 0.019353 * kelvin;
    }

    @Override
    public ValidityRange validity() {
        return VALIDITY;
    }
}
