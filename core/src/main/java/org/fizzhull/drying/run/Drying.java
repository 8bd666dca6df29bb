package org.fizzhull.drying.run;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.quantity.check.Given;

/**
 * From damp to dry: the course of one piece from the press through its phases. Order of events (docs/physics/drying.md,
 * 6): the prompt reaction on all the water, then the water shares itself out with the sorbents, then the clock starts.
 *
 * <pre>  A dC/dt = d/dd[A (D_e/c) rho_sat(T) da_w/dd] + A S,   D_e = D_va eps_g^(4/3)</pre>
 *
 * <pre>  at d = 0: flux = k_s rho_sat (a_w - RH)</pre>
 *
 * <p>C water per volume (kg/m3), d inward depth (m), A(d) area of the front at that depth (m2), D_va diffusivity of
 * vapour in air (m2/s), eps_g porosity without liquid, c shape factor, rho_sat vapour in saturated air (kg/m3), a_w
 * water activity, S water made by the early reaction (kg/(m3 s)), k_s conductance of the skin (m/s), RH relative
 * humidity of the air.
 *
 * <p>Range: pieces whose pores the liquid fills to less than about a tenth, so that no liquid moves; 0 to 60 C. Error:
 * the water balance closes to 1e-9; D_e is known to a factor 1.6, h_m to a factor 1.5. Implicit two-stage SDIRK of
 * order 2 (Alexander 1977), finite volumes along d. Equations and sources: docs/physics/drying.md, 2 to 7. Stateless:
 * safe for use by several threads.
 *
 * <p>What calls what: this class, {@code DryingRun} for one course, {@code DryingWalk} for its steps in time,
 * {@link org.fizzhull.drying.solver.DryingSolver} for one step. Cost: a coarse course about a millisecond, a fine one
 * more by the number of its cells and steps.
 *
 * <pre>{@code
 * DryingCourse course = Drying.run(input, List.of(phase), DryingParameters.standard(), Resolution.FINE);
 * OptionalDouble ready = course.readyAfter(); // s from pressing
 * }</pre>
 */
public final class Drying {
    /** From a_film 0.72 down to 50 %, the humidity in which a plain mix keeps: 2.75 standard uncertainties of a_film. */
    private static final double SAFE_MARGIN = 0.22;

    /** Driest air that is told as safe, relative humidity (judgement). */
    private static final double LEAST_SAFE = 0.05;

    /** Share of the removable water that must be gone for a piece to be ready. */
    public static final double READY = 0.95;

    /** Of water, kg/m3, rounded. */
    static final double WATER_DENSITY = 1000;

    private Drying() {}

    /**
     * {@return the whole course through all phases, in order} At least one phase.
     *
     * @param input the mix as drying sees it
     * @param phases phases in order, at least one
     * @param parameters uncertain parameters of drying
     * @param resolution how finely the depth is divided
     * @throws IllegalArgumentException for no phase
     */
    public static DryingCourse run(
            DryingInput input, List<DryingPhase> phases, DryingParameters parameters, Resolution resolution) {
        return new DryingRun(input, parameters, resolution, false, 0).course(phases);
    }

    /**
     * {@return the same; a piece that is not ready by then is left in its last phase before storage, beside the course,
     * until it is or {@code wait} seconds have passed from pressing} {@link DryingCourse#readyAfter} may then lie
     * beyond the end.
     *
     * @param input the mix as drying sees it
     * @param phases phases in order, at least one
     * @param wait time from pressing up to which a piece that is not ready is followed, s
     * @param parameters uncertain parameters of drying
     * @param resolution how finely the depth is divided
     * @throws IllegalArgumentException for no phase
     */
    public static DryingCourse runAndWait(
            DryingInput input,
            List<DryingPhase> phases,
            double wait,
            DryingParameters parameters,
            Resolution resolution) {
        return new DryingRun(input, parameters, resolution, false, wait).course(phases);
    }

    /**
     * {@return the course of one phase that ends once the piece is ready, or with the phase}
     *
     * @param input the mix as drying sees it
     * @param phase the conditions
     * @param parameters uncertain parameters of drying
     * @param resolution how finely the depth is divided
     */
    public static DryingCourse untilReady(
            DryingInput input, DryingPhase phase, DryingParameters parameters, Resolution resolution) {
        Given.all("phase", phase);
        return new DryingRun(input, parameters, resolution, true, 0).course(List.of(phase));
    }

    /**
     * {@return the water activity of the film solution of this mix, further salts counted}
     *
     * @param input the mix as drying sees it
     * @param parameters uncertain parameters of drying
     */
    public static double filmActivity(DryingInput input, DryingParameters parameters) {
        return parameters.filmActivity() * input.saltActivity();
    }

    /**
     * {@return the safe humidity of a mix; where hydrate and salts leave no range, {@code above} is at least {@code below}}
     *
     * @param input the mix as drying sees it
     * @param parameters uncertain parameters of drying
     */
    public static SafeHumidity safeHumidity(DryingInput input, DryingParameters parameters) {
        double film = filmActivity(input, parameters);
        Hydrates hydrates = input.hydrates();
        double most = hydrates.takes() > 0 ? Hydrates.TAKING_HUMIDITY : 1;
        double below = Math.max(LEAST_SAFE, Math.min(most, film - SAFE_MARGIN));
        return new SafeHumidity(below, hydrates.gives() > 0 ? Math.min(Hydrates.GIVING_HUMIDITY, film) : 0);
    }

    /**
     * {@return the conductance K from skin to room, m/s: boundary layer, film with its seals, and air gap in series; 0
     * in a tight wrap}
     *
     * @param phase how and where the piece stands
     * @param parameters uncertain parameters of drying
     */
    public static double surface(DryingPhase phase, DryingParameters parameters) {
        double resistance = 1 / (parameters.transfer() * (phase.fan() ? parameters.fanFactor() : 1));
        if (phase.gap() > 0) {
            resistance += phase.gap() / phase.air().diffusivity();
        }
        if (phase.wrap().present()) {
            double film = phase.wrap().conductance(phase.air().temperature(), parameters.sealLeak());
            if (film == 0) {
                return 0;
            }
            resistance += 1 / film;
        }
        return 1 / resistance;
    }

    /**
     * {@return the effective diffusivity of vapour through the pores, m2/s: D_va eps_g^(4/3), Millington and Quirk's
     * dry limit}
     *
     * @param inAir diffusivity of water vapour in the air, m2/s
     * @param input the mix as drying sees it
     * @param parameters uncertain parameters of drying
     */
    public static double poreDiffusivity(double inAir, DryingInput input, DryingParameters parameters) {
        return parameters.diffusivityFactor() * inAir * Math.pow(input.airPorosity(), 4.0 / 3);
    }

    /**
     * {@return the relative humidity of the phase's air below which the piece is ready within {@code seconds}; NaN
     * where even air of 5 % RH would not do} Coarse courses, bisection to 0.1 % RH.
     *
     * @param input the mix as drying sees it
     * @param phase the conditions
     * @param parameters uncertain parameters of drying
     * @param seconds time, s
     */
    public static double humidityFor(
            DryingInput input, DryingPhase phase, DryingParameters parameters, double seconds) {
        // bisection between air in which it is ready in time and the air in which it never dries. Drier air is taken to
        // dry
        // sooner, so that 5 % tells whether any does; a closed room is not brought to 5 % in time, but its own air may
        // do
        double low = 0.05;
        double high = filmActivity(input, parameters);
        if (!readyWithin(input, phase, parameters, seconds, low)) {
            low = phase.air().humidity();
            if (!readyWithin(input, phase, parameters, seconds, low)) {
                return Double.NaN;
            }
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

    /** Whether the piece is ready within so many seconds of a phase in air of another humidity, coarsely computed. */
    private static boolean readyWithin(
            DryingInput input, DryingPhase phase, DryingParameters parameters, double seconds, double humidity) {
        DryingPhase shorter = phase.in(phase.air().withHumidity(humidity)).lasting(seconds);
        return untilReady(input, shorter, parameters, Resolution.COARSE)
                .readyAfter()
                .isPresent();
    }
}
