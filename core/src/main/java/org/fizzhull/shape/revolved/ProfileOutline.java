package org.fizzhull.shape.revolved;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * Outlines of a body of revolution in the plane through its axis, for pictures and sections.
 * <ol>
 *   <li>Every piece becomes points, arcs as 64 chords, and every level face two points, all with the material on their
 *       left.
 *   <li>These are chained end to end: from the axis to the axis, or closed for the section of a ring.
 *   <li>A chain from the axis to the axis is joined to its mirror image; a closed chain is given twice, once on each
 *       side.
 *   <li>All points are turned so that {@code up} points up.
 * </ol>
 *
 * <p>Error: that of the chords, 3e-4 of the radius of a half circle. Ends that are less than 1e-9 of the height apart
 * are the same point. Stateless. Used by {@link RevolvedHull#section} and by {@link Meridian}.
 */
final class ProfileOutline {
    /** Chords of an arc, whatever its length. */
    private static final int ARC_POINTS = 64;

    private ProfileOutline() {}

    /**
     * Closed outlines in the vertical plane through the axis, m: x to the right, y the height along {@code up} (a unit
     * vector) from the body origin. The axis leans to the right.
     */
    static List<double[][]> of(Profile2D profile, Vec3 up) {
        double size = ProfileFaces.size(profile);
        List<List<double[]>> parts = parts(profile);
        // sine of the lean of the axis
        double side = Math.hypot(up.x(), up.y());
        List<double[][]> outlines = new ArrayList<>();
        // one chain after another until no part is left
        while (!parts.isEmpty()) {
            List<double[]> chain = chain(parts, 1e-9 * size);
            if (chain.get(0)[0] <= 1e-9 * size && chain.get(chain.size() - 1)[0] <= 1e-9 * size) {
                // from axis to axis: back along the mirror image
                List<double[]> whole = new ArrayList<>(chain);
                for (int i = chain.size() - 2; i > 0; i--) {
                    whole.add(new double[] {-chain.get(i)[0], chain.get(i)[1]});
                }
                outlines.add(turned(whole, up.z(), side, 1));
            } else {
                chain.remove(chain.size() - 1);
                outlines.add(turned(chain, up.z(), side, 1));
                outlines.add(turned(chain, up.z(), side, -1));
            }
        }
        return outlines;
    }

    /**
     * Points (r, z) of a piece, m, material to the left: up on an outer one, down on an inner one. The ends are those
     * of the piece to the bit, so that neighbours meet.
     */
    static List<double[]> sampled(Profile2D.Piece piece) {
        List<double[]> points = new ArrayList<>();
        int n = piece.bulge() == 0 ? 1 : ARC_POINTS;
        double from = piece.bulge() == 0 ? 0 : ProfileFaces.angle(piece, piece.z0());
        double to = piece.bulge() == 0 ? 0 : ProfileFaces.angle(piece, piece.z1());
        for (int i = 0; i <= n; i++) {
            int k = piece.inner() ? n - i : i;
            if (k == 0) {
                points.add(new double[] {piece.r0(), piece.z0()});
            } else if (k == n) {
                points.add(new double[] {piece.r1(), piece.z1()});
            } else {
                double a = from + (to - from) * k / n;
                double r = piece.rc() + piece.bulge() * piece.p() * Math.cos(a);
                points.add(new double[] {r, piece.zc() + piece.q() * Math.sin(a)});
            }
        }
        return points;
    }

    /** Points of each piece and then of each level face, (r, z), m, with the material on the left: a top runs inward. */
    static List<List<double[]>> parts(Profile2D profile) {
        List<List<double[]>> parts = new ArrayList<>();
        for (Profile2D.Piece piece : profile.pieces()) {
            parts.add(sampled(piece));
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(profile)) {
            double[] in = {flat.inner(), flat.z()};
            double[] out = {flat.outer(), flat.z()};
            parts.add(flat.top() ? List.of(out, in) : List.of(in, out));
        }
        return parts;
    }

    /** Takes one chain off the parts: from the axis to the axis, or closed (last point = first point). */
    private static List<double[]> chain(List<List<double[]>> parts, double same) {
        // a part that begins on the axis if there is one, so that a chain is not entered in its middle
        int first = 0;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).get(0)[0] <= same) {
                first = i;
                break;
            }
        }
        List<double[]> chain = new ArrayList<>(parts.remove(first));
        boolean grown = true;
        while (grown) {
            grown = false;
            double[] end = chain.get(chain.size() - 1);
            // arrived at the axis, or back at the start
            if (end[0] <= same || distance(end, chain.get(0)) <= same) {
                return chain;
            }
            for (int i = 0; i < parts.size(); i++) {
                if (distance(parts.get(i).get(0), end) <= same) {
                    List<double[]> part = parts.remove(i);
                    chain.addAll(part.subList(1, part.size()));
                    grown = true;
                    break;
                }
            }
        }
        throw new IllegalStateException(
                "the meridian does not close at radius " + chain.get(chain.size() - 1)[0] + " m");
    }

    /** Points (r, z) of one side, +1 or -1, of a body whose axis leans, in the coordinates of the picture, m. */
    private static double[][] turned(List<double[]> points, double cosine, double sine, int side) {
        double[][] out = new double[points.size()][];
        for (int i = 0; i < out.length; i++) {
            double r = side * points.get(i)[0];
            double z = points.get(i)[1];
            // the axis leans to the right: the body's sideways direction up.x, up.y points left and up
            out[i] = new double[] {-r * cosine + z * sine, r * sine + z * cosine};
        }
        return out;
    }

    /** Distance of two points, m. */
    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }
}
