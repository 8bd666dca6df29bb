package org.fizzhull.validation.check;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.Recession;
import org.fizzhull.fizz.WetSkin;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.validation.published.Fritz1935;
import org.fizzhull.validation.published.KozenyCarman;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;
import org.fizzhull.voyage.VoyageParameters;

/** Gas at a fizzing surface, in the water of {@link Bath}. */
public final class FizzChecks extends Bindings {
    private static final FizzParameters USUAL = FizzParameters.standard();

    public FizzChecks() {
        super("fizz");
        bind("wet-molar-volume", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            return 1e3 * Gas.wetMolarVolume(bath.temperature(), in.number("p_Pa"), bath.vapourPressure());
        });
        bind("contact-coverage", in -> GasLayer.contactCoverage(in.number("flux_m_per_s")));
        bind("projected-coverage", in -> GasLayer.coverage(in.number("flux_m_per_s")));
        bind("layer-ratio", in -> switch (in.word("of")) {
            case "monolayer" -> GasLayer.MONOLAYER;
            case "usual" -> USUAL.layerRatio();
            default -> throw new IllegalArgumentException(in.word("of"));
        });
        bind("layer-between", in -> {
            double layer = GasLayer.thickness(USUAL, in.number("flux_m_per_s"));
            return layer >= in.millimetres("low_mm") && layer <= in.millimetres("high_mm") ? 1 : 0;
        });
        bind("sorptivity", in -> 1e3 * Math.sqrt(2 * wicking(in) / in.number("eps")));
        bind("drift-velocity", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            return Plume.driftVelocity(bath.surfaceTension(), bath.density());
        });
        bind("plume", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            double plan = Math.PI * Math.pow(in.millimetres("R_mm"), 2);
            double drift = Plume.driftVelocity(bath.surfaceTension(), bath.density());
            return Plume.gasFraction(in.number("Q_m3_per_s") / plan, drift);
        });
        bind("departure", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            double gas = in.has("gas_kg_per_m3") ? in.number("gas_kg_per_m3") : 0;
            double tension = in.has("sigma") ? in.number("sigma") : bath.surfaceTension();
            return 1e3 * Fritz1935.departureDiameter(in.number("angle_deg"), tension, bath.density() - gas);
        });
        bind("spreading-departure", in -> switch (in.word("of")) {
            case "usual" -> 1e3 * USUAL.bubbleDiameter();
            default -> throw new IllegalArgumentException("no bubble " + in.word("of"));
        });
        bind("permeability", in -> KozenyCarman.permeability(in.number("eps"), in.number("d_um") / 1e6));
        bind("pore-radius", in -> 1e6 * KozenyCarman.poreRadius(in.number("eps"), in.number("d_um") / 1e6));
        bind("capillary", in -> pull(in) / 1e3);
        bind("soaking-time", in -> {
            double permeability = KozenyCarman.permeability(in.number("eps"), in.number("d_um") / 1e6);
            double viscosity = Patek2009Viscosity.viscosity(in.celsius("t_C"));
            return KozenyCarman.soakingTime(
                    in.millimetres("way_mm"), permeability, pull(in), in.number("eps"), viscosity);
        });
        bind("warmth", in -> {
            double warm = Recession.speed(USUAL, in.celsius("warm_C"), 0.425, 4.6);
            return warm / Recession.speed(USUAL, in.celsius("cool_C"), 0.425, 4.6);
        });
        bind("warmth-published", java.util.Objects.requireNonNull(ours().get("warmth")));
    }

    /** Half the square of depth over time, times the porosity, of a body without gas, m2/s. */
    private static double wicking(Inputs in) {
        double flux = 1e-6;
        double wicking = WetSkin.wicking(in.celsius("t_C"));
        double depth = WetSkin.steadyDepth(VoyageParameters.standard().wetSkinDepth(), wicking, in.number("eps"), flux);
        return depth * flux;
    }

    private static double pull(Inputs in) {
        double radius = KozenyCarman.poreRadius(in.number("eps"), in.number("d_um") / 1e6);
        double tension = Bath.at(in.celsius("t_C")).surfaceTension();
        return KozenyCarman.capillaryPressure(radius, tension, in.number("angle_deg"));
    }
}
