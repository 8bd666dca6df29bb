package org.fizzhull.mesh.distance;

/** Distance from a point to a triangle: the regions of Ericson, Real-Time Collision Detection, 2005, 5.1.5 (from memory). */
final class PointTriangle {
    private PointTriangle() {}

    /**
     * Square of the distance to the triangle whose nine coordinates begin at index {@code t}, m2.
     *
     * @param way is set to the way from the nearest point of the triangle to the point, m
     */
    static double squared(double[] xyz, int t, double x, double y, double z, double[] way) {
        double ux = xyz[t + 3] - xyz[t];
        double uy = xyz[t + 4] - xyz[t + 1];
        double uz = xyz[t + 5] - xyz[t + 2];
        double wx = xyz[t + 6] - xyz[t];
        double wy = xyz[t + 7] - xyz[t + 1];
        double wz = xyz[t + 8] - xyz[t + 2];
        double px = x - xyz[t];
        double py = y - xyz[t + 1];
        double pz = z - xyz[t + 2];
        double d1 = ux * px + uy * py + uz * pz;
        double d2 = wx * px + wy * py + wz * pz;
        double uu = ux * ux + uy * uy + uz * uz;
        double uw = ux * wx + uy * wy + uz * wz;
        double ww = wx * wx + wy * wy + wz * wz;
        // products with the edges as seen from the second and the third corner
        double d3 = d1 - uu;
        double d4 = d2 - uw;
        double d5 = d1 - uw;
        double d6 = d2 - ww;
        double s;
        double r;
        double vc = d1 * d4 - d3 * d2;
        double vb = d5 * d2 - d1 * d6;
        double va = d3 * d6 - d5 * d4;
        if (d1 <= 0 && d2 <= 0) {
            s = 0;
            r = 0;
        } else if (d3 >= 0 && d4 <= d3) {
            s = 1;
            r = 0;
        } else if (d6 >= 0 && d5 <= d6) {
            s = 0;
            r = 1;
        } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            s = d1 / uu;
            r = 0;
        } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            s = 0;
            r = d2 / ww;
        } else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            r = (d4 - d3) / ((d4 - d3) + (d5 - d6));
            s = 1 - r;
        } else {
            double whole = va + vb + vc;
            s = vb / whole;
            r = vc / whole;
        }
        double qx = px - s * ux - r * wx;
        double qy = py - s * uy - r * wy;
        double qz = pz - s * uz - r * wz;
        way[0] = qx;
        way[1] = qy;
        way[2] = qz;
        return qx * qx + qy * qy + qz * qz;
    }
}
