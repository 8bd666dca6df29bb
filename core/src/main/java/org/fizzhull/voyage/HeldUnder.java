package org.fizzhull.voyage;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.check.Given;

/**
 * What a tared scale shows under a bowl of bath-warm water while a piece is held wholly under by a hoop that does not
 * touch the bowl, kg:
 *
 * <pre>  R(t) = m_0 - m_gas(t) + B(t),   B = rho_w (1 - f_p alpha) (V + V_g) - m - eps rho_w V_s</pre>
 *
 * <p>m_0 mass of the piece as it went in, m_gas carbon dioxide that has left the bowl by the time t, B the spare of
 * what is left of the piece (core/docs/physics/voyage.md): it is the force with which the hoop has to push. What
 * dissolved and what soaked into the pores is still in the bowl, so that neither appears beside B; free bubbles weigh
 * nothing. Hence R is to be compared with the weight before, and the piece floats where R is above it. The layer fills
 * as 1 - exp(-t/1 s).
 *
 * <p>The scale feels the lighter water of the plume where the flow is steady: it carries all that is in the bowl and
 * the force of the hoop. That the flow in a narrow bowl is that of the bath is not sure, so that a reading without the
 * plume (f_p = 0) is offered too. A proposal of this library,
 * checked by simulation only. Cost: one force balance. One instance serves one thread.
 */
public final class HeldUnder {
    /** The layer of gas follows its supply within this time, s (assumed), as in the full voyage. */
    private static final double LAYER_TIME = 1;

    /** Share of the time over which the growth of the spare is taken. */
    private static final double STEP = 0.02;

    /** Slowest growth of the spare that is looked at, 1/s: a hundredth of a ball's. */
    private static final double SLOWEST = 1e-6;

    /** What a voyage asks of the shape. */
    private final VoyageForm form;
    /** The balance, its gas at the pressure of half the height of the piece. */
    private final ForceBalance balance;

    /** What is left of the body at the last spare, m3. */
    private double body;

    /** Half of the height of what is left at the last spare, m, at least a tenth of that at the start. */
    private double half;

    /**
     * A form in a bowl of the bath's water.
     *
     * @param form what the voyage asks of the shape
     * @param bath the water
     */
    public HeldUnder(VoyageForm form, Bath bath) {
        Given.all("bath", bath);
        this.form = form;
        balance = new ForceBalance(new BathProperties(bath, form.halfHeight));
    }

    /**
     * {@return the reading, kg, its hollow flooded}
     *
     * @param launch the piece; its temperature is that of the bowl
     * @param seconds from when it went under, above 0
     * @param plumeFelt whether the scale feels the plume
     */
    public double reading(Launch launch, double seconds, boolean plumeFelt) {
        double spare = spare(launch, seconds, plumeFelt);
        double dissolved = launch.volumeRatio() * form.volume - body;
        // carbon dioxide that left the bowl as gas is no longer on the scale
        double escaped = balance.bodyDensity
                * balance.gasCapacity
                * balance.gasShareReachingSurface(form.halfHeight)
                * PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS
                * dissolved;
        return launch.piece().mass() - escaped + spare;
    }

    /**
     * {@return spare of what is left of it after so many seconds wholly under, all of it wet, kg}
     *
     * @param launch the piece; its temperature is that of the bowl
     * @param seconds from when it went under, above 0
     * @param plumeFelt whether the scale feels the plume
     */
    public double spare(Launch launch, double seconds, boolean plumeFelt) {
        balance.set(launch, form.volume);
        Stage stage = form.flooded;
        ErosionGrid grid = stage.grid();
        // the front, in the depth of the table of the shape
        double stretch = Math.cbrt(launch.volumeRatio());
        double eroded = balance.recession * launch.surfaceRatio() / stretch * seconds;
        double steps = Math.min(grid.cells, eroded / grid.step);
        body = grid.volumeAfter(steps) * launch.volumeRatio();
        half = Math.max(0.1 * form.halfHeight, form.halfHeight * stretch - balance.recession * seconds);
        double front = grid.areaAfter(steps) * stretch * stretch * launch.surfaceRatio();
        // gas that clings and gas that rises, both filling up with the layer
        double flux = balance.flux(balance.water.molarVolume);
        double filled = 1 - Math.exp(-seconds / LAYER_TIME);
        double layer = balance.fullLayer(flux, stage.facePerPlan()) * filled;
        double gas = ForceBalance.clingingGasVolume(layer, front, body);
        double plume = balance.plume(flux * stage.facePerPlan() * launch.surfaceRatio()) * filled;
        double lifting = plumeFelt ? balance.lifting(plume) : balance.water.density;
        // what is left: without the part of a topping that has come off
        double displaced = body + gas + stage.insetVolume() - form.toppingLoss.volume(eroded);
        double left = balance.bodyDensity * body + form.insetMass - form.toppingLoss.mass(eroded);
        return ForceBalance.spare(lifting, displaced, left, balance.soaked(balance.skinDepth(seconds), front, body));
    }

    /**
     * {@return how wide it still is after so many seconds wholly under, m, as it lies: of an outline that is not
     * round as a disc of its area}
     *
     * @param launch the piece; its temperature is that of the bowl
     * @param seconds from when it went under, above 0
     */
    public double leftAcross(Launch launch, double seconds) {
        spare(launch, seconds, true);
        return form.planDiameter * half / form.halfHeight;
    }

    /**
     * {@return spare, kg, at the moment a sunk piece let go of the bottom if it came up after so many seconds: 0 for
     * a piece that truly did} The way up is taken off by its closed form.
     *
     * @param launch the piece; its temperature is that of the bowl
     * @param up time when it came up, s
     */
    public double spareLettingGo(Launch launch, double up) {
        double before = spare(launch, up * (1 - STEP), true);
        double growth = (spare(launch, up, true) - before) / (STEP * up) / (balance.water.density * body);
        // the time of the way up, from rest, is taken off
        double way = Math.max(0, balance.water.bathDepth() - 2 * half);
        double lag =
                form.resistance.lag(Math.max(growth, SLOWEST), way, body, form.planDiameter * half / form.halfHeight);
        return spare(launch, Math.max(STEP * up, up - lag), true);
    }
}
