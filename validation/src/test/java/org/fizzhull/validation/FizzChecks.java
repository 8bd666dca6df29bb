package org.fizzhull.validation;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Fritz1935;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.KozenyCarman;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.Recession;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.Patek2009Viscosity;

/** Gas at a fizzing surface, in the water of {@link Bath}. */
final class FizzChecks extends Bindings {
    FizzChecks() {
        super("fizz");
        bind("wet-molar-volume", in -> {
            Bath bath = Bath.at(in.celsius("t_C"));
            return 1e3 * Gas.wetMolarVolume(bath.temperature(), in.number("p_Pa"), bath.vapourPressure());
        });
        bind("coverage", in -> GasLayer.coverage(FizzParameters.standard(), in.number("flux_m_per_s")));
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
            double warm = Recession.speed(FizzParameters.standard(), in.celsius("warm_C"), 0.425, 4.6);
            return warm / Recession.speed(FizzParameters.standard(), in.celsius("cool_C"), 0.425, 4.6);
        });
    }

    private static double pull(Inputs in) {
        double radius = KozenyCarman.poreRadius(in.number("eps"), in.number("d_um") / 1e6);
        double tension = Bath.at(in.celsius("t_C")).surfaceTension();
        return KozenyCarman.capillaryPressure(radius, tension, in.number("angle_deg"));
    }
}
