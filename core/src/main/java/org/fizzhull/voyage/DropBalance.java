package org.fizzhull.voyage;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.Recession;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.shape.Shape;

/**
 * The balance of a piece held wholly under water at the moment of the drop: what it could carry before it sinks, in kg.
 * Above 0 it floats up, below 0 it goes down. The layer of clinging gas is full (it fills within a second).
 *
 * <p>One instance serves one thread: it keeps the water's properties of the last temperature.
 */
public final class DropBalance {
    /** Clinging gas is at most this share of the volume (assumed). */
    private static final double MOST_GAS = 0.3;

    private final double volume;
    private final double surface;
    private final double planArea;
    private final double insetVolume;
    private final double hullVolume;
    private final Waters water;

    /** The balance of a shape in a bath, just under the surface. */
    public DropBalance(Shape shape, Bath bath) {
        volume = shape.volume();
        surface = shape.surface();
        planArea = shape.planArea();
        insetVolume = shape.insetVolume();
        hullVolume = shape.hullVolume();
        water = new Waters(bath, shape.extents().height() / 2);
    }

    /**
     * Volume ratio of a mould whose every size is off by the same small length: each face moves by half of it.
     *
     * @param sizeError error of a size across, m
     */
    public double volumeRatio(double sizeError) {
        return 1 + 0.5 * surface * sizeError / volume;
    }

    /** Spare of still water, kg: displaced mass at a temperature (K) less the mass (kg), the hollow flooded. */
    public double still(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return water.density * (volume * volumeRatio + insetVolume) - mass;
    }

    /** Spare of a boat, kg: displaced mass with the hollow dry and the rim at the water less the mass (kg). */
    public double boat(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return water.density * hullVolume * volumeRatio - mass;
    }

    /**
     * Spare of the fizzing piece, kg, the hollow flooded.
     *
     * @param mass of everything, kg
     * @param insetMass of what does not fizz, kg
     * @param temperature of the bath, K
     * @param volumeRatio of {@link #volumeRatio}
     * @param surfaceRatio true surface over the computed one
     */
    public double fizzing(
            double mass,
            double insetMass,
            double temperature,
            double volumeRatio,
            double surfaceRatio,
            Makeup makeup,
            FizzParameters fizz,
            VoyageParameters voyage) {
        water.at(temperature);
        double body = volume * volumeRatio;
        double scale = Math.cbrt(volumeRatio);
        double wet = surface * scale * scale * surfaceRatio;
        double density = (mass - insetMass) / body;
        double porosity = 1 - density / makeup.trueDensity();
        double xi = makeup.gasCapacity();
        double speed = Recession.speed(fizz, temperature, porosity, xi);
        double flux = Gas.flux(speed, density, xi, fizz.gasShare(), water.molarVolume);
        double layer = xi < GasLayer.LEAST_CAPACITY ? 0 : GasLayer.thickness(fizz, flux);
        double gas = Math.min(layer * wet, MOST_GAS * body);
        double plume = Plume.gasFraction(flux * wet / (planArea * scale * scale), water.surfaceTension, water.density);
        double soaked = voyage.wettedShare() * porosity * water.density * body;
        double lift = water.density * (1 - voyage.plumeFactor() * plume) * (body + gas + insetVolume);
        return lift - mass - soaked;
    }
}
