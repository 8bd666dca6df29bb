package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * An acid whose constants are known here at 25 C only and are kept at all temperatures; outside 20 to 30 C, as in any warm bath,
 * a notice says so. Error: 0.05 in pK at 25 C, 0.1 in a bath (docs/physics/fizz.md, 2).
 *
 * <p>Source: textbook constants at 25 C [from memory].
 */
final class RoomTemperatureAcid implements AcidConstants {
    /** Ascorbic acid: 4.10 and 11.7. */
    public static final RoomTemperatureAcid ASCORBIC = new RoomTemperatureAcid("ascorbic acid", 4.10, 11.7);

    /** Lactic acid: 3.86. */
    public static final RoomTemperatureAcid LACTIC = new RoomTemperatureAcid("lactic acid", 3.86);

    /** Fumaric acid: 3.05 and 4.49. */
    public static final RoomTemperatureAcid FUMARIC = new RoomTemperatureAcid("fumaric acid", 3.05, 4.49);

    /** pK at 25 C, by step. */
    private final double[] pK;

    private final ValidityRange validity;

    private RoomTemperatureAcid(String acid, double... pK) {
        this.pK = pK;
        validity =
                ValidityRange.ofTemperature("Dissociation of " + acid + " (known at 25 C)", celsius(20), celsius(30));
    }

    @Override
    public int steps() {
        return pK.length;
    }

    @Override
    public double pK(int step, double kelvin) {
        return pK[step - 1];
    }

    @Override
    public ValidityRange validity() {
        return validity;
    }
}
