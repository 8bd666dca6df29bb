package org.fizzhull.voyage;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.Recession;
import org.fizzhull.fizz.WetSkin;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.piece.Piece;

/**
 * Vertical force balance of a fizzing piece in the bath, divided by g (kg; positive: it rises):
 *
 * <pre>  B = rho_w (1 - f_p alpha) (V + V_g) - m - eps rho_w V_s,   V_g = min(l A, 0.3 V)</pre>
 *
 * <p>rho_w density of the water (kg/m3), f_p plume factor, alpha gas fraction of the plume, V what displaces water
 * (m3), V_g clinging gas (m3; 0.3 is assumed), l its thickness (m), A wet area (m2), m mass (kg), eps porosity, V_s
 * volume of wet pores and the powder between them (m3; {@link WetSkin}). Derivation and sources:
 * docs/physics/voyage.md, 2 to 5.
 *
 * <p>Drop, quick and full voyage share it, so that they cannot disagree on a force. It knows no shape: volumes, areas
 * and depths come from the caller. Use: {@link #set} once a launch, then the parts of the balance at each moment. Holds
 * the inputs of one draw and is reused for the next, so that a step in time allocates nothing. One instance serves one
 * thread.
 */
final class ForceBalance {
    /** Clinging gas is at most this share of the volume (assumed). */
    private static final double MOST_GAS = 0.3;

    /** The water at the temperature of the launch. */
    final BathProperties water;

    /** Of the pressed body, kg/m3. */
    double bodyDensity;

    /** Of the pressed body. */
    double porosity;

    /** Carbon dioxide still obtainable, mol/kg. */
    double gasCapacity;

    /** Speed of a wet surface, m/s. */
    double recession;

    /** Parameters of fizzing of the launch, with what the mix holds besides acid and bicarbonate counted in. */
    private FizzParameters fizz = FizzParameters.standard();
    /** f_p, part of the gas fraction of the plume that lightens the water; no unit, may be negative. */
    private double plumeFactor;
    /** Depth of the wet skin once pull, front and gas balance, m. */
    private double skinSteady;
    /** Time in which it gets there, s. */
    private double skinTime;

    ForceBalance(BathProperties water) {
        this.water = water;
    }

    /** Takes what a launch fixes; the computed volume of the body, m3. */
    void set(Launch launch, double volume) {
        double kelvin = launch.temperature();
        Piece.Makeup makeup = launch.piece().makeup();
        water.at(kelvin);
        fizz = launch.fizz().in(makeup.additives());
        plumeFactor = launch.voyage().plumeFactor();
        bodyDensity = launch.density(volume);
        porosity = Math.max(0, 1 - bodyDensity / makeup.trueDensity());
        gasCapacity = makeup.gasCapacity();
        recession = Recession.speed(fizz, kelvin, porosity, gasCapacity);
        // what works against the water in the pores: gas that leaves, and the front that eats what is wet
        double out = flux(water.molarVolume) + porosity * recession;
        skinSteady = WetSkin.steadyDepth(launch.voyage().wetSkinDepth(), water.wicking, porosity, out);
        skinTime = WetSkin.fillingTime(skinSteady, porosity, out);
    }

    /** Whether the speed met an end of the range that is believed. */
    boolean speedHeld() {
        return recession != Recession.unbounded(fizz, water.temperature(), porosity, gasCapacity);
    }

    /** Gas volume per wet area and time, m/s, for a volume of a mole of wet gas, m3/mol. */
    double flux(double molarVolume) {
        return Gas.flux(recession, bodyDensity, gasCapacity, fizz.gasShare(), molarVolume);
    }

    /** Thickness of the full layer of gas, m, at a flux, on a body of so many times its plan area. */
    double fullLayer(double flux, double facePerPlan) {
        return gasCapacity < Effervescence.LEAST_CAPACITY
                ? 0
                : GasLayer.thickness(fizz, flux) * GasLayer.attitudeFactor(fizz, 1 / facePerPlan);
    }

    /** Gas fraction of the plume, for gas volume per plan area and time, m/s. */
    double plume(double superficialVelocity) {
        return Plume.gasFraction(superficialVelocity, water.driftVelocity);
    }

    /** Volume of the clinging gas, m3, for a layer, m, on a wet area, m2, of a body, m3. */
    static double clingingGasVolume(double layer, double wetArea, double body) {
        double clinging = layer * wetArea;
        double most = MOST_GAS * body;
        return clinging < most ? clinging : most;
    }

    /** Density of the water as it lifts, kg/m3, in a plume. */
    double lifting(double plume) {
        return water.density * (1 - plumeFactor * plume);
    }

    /** Depth of the wet skin at a time, s, in m. */
    double skinDepth(double time) {
        return WetSkin.depth(skinSteady, skinTime, time);
    }

    /** Whether a skin, m, is as deep as it gets. */
    boolean isSteady(double skin) {
        return skin == skinSteady;
    }

    /** Water in the pores, kg, behind a skin, m, on a front, m2, of a body, m3. */
    double soaked(double skin, double front, double body) {
        return porosity * water.density * WetSkin.volume(skin, front, body);
    }

    /** Share of the carbon dioxide that reaches the surface as gas from a depth, m. */
    double gasShareReachingSurface(double depth) {
        return Gas.seen(fizz.gasShare(), depth);
    }

    /**
     * The balance, kg: what more the piece could carry.
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
