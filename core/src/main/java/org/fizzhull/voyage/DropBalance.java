package org.fizzhull.voyage;

import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * The balance of a piece held wholly under water at the moment of the drop: what it could carry before it sinks, in kg.
 * Above 0 it floats up, below 0 it goes down.
 *
 * <pre>{@code
 * double spare = new DropBalance(shape, bath).fizzing(Launch.of(piece, bath, fizz, voyage)); // kg
 * }</pre>
 *
 * <p>Force over g by docs/physics/voyage.md, 2, with the layer of clinging gas full (it fills within a second); with no
 * gas it is {@code rho_w V - m}. Cost: one evaluation of each law, no integration. One instance serves one thread: it
 * keeps the water's properties of the last temperature.
 */
public final class DropBalance {
    /** Volume of the shape as computed, m3. */
    private final double volume;
    /** Surface of the shape as computed, m2. */
    private final double surface;
    /** Surface over plan area in the attitude the piece takes. */
    private final double facePerPlan;
    /** What an inset displaces beside the body, m3. */
    private final double insetVolume;
    /** What a boat displaces when water gets in, m3; of a solid shape its volume. */
    private final double carried;
    /** The water half of the height of the piece below the surface. */
    private final BathProperties water;
    /** The balance, set anew for each launch. */
    private final ForceBalance balance;

    /**
     * The balance of a shape in a bath, just under the surface.
     *
     * @param shape form of the piece
     * @param bath the water
     */
    public DropBalance(Shape shape, Bath bath) {
        this(shape, shape.restingAttitude(), bath);
    }

    /**
     * The balance of a shape whose attitude is known already: of many shapes looking for it costs more than all else.
     *
     * @param shape form of the piece
     * @param rest attitude of the shape, as {@link Shape#restingAttitude} gives it
     * @param bath the water
     */
    public DropBalance(Shape shape, RestingAttitude rest, Bath bath) {
        Given.all("bath", bath);
        volume = shape.volume();
        surface = shape.surface();
        facePerPlan = surface / rest.planArea();
        insetVolume = shape.insetVolume();
        carried = shape.hollow().isPresent() ? BoatLimit.displaced(shape, bath.density()) : volume;
        water = new BathProperties(bath, rest.height() / 2);
        balance = new ForceBalance(water);
    }

    /**
     * {@return the volume ratio of a mould whose every size is off by the same small length: each face moves by half of
     * it}
     *
     * @param sizeError error of a size across, m
     */
    public double volumeRatio(double sizeError) {
        return volumeRatio(surface, volume, sizeError);
    }

    /**
     * {@return volume ratio of a mould whose every size is off by the same length, so that each face moves by half
     * of it: (1 + S e/(6 V))^3, exact for a ball and a cube; of other shapes the first order, S e/(2 V), is}
     *
     * @param surface S, m2
     * @param volume V, m3
     * @param sizeError e, of a size across, m
     */
    public static double volumeRatio(double surface, double volume, double sizeError) {
        double across = 1 + surface * sizeError / (6 * volume);
        return across * across * across;
    }

    /**
     * {@return the spare of still water, kg: displaced mass at a temperature (K) less the mass (kg), the hollow
     * flooded}
     *
     * @param mass mass of the piece, kg
     * @param temperature temperature of the water, K
     * @param volumeRatio true volume over the computed one
     */
    public double still(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return ForceBalance.spare(water.density, volume * volumeRatio + insetVolume, mass, 0);
    }

    /**
     * {@return the spare of a boat, kg: displaced mass with the hollow dry and the rim at the water less the mass (kg)}
     *
     * @param mass mass of the piece, kg
     * @param temperature temperature of the water, K
     * @param volumeRatio true volume over the computed one
     */
    public double boat(double mass, double temperature, double volumeRatio) {
        water.at(temperature);
        return ForceBalance.spare(water.density, carried * volumeRatio, mass, 0);
    }

    /**
     * {@return the spare of the fizzing piece, kg, the hollow flooded}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public double fizzing(Launch launch) {
        // the true piece: volume by the ratio, surface by its power 2/3 and by how much rougher it is
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
