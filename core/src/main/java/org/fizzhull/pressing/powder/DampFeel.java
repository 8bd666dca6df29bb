package org.fizzhull.pressing.powder;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Liquid;

/**
 * Whether a pressed damp piece holds, crumbles or is too wet (docs/physics/packing.md, 7).
 *
 * <p>It holds if the bridges of liquid between its grains carry its own weight,
 *
 * <pre>  sigma_u &gt;= rho g H</pre>
 *
 * <p>sigma_u unconfined strength (Pa), rho density of the damp piece (kg/m3), g gravity (m/s2), H height (m); see
 * {@link WetStrength}. It is too wet if the bridges merge, if the water starts the fizz in the bowl, or if the mix makes
 * water faster than the piece can dry. Not checked against pieces. Used by {@link Press} alone. Immutable.
 *
 * @param parameters parameters of the draw
 * @param blend mix of powders and liquid, per kg of dry powder
 * @param powders the same powders, at the densities of the draw
 * @param liquid the liquid as pressed, which may be another amount than the blend's
 * @param reaction rates of the reaction in the bowl
 * @param room air that the piece will dry in
 */
record DampFeel(
        PressingParameters parameters,
        Blend blend,
        Powders powders,
        Liquid liquid,
        EarlyReaction reaction,
        MixingRoom room) {
    /** Oil soaked up by starch and clay over the water that they soak up (assumed). */
    private static final double OIL_UPTAKE = 1.0 / 3;

    /** Largest depth of the liquid film in rough faces over the grain size (assumed). */
    private static final double ROUGHEST = 0.01;

    /** {@return the density of the damp mix at a solid fraction, kg/m3} */
    double density(double phi) {
        return phi * powders.trueDensity() * (1 + liquid.ratio());
    }

    /** {@return the stress of the piece's own weight at its foot, Pa} */
    double selfWeight(double phi, MouldDimensions mould) {
        return density(phi) * PhysicalConstants.GRAVITY * mould.height();
    }

    /** {@return the volume of air over that of the piece, at a solid fraction and a saturation of the pores} */
    static double air(double phi, double saturation) {
        return (1 - phi) * Math.max(0, 1 - saturation);
    }

    /**
     * {@return the feel of a piece} Too wet: bridges merge (saturation above the pendular limit), the mix foams as the water
     * goes in, or its films make water faster than the room takes it. Crumbles: nothing presses the grains together, or the
     * unconfined strength is below the stress of the piece's own weight.
     *
     * @param mean pressure averaged over the mould, Pa
     * @param phi solid fraction
     * @param saturation volume of liquid over that of the pores
     * @param strength tensile strength, Pa
     * @param mould its height, volume and surface
     * @param notices takes what a maker should know of it
     */
    Pressed.Feel feel(
            double mean, double phi, double saturation, double strength, MouldDimensions mould, List<Notice> notices) {
        if (saturation > parameters.pendularLimit()) {
            return Pressed.Feel.TOO_WET;
        }
        if (reaction.promptShare(liquid.water(), blend.moles().gas()) > EarlyReaction.FOAMS) {
            notices.add(new Notice("foams", "So much water sets the fizz off in the bowl: the mix foams up."));
            return Pressed.Feel.TOO_WET;
        }
        // free water, kg per m3 of piece, and the time that the room takes to remove it
        double water = liquid.water() * phi * powders.trueDensity();
        double time = water == 0 ? 0 : room.dryingTime(water, air(phi, saturation), mould.volume() / mould.surface());
        if (!(reaction.reactionNumber(time) < 1)) {
            notices.add(
                    new Notice("reacts-before-dry", "In this air the mix makes water faster than the piece can dry."));
            return Pressed.Feel.TOO_WET;
        }
        double unconfined = WetStrength.unconfined(strength, parameters.lateralRatio());
        return mean > 0 && unconfined >= selfWeight(phi, mould) ? Pressed.Feel.HOLDS : Pressed.Feel.CRUMBLES;
    }

    /**
     * {@return the tensile strength, Pa, 0 without liquid or without pores} Bridges form from the liquid that rough faces and grains leave over;
     * they are complete at saturation 0.02 and weaker in proportion below.
     *
     * @param phi solid fraction
     * @param saturation volume of liquid over that of the pores
     */
    double strength(double phi, double saturation) {
        double lost = filmLoss() + blend.uptake() * (1 - liquid.oil() + OIL_UPTAKE * liquid.oil());
        double ratio = liquid.ratio();
        double bridging = ratio == 0 ? 0 : saturation * (1 - lost / ratio);
        double complete = Math.max(0, Math.min(1, bridging / DampPacking.COMPLETE_BRIDGES));
        if (complete == 0 || phi >= 1) {
            return 0;
        }
        return complete
                * parameters.bridgeEfficiency()
                * WetStrength.at(
                        Math.min(1, saturation),
                        1 - phi,
                        liquid.surfaceTension(),
                        powders.sauterDiameter(),
                        parameters.pendularLimit(),
                        parameters.capillaryLimit());
    }

    /**
     * Liquid lost in rough faces, kg per kg of dry powder: sum of 6 delta y/d, delta depth of the film (m), y volume share, d
     * grain size (m).
     */
    private double filmLoss() {
        double sum = 0;
        for (int i = 0; i < powders.share.length; i++) {
            double d = powders.sizes.diameter[i];
            sum += 6 * Math.min(parameters.roughness(), ROUGHEST * d) * powders.share[i] / d;
        }
        return sum * liquid.density() / powders.trueDensity();
    }
}
