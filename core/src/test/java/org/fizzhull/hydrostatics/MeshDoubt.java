package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;

/**
 * How far an attitude of a mesh may be from that of the round body the mesh stands for, from the share e of the volume
 * that lies between the two ({@link Hull#relativeError}); all zero for exact hulls. By scale: a volume that is off by e V
 * lifts the water line by that over the water plane, and lengths of a body of size s are off by at most e s. The body
 * leans by what pulls its centre aside over its metacentric height; facets sit on all sides, and of e s no more than a
 * tenth is taken to pull one way (assumed; meshes of 500 to 100,000 uneven facets stayed below a third of that, measured).
 *
 * @param level the water line, and with it draft and freeboard, m
 * @param gm metacentric heights and energy, m
 * @param lean direction, rad; pi where the body turns freely
 */
record MeshDoubt(double level, double gm, double lean) {
    private static final double ASIDE = 0.1;

    /**
     * The doubt of one attitude.
     *
     * @param massCentre centre of mass in the body frame, m
     * @param displaced mass over water density, m3
     */
    public static MeshDoubt of(Hull hull, Vec3 massCentre, double displaced, Attitude attitude) {
        double share = hull.relativeError();
        Floating body = new Floating(hull, massCentre, displaced);
        body.at(attitude.up());
        double length = share * body.size;
        double lean = attitude.turnsFreely() ? Math.PI : Math.min(Math.PI, ASIDE * length / attitude.gmSmaller());
        return new MeshDoubt(length + share * hull.volume() / body.cut.area, length, share == 0 ? 0 : lean);
    }
}
