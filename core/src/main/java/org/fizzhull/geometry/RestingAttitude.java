package org.fizzhull.geometry;

/**
 * How a body lies that was not placed by hand: the nearest of all planes that touch it, seen from its centroid, is down
 * where it lies on the bottom (the centroid then lies lowest) and up where it floats nearly awash (the little that
 * shows is then lowest, which is the least of the potential energy in that limit; Gilbert, Amer. Math. Monthly 98
 * (1991) 201, for the duality of light and heavy bodies). It does not depend on how the body is listed.
 *
 * @param nearest unit vector of the body frame from the centroid to that plane
 * @param height of the body along it, m
 * @param planArea area of the body's shadow along it, m2
 * @param prism whether the body then is an upright prism: every level section is {@code planArea}
 */
public record RestingAttitude(Vec3 nearest, double height, double planArea, boolean prism) {
    /** A shadow along the listed axis is that of the listing. */
    private static final double ALONG = 1e-9;

    /** What lies this close to the nearest plane, as a share of the height, belongs to a flat face in it (judgement). */
    public static final double LEVEL = 0.005;

    /**
     * A flat face of this share of the plan area is what stands dry afloat: about half of the water plane of a ball of
     * that plan with a twentieth of its volume out of the water (judgement; the facets of a meshed ball are far
     * smaller).
     */
    private static final double FLAT = 0.25;

    /**
     * {@return the attitude of a hull}
     *
     * @param hull the closed surface of the body
     * @param listedPlanArea its shadow along its listed z axis, m2, also taken where the hull cannot tell another
     */
    public static RestingAttitude of(Hull hull, double listedPlanArea) {
        // the height between the two touching planes across n
        Vec3 n = hull.nearestPlane();
        double height = hull.reach(n.x(), n.y(), n.z()) + hull.reach(-n.x(), -n.y(), -n.z());
        boolean listed = Math.abs(n.x()) < ALONG && Math.abs(n.y()) < ALONG;
        return new RestingAttitude(
                n, height, listed ? listedPlanArea : hull.shadow(n).orElse(listedPlanArea), false);
    }

    /**
     * {@return the attitude of a prism that lies on its flat}
     *
     * @param nearest unit vector of the body frame along its sides
     * @param height between its flats, m
     * @param flat area of one of them, m2
     */
    public static RestingAttitude prism(Vec3 nearest, double height, double flat) {
        return new RestingAttitude(nearest, height, flat, true);
    }

    /** {@return whether the nearest plane is level in the body frame and above the body: the rim of a hollow} */
    public boolean rimUp() {
        return nearest.z() >= 1 - ALONG;
    }

    /** {@return whether the nearest plane is level in the body frame and below the body} */
    public boolean onItsBase() {
        return nearest.z() <= -1 + ALONG;
    }

    /**
     * {@return whether a flat face in the nearest plane keeps up, and so dry, while the body floats} A flat face is a
     * corner of the distance of the touching plane over its direction: a body nearly awash resists any tilt away from
     * it, and goes on so while its underside is eaten. About a curved side that distance has no corner, and what is
     * eaten below moves the centre of mass towards the dry side, over the middle of a ball by a tenth of its radius
     * when 0.4 of it is left (elementary, of a cap of 6 %): it turns.
     *
     * @param flat area of the flat face in the nearest plane, m2; 0 where there is none
     */
    public boolean keepsUp(double flat) {
        return flat >= FLAT * planArea;
    }

    /**
     * {@return the attitude of a body whose hull is not known: as it is listed, its shortest side upright}
     *
     * @param box box around the body as it is listed, m
     * @param planArea area of the body's shadow along it, m2
     */
    public static RestingAttitude listed(Extents box, double planArea) {
        return new RestingAttitude(
                Vec3.UP, Math.min(box.height(), Math.min(box.length(), box.width())), planArea, false);
    }
}
