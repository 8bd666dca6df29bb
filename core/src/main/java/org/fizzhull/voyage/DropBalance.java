package org.fizzhull.voyage;

import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.medium.Bath;
import org.fizzhull.shape.Shape;

/**
 * The balance of a piece held wholly under water at the moment of the drop: what it could carry before it sinks, in kg.
 * Above 0 it floats up, below 0 it goes down. The layer of clinging gas is full (it fills within a second).
 *
 * <p>One instance serves one thread: it keeps the water's properties of the last temperature.
 */
public final class DropBalance {
    private final double volume;
    private final double surface;
    private final double facePerPlan;
    private final double insetVolume;
    private final double carried;
    private final BathProperties water;
    private final ForceBalance balance;

    /** The balance of a shape in a bath, just under the surface. */
    public DropBalance(Shape shape, Bath bath) {
        volume = shape.volume();
        surface = shape.surface();
        RestingAttitude rest = shape.restingAttitude();
        facePerPlan = surface / rest.planArea();
        insetVolume = shape.insetVolume();
        carried = shape.hollow().isPresent() ? BoatLimit.displaced(shape, bath.density()) : volume;
        water = new BathProperties(bath, rest.height() / 2);
        balance = new ForceBalance(water);
    }

    /**
     * Volume ratio of this body's mould; see {@link #volumeRatio(double, double, double)}.
     *
     * @param sizeError error of a size across, m
     */
    public double volumeRatio(double sizeError) {
        return volumeRatio(surface, volume, sizeError);
    }

    /**
     * Volume ratio of a mould whose every size is off by the same length, so that each face moves by half of it:
     * (1 + S e/(6 V))^3, exact for a ball and a cube; of other shapes the first order, S e/(2 V), is.
     *
     * @param surface S, m2
     * @param volume V, m3
     * @param sizeError e, of a size across, m
     */
    public static double volumeRatio(double surface, double volume, double sizeError) {
        double across = 1 + surface * sizeError / (6 * volume);
        return across * across * across;
    }

    /** Spare of still water, kg: displaced mass at a temperature (K) less the mass (kg), the hollow flooded. */
    public double still(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return ForceBalance.spare(water.density, volume * volumeRatio + insetVolume, mass, 0);
    }

    /** Spare of a boat, kg: displaced mass with the hollow dry and the rim at the water less the mass (kg). */
    public double boat(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return ForceBalance.spare(water.density, carried * volumeRatio, mass, 0);
    }

    /** Spare of the fizzing piece, kg, the hollow flooded. */
    public double fizzing(Launch launch) {
        double body = volume * launch.volumeRatio();
        double wet = surface * Math.pow(launch.volumeRatio(), 2.0 / 3) * launch.surfaceRatio();
        balance.set(launch, volume);
        double flux = balance.flux(water.molarVolume);
        double gas = ForceBalance.clingingGasVolume(balance.fullLayer(flux, facePerPlan), wet, body);
        double plume = balance.plume(flux * facePerPlan * launch.surfaceRatio());
        double soaked = balance.soaked(balance.skinDepth(0), wet, body);
        return ForceBalance.spare(
                balance.lifting(plume), body + gas + insetVolume, launch.piece().mass(), soaked);
    }
}
