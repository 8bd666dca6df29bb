package org.fizzhull.geometry;

/**
 * What a plane cuts from a closed body: the part below the plane {@code n . x = c} (the points with {@code n . x <= c})
 * and the cut face, which for a floating body is the water plane. A mutable holder that a caller owns and passes to
 * {@link Hull#cut} again and again, so that a search allocates next to nothing; one to a thread.
 *
 * <p>All in SI and the body frame. The centre of buoyancy is {@code (mx, my, mz) / volume}. The second moments are
 * about the centroid of the cut face, along the two unit vectors (ux, uy, uz) and (wx, wy, wz) that with n form a
 * right-handed frame; divided by the volume they are metacentric radii.
 */
public final class PlaneCut {
    /** Volume below the plane, m3. */
    public double volume;

    /** First moments of that volume about the origin of the body frame, m4. */
    public double mx;

    /** Y component of the first moment of the volume below the plane, m4. */
    public double my;

    /** Z component of that first moment, m4. */
    public double mz;

    /** Area of the cut face, m2. */
    public double area;

    /** Centroid of the cut face, m; meaningless where the area is 0. */
    public double ax;

    /** Centroid of the cut face, y, m. */
    public double ay;

    /** Centroid of the cut face, z, m. */
    public double az;

    /** In-plane unit vector u. */
    public double ux;

    /** Second component of the first in-plane unit vector. */
    public double uy;

    /** Third component of the first in-plane unit vector. */
    public double uz;

    /** In-plane unit vector w = n x u. */
    public double wx;

    /** Second component of the second in-plane unit vector. */
    public double wy;

    /** Third component of the second in-plane unit vector. */
    public double wz;

    /** Second moment of the cut face along u: integral of u^2, m4. */
    public double juu;

    /** Mixed second moment: integral of u w, m4. */
    public double juw;

    /** Second moment of the cut face along w: integral of w^2, m4. */
    public double jww;

    /** An empty holder. */
    public PlaneCut() {}

    /** Empties the holder. */
    public void clear() {
        volume = mx = my = mz = area = ax = ay = az = juu = juw = jww = 0;
        ux = uy = uz = wx = wy = wz = 0;
    }

    /**
     * Sets the in-plane frame for the unit normal n: u horizontal in the body frame, w = n x u.
     *
     * @param nx x component of the unit normal n
     * @param ny y component of n
     * @param nz z component of n
     */
    public void frame(double nx, double ny, double nz) {
        // u is level across the lean of n; a vertical n has no lean, and u is then the x axis
        double h = Math.hypot(nx, ny);
        if (h > 0) {
            ux = -ny / h;
            uy = nx / h;
        } else {
            ux = 1;
            uy = 0;
        }
        uz = 0;
        wx = ny * uz - nz * uy;
        wy = nz * ux - nx * uz;
        wz = nx * uy - ny * ux;
    }
}
