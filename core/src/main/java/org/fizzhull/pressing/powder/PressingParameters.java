package org.fizzhull.pressing.powder;

import java.io.Serializable;

/**
 * The uncertain parameters of pressing. Priors stand in docs/physics/uncertainty.md, 2; each component is fed by one
 * factor of a forecast.
 *
 * <p>Immutable; nothing in the physics knows how uncertain a number is. Ranges are checked where the record is made.
 *
 * @param pressScale Pk, pressure that doubles the compaction index of free-flowing powders, Pa; that of finer ones is a
 *     share of it, by grain size (docs/physics/packing.md, 4); 90 kPa, lognormal one sigma factor 3 until one piece was
 *     weighed, then 1.3 (assumed; docs/physics/packing.md, 4)
 * @param packingError error of the packing model on the solid fraction; 0 +- 0.015 (spread between two models)
 * @param bulking B, share by which damp powder stands looser; 0.25 +- 0.08 (assumed)
 * @param bulkingPressure Pb, pressure that halves it, Pa; 20 kPa, factor 2 (assumed)
 * @param wallFriction mu; 0.35 +- 0.12 (from memory)
 * @param lateralRatio sideways over downward pressure; 0.43 +- 0.07 (Jaky, second-hand)
 * @param springBack kappa, rise of 1/phi per factor e of pressure let go; 0.005, 0.002 to 0.012
 *     (docs/physics/packing.md, 5)
 * @param pendularLimit saturation where bridges merge; 0.30 +- 0.05 (from memory)
 * @param capillaryLimit saturation where pores fill; 0.80 +- 0.05 (from memory)
 * @param bridgeEfficiency share of the ideal bridge strength real grains reach; 0.4, factor 1.8 (assumed)
 * @param roughness depth of the liquid film lost in rough faces, m; 0.3 um, factor 3, never above a hundredth of the
 *     grain (assumed)
 */
public record PressingParameters(
        double pressScale,
        double packingError,
        double bulking,
        double bulkingPressure,
        double wallFriction,
        double lateralRatio,
        double springBack,
        double pendularLimit,
        double capillaryLimit,
        double bridgeEfficiency,
        double roughness)
        implements Serializable {

    /**
     * Checks the ranges.
     *
     * @param pressScale Pk, Pa, above 0
     * @param packingError error of the packing model on the solid fraction, between -0.2 and 0.2
     * @param bulking B, 0 to below 1
     * @param bulkingPressure Pb, Pa, above 0
     * @param wallFriction mu, 0 or more
     * @param lateralRatio Kr, 0 to below 1
     * @param springBack kappa, 0 or more
     * @param pendularLimit saturation where bridges merge, above 0, below {@code capillaryLimit}
     * @param capillaryLimit saturation where pores fill, below 1
     * @param bridgeEfficiency share of the ideal bridge strength, above 0
     * @param roughness depth of the liquid film lost in rough faces, m, 0 or more
     * @throws IllegalArgumentException for a value outside its range, or NaN
     */
    public PressingParameters {
        boolean sound = pressScale > 0
                && bulkingPressure > 0
                && Math.abs(packingError) < 0.2
                && bulking >= 0
                && bulking < 1
                && wallFriction >= 0
                && lateralRatio >= 0
                && lateralRatio < 1
                && springBack >= 0
                && pendularLimit > 0
                && pendularLimit < capillaryLimit
                && capillaryLimit < 1
                && bridgeEfficiency > 0
                && roughness >= 0;
        if (!sound) {
            throw new IllegalArgumentException("pressing parameters out of range");
        }
    }

    /** {@return the defaults, docs/physics/uncertainty.md, 2} */
    public static PressingParameters standard() {
        return new PressingParameters(90e3, 0, 0.25, 20e3, 0.35, 0.43, 0.005, 0.30, 0.80, 0.4, 0.3e-6);
    }

    /**
     * {@return the same with another press scale, Pa: what one weighed piece tells}
     *
     * @param pascal pressure that doubles the compaction index of free-flowing powders, Pa
     */
    public PressingParameters withPressScale(double pascal) {
        return new PressingParameters(
                pascal,
                packingError,
                bulking,
                bulkingPressure,
                wallFriction,
                lateralRatio,
                springBack,
                pendularLimit,
                capillaryLimit,
                bridgeEfficiency,
                roughness);
    }
}
