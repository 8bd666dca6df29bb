package org.fizzhull.shape.revolved;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.numeric.GaussLegendre;

/**
 * The faces of a body of revolution: areas of the curved ones, and the level ones that no piece names.
 *
 * <p>A straight piece sweeps a frustum, pi (r0 + r1) times its length. An elliptic arc with the angle psi from its
 * middle height, half width p, half height q and centre radius rc sweeps
 * <pre>
 *   S = 2 pi INT (rc + bulge p cos psi) sqrt(p^2 sin^2 psi + q^2 cos^2 psi) dpsi
 * </pre>
 * The part in p cos psi has a closed form (a zone of a spheroid); the part in rc is an arc length, closed for a circle,
 * else an elliptic integral taken by Gauss-Legendre quadrature to about 1e-12. Source: textbook mensuration,
 * docs/physics/hydrostatics.md, 1. Stateless.
 */
public final class ProfileFaces {
    /** Heights and radii closer than this, relative to the body, are the same. */
    private static final double SAME = 1e-11;

    private ProfileFaces() {}

    /**
     * A level ring (a disc where inner is 0).
     *
     * @param z height, m
     * @param inner inner radius, m, 0 or more
     * @param outer outer radius, m
     * @param top true where the material lies below it
     */
    public record Flat(double z, double inner, double outer, boolean top) {
        /** Area of the ring, m2. */
        double area() {
            return Math.PI * (outer - inner) * (outer + inner);
        }
    }

    /**
     * {@return the level faces: where the sections just below and just above a height differ}
     *
     * @param profile the outline
     */
    public static List<Flat> flats(Profile2D profile) {
        double size = size(profile);
        // every height at which a piece begins or ends, and there every radius at which one does
        List<Double> heights = new ArrayList<>();
        for (Profile2D.Piece piece : profile.pieces()) {
            addNew(heights, piece.z0(), size);
            addNew(heights, piece.z1(), size);
        }
        List<Flat> flats = new ArrayList<>();
        for (double z : heights) {
            List<Double> radii = new ArrayList<>();
            addNew(radii, 0, size);
            for (Profile2D.Piece piece : profile.pieces()) {
                if (near(piece.z0(), z, size)) {
                    addNew(radii, piece.r0(), size);
                }
                if (near(piece.z1(), z, size)) {
                    addNew(radii, piece.r1(), size);
                }
            }
            radii.sort(null);
            for (int i = 0; i + 1 < radii.size(); i++) {
                // how many solids hold the ring between two neighbouring radii, just below and just above
                int below = 0;
                int above = 0;
                double middle = (radii.get(i) + radii.get(i + 1)) / 2;
                for (Profile2D.Piece piece : profile.pieces()) {
                    int sign = piece.inner() ? -1 : 1;
                    below += near(piece.z1(), z, size) && middle < piece.r1() ? sign : 0;
                    above += near(piece.z0(), z, size) && middle < piece.r0() ? sign : 0;
                }
                if (below != above) {
                    flats.add(new Flat(z, radii.get(i), radii.get(i + 1), below > above));
                }
            }
        }
        return flats;
    }

    /** Area of the curved face of a piece, m2. */
    static double curved(Profile2D.Piece piece) {
        return curved(piece, piece.z0(), piece.z1());
    }

    /** Area of its part between two heights, m, within the piece, m2. */
    static double curved(Profile2D.Piece piece, double low, double high) {
        if (piece.bulge() == 0) {
            double r0 = piece.radius(low);
            double r1 = piece.radius(high);
            return Math.PI * (r0 + r1) * Math.hypot(high - low, r1 - r0);
        }
        double p = piece.p();
        double q = piece.q();
        double turned = p * (spheroid(p, q, sine(piece, high)) - spheroid(p, q, sine(piece, low)));
        if (piece.rc() == 0) {
            return 2 * Math.PI * turned;
        }
        double from = angle(piece, low);
        double to = angle(piece, high);
        double arc = p == q ? p * (to - from) : arcLength(p, q, from, to);
        return 2 * Math.PI * (piece.rc() * arc + piece.bulge() * turned);
    }

    /**
     * Integral of sqrt(q^2 + (p^2 - q^2) u^2) from 0 to u, u the sine of the angle, m: by asinh for a wide ellipse,
     * asin for a tall one, and a series where both lose their digits.
     */
    private static double spheroid(double p, double q, double u) {
        double k = (p - q) * (p + q);
        double root = Math.sqrt(q * q + k * u * u);
        double e = Math.sqrt(Math.abs(k)) / q;
        if (e * Math.abs(u) < 1e-3) {
            double x = k * u * u / (q * q);
            return q * u * (1 + x / 6 - x * x / 40 + x * x * x / 112);
        }
        double x = e * u;
        double inverse = k > 0 ? Math.signum(x) * Math.log(Math.abs(x) + Math.sqrt(x * x + 1)) : Math.asin(x);
        return (u * root + q * inverse / e) / 2;
    }

    /** Length of an elliptic arc between two angles, rad, m: quadrature in eight parts. */
    private static double arcLength(double p, double q, double from, double to) {
        int parts = 8;
        double sum = 0;
        double half = (to - from) / (2 * parts);
        for (int k = 0; k < parts; k++) {
            for (int i = 0; i < GaussLegendre.POINTS; i++) {
                double a = from + half * (2 * k + 1 + GaussLegendre.node(i));
                double s = p * Math.sin(a);
                double c = q * Math.cos(a);
                sum += half * GaussLegendre.weight(i) * Math.sqrt(s * s + c * c);
            }
        }
        return sum;
    }

    /**
     * {@return the angle of a point of an elliptic arc, rad, from -pi/2 at its lowest point to pi/2 at its highest;
     * rounding beyond the ends is cut off}
     *
     * @param piece an arc
     * @param z height of the point, m
     */
    public static double angle(Profile2D.Piece piece, double z) {
        double sine = sine(piece, z);
        return Math.atan2(sine, Math.sqrt((1 - sine) * (1 + sine)));
    }

    /** Sine of that angle. */
    static double sine(Profile2D.Piece piece, double z) {
        return Math.max(-1, Math.min(1, (z - piece.zc()) / piece.q()));
    }

    /** Height of the profile, m: the scale of what counts as the same. */
    static double size(Profile2D profile) {
        return profile.high() - profile.low();
    }

    /** Whether two heights or radii, m, are the same. */
    private static boolean near(double a, double b, double size) {
        return Math.abs(a - b) <= SAME * size;
    }

    /** Adds a value unless it is there. */
    private static void addNew(List<Double> values, double value, double size) {
        for (double other : values) {
            if (near(other, value, size)) {
                return;
            }
        }
        values.add(value);
    }
}
