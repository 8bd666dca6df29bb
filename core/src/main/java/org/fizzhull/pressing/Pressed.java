package org.fizzhull.pressing;

import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * A damp piece as it comes out of its mould. SI.
 *
 * @param topPressure under the plunger, Pa; 0 where the mix stands looser than it pours
 * @param meanPressure in the mould, Pa
 * @param solidFraction phi, dry solids over volume
 * @param trueDensity of the dry solids, kg/m3
 * @param liquidRatio M, kg liquid per kg dry powder
 * @param saturation S, liquid over pore volume
 * @param airPorosity eps_g, pore volume without liquid
 * @param dampMass kg
 * @param handForce on the whole face, N
 * @param strength tensile, damp, Pa
 * @param selfWeight stress of its own weight at the foot, Pa
 * @param modelSpread second packing model less this one, on phi
 * @param feel how it feels
 * @param notices what the reader must know
 */
public record Pressed(
        double topPressure,
        double meanPressure,
        double solidFraction,
        double trueDensity,
        double liquidRatio,
        double saturation,
        double airPorosity,
        double dampMass,
        double handForce,
        double strength,
        double selfWeight,
        double modelSpread,
        Feel feel,
        List<Notice> notices) {

    /** {@return the porosity eps = 1 - phi} */
    public double porosity() {
        return 1 - solidFraction;
    }

    /** {@return the dry powder per volume, kg/m3} */
    public double dryDensity() {
        return solidFraction * trueDensity;
    }

    /** {@return the density of the damp piece, kg/m3} */
    public double dampDensity() {
        return dryDensity() * (1 + liquidRatio);
    }

    /** {@return the mass of the powder in it, kg} */
    public double dryMass() {
        return dampMass / (1 + liquidRatio);
    }
}
