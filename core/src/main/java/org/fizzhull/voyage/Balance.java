package org.fizzhull.voyage;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.Recession;
import org.fizzhull.piece.Makeup;

/**
 * Weight against lift of a fizzing piece, written once for the drop, the quick voyage and the full one:
 * {@code rho (1 - f alpha) (V + V_gas) - m - s eps rho V}. A mutable holder of what a draw fixes, so that a step
 * allocates nothing.
 */
final class Balance {
    /** Clinging gas is at most this share of the volume (assumed). */
    private static final double MOST_GAS = 0.3;

    /** Steps of soaking, in time constants, up to which the exponential is approximated. */
    private static final double SMALL_STEP = 0.25;

    final Waters water;

    /** Of the pressed body, kg/m3. */
    double bodyDensity;

    /** Of the pressed body. */
    double porosity;

    /** Carbon dioxide still obtainable, mol/kg. */
    double gasCapacity;

    /** Speed of a wet surface, m/s. */
    double recession;

    private FizzParameters fizz = FizzParameters.standard();
    private VoyageParameters voyage = VoyageParameters.standard();
    private double soakGrowth;
    private double soakRate;

    Balance(Waters water) {
        this.water = water;
    }

    /** Takes what a launch fixes; the computed volume of the body, m3. */
    void set(Launch launch, double volume) {
        double kelvin = launch.temperature();
        Makeup makeup = launch.piece().makeup();
        water.at(kelvin);
        fizz = launch.fizz().in(makeup.additives());
        voyage = launch.voyage();
        bodyDensity = launch.density(volume);
        porosity = 1 - bodyDensity / makeup.trueDensity();
        gasCapacity = makeup.gasCapacity();
        recession = Recession.speed(fizz, kelvin, porosity, gasCapacity);
        soakGrowth = Soaking.growth(voyage, gasCapacity);
        soakRate = 1 / voyage.soakTime();
    }

    /** Whether the speed met an end of the range that is believed. */
    boolean speedHeld() {
        return recession != Recession.unbounded(fizz, water.temperature(), porosity, gasCapacity);
    }

    /** Gas volume per wet area and time, m/s, for a volume of a mole of wet gas, m3/mol. */
    double flux(double molarVolume) {
        return Gas.flux(recession, bodyDensity, gasCapacity, fizz.gasShare(), molarVolume);
    }

    /** Thickness of the full layer of gas, m, at a flux. */
    double fullLayer(double flux) {
        return gasCapacity < GasLayer.LEAST_CAPACITY ? 0 : GasLayer.thickness(fizz, flux);
    }

    /** Gas fraction of the plume, for gas volume per plan area and time, m/s. */
    double plume(double superficialVelocity) {
        return Plume.gasFraction(superficialVelocity, water.driftVelocity);
    }

    /** Volume of the clinging gas, m3, for a layer, m, on a wet area, m2, of a body, m3. */
    static double gas(double layer, double wet, double body) {
        double clinging = layer * wet;
        double most = MOST_GAS * body;
        return clinging < most ? clinging : most;
    }

    /** Density of the water as it lifts, kg/m3, in a plume. */
    double lifting(double plume) {
        return water.density * (1 - voyage.plumeFactor() * plume);
    }

    /** Share of the pores filled at a time, s. */
    double soakedShare(double time) {
        return Soaking.share(voyage, soakGrowth, time);
    }

    /** The same for {@code exp(-t/tau)}. */
    double soakedShareOf(double decay) {
        return voyage.wettedShare() + soakGrowth * (1 - decay);
    }

    /** {@code exp(-t/tau)} of soaking after a time step, s, from its value before. */
    double decayed(double decay, double step) {
        double x = step * soakRate;
        if (x > SMALL_STEP) {
            return decay * Math.exp(-x);
        }
        // five terms of the series, to 4e-7 here, in pairs: one after the other they would be half of a quick voyage
        double square = x * x;
        return decay * ((1 - x) + square * ((1.0 / 2 - x * (1.0 / 6)) + square * (1.0 / 24 - x * (1.0 / 120))));
    }

    /** Water in the pores of a body, m3, in kg, for a filled share. */
    double soaked(double share, double body) {
        return share * porosity * water.density * body;
    }

    /** Share of the carbon dioxide seen as gas from a depth, m. */
    double seen(double depth) {
        return Gas.seen(fizz.gasShare(), depth);
    }

    /**
     * Spare, kg: what more it could carry.
     *
     * @param lifting density of the lifting water, kg/m3
     * @param displaced everything that displaces water, m3
     * @param mass kg
     * @param soaked water in the pores, kg
     */
    static double spare(double lifting, double displaced, double mass, double soaked) {
        return lifting * displaced - mass - soaked;
    }
}
