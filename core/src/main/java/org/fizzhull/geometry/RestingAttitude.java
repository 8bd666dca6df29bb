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
