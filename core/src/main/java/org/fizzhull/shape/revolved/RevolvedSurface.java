package org.fizzhull.shape.revolved;

import java.util.List;
import org.fizzhull.numeric.GaussLegendre;

/**
 * Area of the part of a body of revolution's surface that lies below a plane {@code n . x = c}, m2.
 *
 * <p>A level plane cuts off whole zones, whose area has a closed form. Any other plane leaves of the circle of radius r
 * at height z the arc
 * <pre>  2 r (pi - arccos((c - n_z z)/(s r)))        all of it or nothing where the argument lies beyond -1 to 1</pre>
 * s the sine of the plane's tilt. The places of the meridian at which the argument is 1 or -1 have closed forms, {@code
 * c - n_z z = +-s r}; between them a zone is whole, dry, or has its arcs summed by 32 Gauss-Legendre points in the sine
 * of the way, which takes the square roots at its ends away: to about 1e-10 of the whole surface. Of a level face it is
 * the circular segment. Stateless. Used by {@link RevolvedHull#wettedArea}.
 */
final class RevolvedSurface {
    /** A plane this close to horizontal is horizontal. */
    private static final double LEVEL = 1e-12;

    /** Places of the points on a way from -1 to 1. */
    private static final double[] PLACE = new double[GaussLegendre.POINTS];
    /** Their weights. */
    private static final double[] WEIGHT = new double[GaussLegendre.POINTS];

    static {
        for (int i = 0; i < PLACE.length; i++) {
            double y = Math.PI / 2 * GaussLegendre.node(i);
            PLACE[i] = Math.sin(y);
            WEIGHT[i] = Math.PI / 2 * GaussLegendre.weight(i) * Math.cos(y);
        }
    }

    private RevolvedSurface() {}

    /** Area below the plane, m2; (nx, ny, nz) a unit vector, c in m; with the level faces of the profile. */
    static double below(Profile2D profile, List<ProfileFaces.Flat> flats, double nx, double ny, double nz, double c) {
        double s = Math.sqrt(nx * nx + ny * ny);
        return s < LEVEL ? level(profile, flats, nz > 0, c) : leaning(profile, flats, s, nz, c);
    }

    /** A level plane cuts off whole zones; they lie below it, or above it where the body is upside down. */
    private static double level(Profile2D profile, List<ProfileFaces.Flat> flats, boolean upright, double c) {
        // the heights of the body frame that lie below the plane
        double low = upright ? Double.NEGATIVE_INFINITY : -c;
        double high = upright ? c : Double.POSITIVE_INFINITY;
        double sum = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            double from = Math.max(low, piece.z0());
            double to = Math.min(high, piece.z1());
            sum += from < to ? ProfileFaces.curved(piece, from, to) : 0;
        }
        for (ProfileFaces.Flat flat : flats) {
            boolean wet = flat.z() >= low && flat.z() <= high;
            sum += wet ? flat.area() : 0;
        }
        return sum;
    }

    /** Area below a leaning plane, m2; s is the sine of the tilt. */
    private static double leaning(Profile2D profile, List<ProfileFaces.Flat> flats, double s, double nz, double c) {
        double sum = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            sum += new Zones(piece, s, nz, c).below();
        }
        for (ProfileFaces.Flat flat : flats) {
            double chord = (c - nz * flat.z()) / s;
            sum += segment(flat.outer(), chord) - segment(flat.inner(), chord);
        }
        return sum;
    }

    /** Area of the part of a disc of radius r, m, below a chord at a signed distance from its centre, m. */
    private static double segment(double r, double chord) {
        if (Math.abs(chord) >= r) {
            return chord > 0 ? Math.PI * r * r : 0;
        }
        return r * r * (Math.PI - Math.acos(chord / r)) + chord * Math.sqrt((r - chord) * (r + chord));
    }

    /**
     * The face of one piece by its variable: along a line its height, along an arc its angle.
     *
     * @param piece of the meridian
     * @param s sine of the tilt of the plane
     * @param nz its cosine
     * @param c distance of the plane from the origin, m
     */
    private record Zones(Profile2D.Piece piece, double s, double nz, double c) {
        /** Area below the plane, m2. */
        double below() {
            double end = at(piece.z1());
            double from = at(piece.z0());
            double sum = 0;
            while (from < end) {
                double to = Math.min(end, Math.min(next(from, 1), next(from, -1)));
                double middle = (from + to) / 2;
                double deep = c - nz * height(middle);
                double reach = s * radius(middle);
                if (deep >= reach) {
                    sum += ProfileFaces.curved(piece, height(from), height(to));
                } else if (deep > -reach) {
                    sum += cut(from, to);
                }
                from = to;
            }
            return sum;
        }

        /** Variable at a height, m. */
        private double at(double z) {
            return straight() ? z : ProfileFaces.angle(piece, z);
        }

        private boolean straight() {
            return piece.bulge() == 0;
        }

        private double height(double x) {
            return straight() ? x : piece.zc() + piece.q() * Math.sin(x);
        }

        private double radius(double x) {
            return straight() ? piece.radius(x) : piece.rc() + piece.bulge() * piece.p() * Math.cos(x);
        }

        /** The first place after x at which {@code c - nz z = side s r}; infinite where there is none. */
        private double next(double x, int side) {
            double along = side * s;
            if (straight()) {
                double lean = (piece.r1() - piece.r0()) / (piece.z1() - piece.z0());
                double root = (c - along * (piece.r0() - lean * piece.z0())) / (nz + along * lean);
                return root > x ? root : Double.POSITIVE_INFINITY;
            }
            // nz q sin + side s bulge p cos = c - nz zc - side s rc
            double sine = nz * piece.q();
            double cosine = along * piece.bulge() * piece.p();
            double ratio = (c - nz * piece.zc() - along * piece.rc()) / Math.hypot(sine, cosine);
            if (!(Math.abs(ratio) <= 1)) {
                return Double.POSITIVE_INFINITY;
            }
            double middle = Math.atan2(sine, cosine);
            double spread = Math.acos(ratio);
            return Math.min(after(x, middle - spread), after(x, middle + spread));
        }

        /** An angle within half a turn of 0 where it lies after x, else infinite. */
        private static double after(double x, double angle) {
            double turned = angle > Math.PI ? angle - 2 * Math.PI : angle < -Math.PI ? angle + 2 * Math.PI : angle;
            return turned > x ? turned : Double.POSITIVE_INFINITY;
        }

        /** Area below the plane between two places where it cuts every circle, m2. */
        private double cut(double from, double to) {
            double half = (to - from) / 2;
            double lean = Math.hypot(piece.r1() - piece.r0(), piece.z1() - piece.z0()) / (piece.z1() - piece.z0());
            double sum = 0;
            for (int i = 0; i < GaussLegendre.POINTS; i++) {
                double x = (from + to) / 2 + half * PLACE[i];
                double z = x;
                double r;
                // length of the meridian for one of the variable
                double length = lean;
                if (straight()) {
                    r = piece.radius(x);
                } else {
                    double sine = Math.sin(x);
                    double cosine = Math.cos(x);
                    z = piece.zc() + piece.q() * sine;
                    r = piece.rc() + piece.bulge() * piece.p() * cosine;
                    double up = piece.q() * cosine;
                    double out = piece.p() * sine;
                    length = Math.sqrt(up * up + out * out);
                }
                double deep = c - nz * z;
                double chord = Math.sqrt(Math.max(0, (s * r - deep) * (s * r + deep)));
                sum += 2 * r * Math.atan2(chord, -deep) * WEIGHT[i] * half * length;
            }
            return sum;
        }
    }
}
