package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * How much an open shape carries as a boat before its rim goes under. One that stays upright carries what its closed
 * hull displaces below the rim; one that leans, its hollow off the middle or its cup tall, takes in water before that.
 *
 * <p>Method: the displacements from the upright limit down in steps of a sixteenth are tried with {@link Boat#stands};
 * the first that stands and the one above it bracket the limit, which is halved to a millionth of a step. Range: still
 * water. Error: a second band of displacements at which the boat stands, above one at which it does not, is seen only
 * at the sixteenths. Cost: up to 36 descents. Source: docs/physics/hydrostatics.md, 3. Stateless.
 */
public final class BoatLimit {
    /** A boat that stands this close to the limit of an upright one is taken to reach it. */
    private static final double NEAR = 1e-3;

    /** Displacements tried from the upright limit down, evenly spaced. */
    private static final int TRIED = 16;
    /** Halvings of the bracket: its width falls to a millionth. */
    private static final int HALVINGS = 20;

    private BoatLimit() {}

    /**
     * {@return whether a boat of a mass, kg, set down upright in water of a density, kg/m3, stays afloat with a dry
     * rim}
     *
     * @param shape open shape
     * @param mass mass of the whole piece, kg
     * @param waterDensity density of the water, kg/m3
     * @throws java.util.NoSuchElementException for a shape without a hollow
     */
    public static boolean stands(Shape shape, double mass, double waterDensity) {
        Hollow hollow = shape.hollow().orElseThrow();
        return Boat.stands(hollow, massCentre(shape, mass), mass / waterDensity);
    }

    /**
     * {@return what a boat displaces when water gets in, m3: the largest at which it stays as it is} That of one held
     * upright where it never stays.
     *
     * @param shape open shape
     * @param waterDensity density of the water, kg/m3
     * @throws java.util.NoSuchElementException for a shape without a hollow
     */
    public static double displaced(Shape shape, double waterDensity) {
        double upright = shape.hollow().orElseThrow().carried();
        double wet = upright;
        for (int k = 0; k < TRIED; k++) {
            double dry = k == 0 ? upright * (1 - NEAR) : upright * (TRIED - k) / TRIED;
            if (stands(shape, dry * waterDensity, waterDensity)) {
                return k == 0 ? upright : between(shape, waterDensity, dry, wet);
            }
            wet = dry;
        }
        return upright;
    }

    /** The displacement, m3, between one at which the boat stands and one at which it takes in water. */
    private static double between(Shape shape, double waterDensity, double stands, double falls) {
        double dry = stands;
        double wet = falls;
        for (int pass = 0; pass < HALVINGS; pass++) {
            double middle = (dry + wet) / 2;
            if (stands(shape, middle * waterDensity, waterDensity)) {
                dry = middle;
            } else {
                wet = middle;
            }
        }
        return (dry + wet) / 2;
    }

    /** Centre of mass of a piece, m, with what it carries: centroid of the material, shifted towards the inset. */
    private static Vec3 massCentre(Shape shape, double mass) {
        Vec3 body = shape.centroid();
        return shape.insetMass() == 0
                ? body
                : body.plus(shape.insetCentroid().minus(body).times(shape.insetMass() / mass));
    }
}
