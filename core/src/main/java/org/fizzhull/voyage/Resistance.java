package org.fizzhull.voyage;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Drag and added mass of a shape that moves with its flattest side ahead.
 *
 * <pre>  F = 1/2 C_d rho A U |U|,   C_d = max(C_sphere(Re) + (1.17 - 0.42)(1 - f), C_edge)</pre>
 *
 * <p>F drag (N), rho density of the water (kg/m3), A plan area (m2), U speed (m/s), C_sphere drag coefficient of a
 * sphere ({@link BrownLawler2003}), 0.42 its value near a Reynolds number of 1e4, 1.17 that of a disc, f height over
 * width in the attitude of the body (at most 1), C_edge 1.05, that of a cube, where the body fills height times plan
 * area more than a rounded one does, else 0. Added mass: that of an oblate spheroid as flat ({@link Lamb1932}).
 *
 * <p>Source: S. F. Hoerner, Fluid-Dynamic Drag (1965) for disc and cube [from memory]; the way between them is assumed,
 * 25 %. It decides by seconds when a piece is up, never whether it comes up. Immutable.
 *
 * @param extra drag coefficient beyond that of a sphere, for how flat the body is
 * @param least least drag coefficient: that of a cube for a body with edges, else 0
 * @param addedMass added mass over displaced mass
 */
record Resistance(double extra, double least, double addedMass) {
    /** Drag coefficient of a disc across the flow. */
    private static final double DISC = 1.17;
    /** Drag coefficient of a cube, face ahead. */
    private static final double CUBE = 1.05;
    /** Drag coefficient of a sphere near a Reynolds number of 1e4. */
    private static final double BLUFF_SPHERE = 0.42;

    /**
     * Height times plan area is filled to 2/3 by an ellipsoid, wholly by a prism; what is fuller than between has
     * edges.
     */
    private static final double EDGED = 0.83;

    /**
     * Of a body.
     *
     * @param height in its attitude, m
     * @param width diameter of a disc of its plan area, m
     * @param volume m3
     */
    static Resistance of(double height, double width, double volume) {
        double flatness = Math.min(1, height / width);
        boolean edged = volume / (height * Math.PI / 4 * width * width) > EDGED;
        return new Resistance((DISC - BLUFF_SPHERE) * (1 - flatness), edged ? CUBE : 0, Lamb1932.oblate(flatness));
    }

    /** That of a smooth ball: added mass 1/2. */
    static Resistance ball() {
        return new Resistance(0, 0, 0.5);
    }

    /**
     * Drag, N, against a motion.
     *
     * @param speed with its sign, m/s
     * @param size diameter of a disc of the plan area, m
     * @param density kg/m3
     * @param viscosity kinematic, m2/s
     */
    double force(double speed, double size, double density, double viscosity) {
        double area = Math.PI / 4 * size * size;
        double fast = Math.abs(speed);
        double reynolds = fast * size / viscosity;
        double round = BrownLawler2003.timesReynolds(reynolds) * viscosity / size;
        double sum = Math.max(round + extra * fast, least * fast);
        return 0.5 * density * area * sum * speed;
    }

    /**
     * Time in which a body at rest comes a way up while its spare grows by {@code growth} of the displacement a second,
     * s: {@code g growth t^3 = 6 (1 + C_a) d} where its inertia holds it back and {@code = (3 d/2)^2 C_d A/(2 V)} where
     * drag does; here the sum of both. 8 s as a rule.
     *
     * @param growth 1/s
     * @param way m
     * @param body volume, m3
     * @param size diameter of a disc of the plan area, m
     */
    double lag(double growth, double way, double body, double size) {
        double inertia = 6 * (1 + addedMass) * way;
        double drag = 1.125 * way * way * area(size) / body;
        return Math.cbrt((inertia + drag) / (PhysicalConstants.GRAVITY * growth));
    }

    /** Drag coefficient of a quick motion times plan area, m2, for the diameter of a disc of the plan area, m. */
    double area(double size) {
        return Math.PI / 4 * size * size * Math.max(BLUFF_SPHERE + extra, least);
    }
}
