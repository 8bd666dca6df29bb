package org.fizzhull.drying;

import java.util.List;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.solver.Resolution;

/**
 * From damp to dry: the course of one piece from the press through its phases. Order of events (docs/physics/drying.md,
 * 6): the prompt reaction on all the water, then the water shares itself out with the sorbents, then the clock starts.
 */
public final class Drying {
    /** Share of the removable water that must be gone for a piece to be ready. */
    public static final double READY = 0.95;

    /** Of water, kg/m3, rounded. */
    static final double WATER_DENSITY = 1000;

    private Drying() {}

    /** The whole course through all phases, in order. At least one phase. */
    public static DryingCourse run(
            DryingInput input, List<DryingPhase> phases, DryingParameters parameters, Resolution resolution) {
        return new DryingRun(input, parameters, resolution, false, 0).course(phases);
    }

    /**
     * The same; a piece that is not ready by then is left in its last phase before storage, beside the course, until it is
     * or {@code wait} seconds have passed from pressing. {@link DryingCourse#readyAfter} may then lie beyond the end.
     */
    public static DryingCourse runAndWait(
            DryingInput input,
            List<DryingPhase> phases,
            double wait,
            DryingParameters parameters,
            Resolution resolution) {
        return new DryingRun(input, parameters, resolution, false, wait).course(phases);
    }

    /** The course of one phase that ends once the piece is ready, or with the phase. */
    public static DryingCourse untilReady(
            DryingInput input, DryingPhase phase, DryingParameters parameters, Resolution resolution) {
        return new DryingRun(input, parameters, resolution, true, 0).course(List.of(phase));
    }

    /** Water activity of the film solution of this mix, further salts counted. */
    public static double filmActivity(DryingInput input, DryingParameters parameters) {
        return parameters.filmActivity() * input.saltActivity();
    }

    /** Effective diffusivity of vapour through the pores, m2/s: D_va eps_g^(4/3), Millington and Quirk's dry limit. */
    public static double poreDiffusivity(double inAir, DryingInput input, DryingParameters parameters) {
        return parameters.diffusivityFactor() * inAir * Math.pow(input.airPorosity(), 4.0 / 3);
    }

    /**
     * Relative humidity of the phase's air below which the piece is ready within {@code seconds}; NaN where even air of
     * 5 % RH would not do. Coarse courses, bisection to 0.1 % RH.
     */
    public static double humidityFor(
            DryingInput input, DryingPhase phase, DryingParameters parameters, double seconds) {
        double low = 0.05;
        double high = filmActivity(input, parameters);
        if (!readyWithin(input, phase, parameters, seconds, low)) {
            return Double.NaN;
        }
        while (high - low > 1e-3) {
            double middle = 0.5 * (low + high);
            if (readyWithin(input, phase, parameters, seconds, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean readyWithin(
            DryingInput input, DryingPhase phase, DryingParameters parameters, double seconds, double humidity) {
        DryingPhase shorter = phase.in(phase.air().withHumidity(humidity)).lasting(seconds);
        return untilReady(input, shorter, parameters, Resolution.COARSE)
                .readyAfter()
                .isPresent();
    }
}
