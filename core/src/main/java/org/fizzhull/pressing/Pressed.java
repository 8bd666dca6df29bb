package org.fizzhull.pressing;

import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * A damp piece as it comes out of its mould, made by {@link Press}. SI. Immutable.
 *
 * @param topPressure pressure under the plunger, Pa; 0 where the mix stands looser than it pours
 * @param meanPressure pressure averaged over the mould, Pa
 * @param solidFraction phi, volume of dry solids over volume of the piece
 * @param trueDensity density of the dry solids, kg/m3
 * @param liquidRatio M, kg of liquid per kg of dry powder
 * @param saturation S, volume of liquid over volume of pores
 * @param airPorosity eps_g, volume of pores without liquid over volume of the piece
 * @param dampMass mass of the damp piece, kg
 * @param handForce force on the whole face, N
 * @param strength tensile strength of the damp piece, Pa
 * @param selfWeight stress of its own weight at the foot, Pa
 * @param modelSpread phi of the second packing model less this one; 0 for a draw and where none was asked
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

    /** {@return the mass of dry powder over the volume of the piece, kg/m3} */
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
