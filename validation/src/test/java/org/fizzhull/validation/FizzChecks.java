package org.fizzhull.validation;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.Plume;
import org.fizzhull.medium.Bath;

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
    }
}
