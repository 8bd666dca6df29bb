package org.fizzhull.shape.revolved;

import org.fizzhull.numeric.GaussLegendre;

/**
 * Area of the part of a body of revolution's surface that lies below a plane {@code n . x = c}, m2.
 *
 * <p>A level plane cuts off whole zones, whose area has a closed form. Any other plane leaves of the circle of radius r
 * at height z the arc
 * <pre>  2 r (pi - arccos((c - n_z z)/(s r)))        all of it or nothing where the argument lies beyond -1 to 1</pre>
 * s the sine of the plane's tilt; arcs are summed along the meridian by Gauss-Legendre quadrature, 16 panels of 32
 * points a piece. The arcs begin and end with a square root, which the panels do not split: to about 1e-4 of the whole
 * surface. Stateless. Used by {@link RevolvedHull#wettedArea}.
 */
final class RevolvedSurface {
    /** Panels of 32 Gauss points along a piece. */
    private static final int PANELS = 16;

    /** A plane this close to horizontal is horizontal. */
    private static final double LEVEL = 1e-12;

    private RevolvedSurface() {}

    /** Area below the plane, m2; (nx, ny, nz) a unit vector, c in m. */
    static double below(Profile2D profile, double nx, double ny, double nz, double c) {
        double s = Math.sqrt(nx * nx + ny * ny);
        return s < LEVEL ? level(profile, nz > 0, c) : meridian(profile, s, nz, c);
    }

    /** A level plane cuts off whole zones; they lie below it, or above it where the body is upside down. */
    private static double level(Profile2D profile, boolean upright, double c) {
        // the heights of the body frame that lie below the plane
        double low = upright ? Double.NEGATIVE_INFINITY : -c;
        double high = upright ? c : Double.POSITIVE_INFINITY;
        double sum = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            double from = Math.max(low, piece.z0());
            double to = Math.min(high, piece.z1());
            sum += from < to ? ProfileFaces.curved(piece, from, to) : 0;
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(profile)) {
            boolean wet = flat.z() >= low && flat.z() <= high;
            sum += wet ? Math.PI * (flat.outer() - flat.inner()) * (flat.outer() + flat.inner()) : 0;
        }
        return sum;
    }

    /**
     * Area below a leaning plane, m2: arcs of circles summed along each piece, in its angle where it is an arc, and
     * along the radius of each level face. s is the sine of the tilt.
     */
    private static double meridian(Profile2D profile, double s, double nz, double c) {
        double sum = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            // along a line in its height, along an arc in its angle; length is that of the meridian for one of the
            // variable
            boolean straight = piece.bulge() == 0;
            double from = straight ? piece.z0() : ProfileFaces.angle(piece, piece.z0());
            double to = straight ? piece.z1() : ProfileFaces.angle(piece, piece.z1());
            double lean = straight ? (piece.r1() - piece.r0()) / (piece.z1() - piece.z0()) : 0;
            double half = (to - from) / (2 * PANELS);
            for (int k = 0; k < PANELS * GaussLegendre.POINTS; k++) {
                int i = k % GaussLegendre.POINTS;
                double x = from + half * (2 * (k / GaussLegendre.POINTS) + 1 + GaussLegendre.node(i));
                double weight = half * GaussLegendre.weight(i);
                double z = straight ? x : piece.zc() + piece.q() * Math.sin(x);
                double length = straight
                        ? Math.sqrt(1 + lean * lean)
                        : Math.hypot(piece.q() * Math.cos(x), piece.p() * Math.sin(x));
                double r = straight ? piece.radius(x) : piece.rc() + piece.bulge() * piece.p() * Math.cos(x);
                sum += ring(r, z, s, nz, c) * weight * length;
            }
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(profile)) {
            // a level face by its radius
            double half = (flat.outer() - flat.inner()) / (2 * PANELS);
            for (int k = 0; k < PANELS * GaussLegendre.POINTS; k++) {
                int i = k % GaussLegendre.POINTS;
                double r = flat.inner() + half * (2 * (k / GaussLegendre.POINTS) + 1 + GaussLegendre.node(i));
                sum += ring(r, flat.z(), s, nz, c) * half * GaussLegendre.weight(i);
            }
        }
        return sum;
    }

    /** Length, m, of the part of the circle of radius r at height z that lies below the plane. */
    private static double ring(double r, double z, double s, double nz, double c) {
        // the circle lies wholly below, wholly above, or is cut at two points
        double deep = c - nz * z;
        double reach = s * r;
        if (deep >= reach) {
            return 2 * Math.PI * r;
        }
        return deep <= -reach ? 0 : 2 * r * (Math.PI - Math.acos(deep / reach));
    }
}
