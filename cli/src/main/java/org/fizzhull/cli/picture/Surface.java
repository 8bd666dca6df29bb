package org.fizzhull.cli.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PolyhedronHull;

/** Makes a coarse triangle mesh of any hull, good enough to look at: a round one turned from its section. */
public final class Surface {
    private static final int SECTORS = 48;

    /** A point of a section is kept where the outline has turned by so much since the last one, rad. */
    private static final double TURN = 0.14;

    /** Longest piece of an outline over the size of the body: near faces then hide far ones facet by facet. */
    private static final double LONGEST = 0.08;

    private final List<double[]> points = new ArrayList<>();
    private final List<int[]> facets = new ArrayList<>();

    private Surface() {}

    /** Empty where only the embedder knows the form of the hull. */
    public static Optional<TriangleMesh> of(Hull hull) {
        if (hull instanceof PolyhedronHull body) {
            return Optional.of(CoarseMesh.of(body.mesh()));
        }
        if (hull.symmetry() == Hull.Symmetry.GENERAL) {
            return Optional.empty();
        }
        Surface turned = new Surface();
        double size = hull.reach(0, 0, 1) + hull.reach(0, 0, -1) + 2 * hull.reach(1, 0, 0);
        for (double[][] outline : hull.section(Vec3.UP)) {
            turned.turn(outline, size / 2);
        }
        return Optional.of(turned.mesh());
    }

    private TriangleMesh mesh() {
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = points.get(i / 3)[i % 3];
        }
        int[] corners = new int[3 * facets.size()];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = facets.get(i / 3)[i % 3];
        }
        return new TriangleMesh(xyz, corners);
    }

    /** The side of an outline left of the axis, material on its left, once round; nothing where there is none. */
    private void turn(double[][] outline, double size) {
        double same = 1e-9 * size;
        List<double[]> half = new ArrayList<>();
        for (double[] point : outline) {
            if (point[0] <= same) {
                half.add(new double[] {Math.max(0, -point[0]), point[1]});
            }
        }
        boolean loop = half.size() == outline.length;
        if (half.size() < 2 || (loop && half.size() < 3)) {
            return;
        }
        if (loop) {
            half.add(half.get(0));
        }
        List<double[]> meridian = thinned(half, size);
        int[][] rings = new int[meridian.size()][];
        for (int i = 0; i < rings.length; i++) {
            rings[i] = loop && i == rings.length - 1 ? rings[0] : ring(meridian.get(i), same);
        }
        for (int i = 0; i + 1 < rings.length; i++) {
            for (int k = 0; k < SECTORS; k++) {
                int n = (k + 1) % SECTORS;
                facet(rings[i][k], rings[i][n], rings[i + 1][n]);
                facet(rings[i][k], rings[i + 1][n], rings[i + 1][k]);
            }
        }
    }

    private void facet(int a, int b, int c) {
        if (a != b && b != c && c != a) {
            facets.add(new int[] {a, b, c});
        }
    }

    /** Indices of the points of a circle; all the same on the axis. */
    private int[] ring(double[] at, double same) {
        int[] ring = new int[SECTORS];
        for (int k = 0; k < SECTORS; k++) {
            if (k > 0 && at[0] <= same) {
                ring[k] = ring[0];
                continue;
            }
            double angle = 2 * Math.PI * k / SECTORS;
            ring[k] = points.size();
            points.add(new double[] {at[0] * Math.cos(angle), at[0] * Math.sin(angle), at[1]});
        }
        return ring;
    }

    /** Fewer points where an outline is nearly straight, more where a piece of it is long. */
    private static List<double[]> thinned(List<double[]> chain, double size) {
        List<double[]> kept = new ArrayList<>();
        kept.add(chain.get(0));
        double turned = 0;
        for (int i = 1; i < chain.size(); i++) {
            double[] last = kept.get(kept.size() - 1);
            double[] here = chain.get(i);
            boolean end = i + 1 == chain.size();
            double corner = end ? Math.PI : corner(chain.get(i - 1), here, chain.get(i + 1));
            turned += Math.abs(corner);
            double length = Math.hypot(here[0] - last[0], here[1] - last[1]);
            if (!end && turned < TURN && length < LONGEST * size) {
                continue;
            }
            int parts = (int) Math.ceil(length / (LONGEST * size));
            for (int p = 1; p <= parts; p++) {
                double t = (double) p / parts;
                kept.add(new double[] {last[0] + t * (here[0] - last[0]), last[1] + t * (here[1] - last[1])});
            }
            turned = 0;
        }
        return kept;
    }

    private static double corner(double[] before, double[] here, double[] after) {
        double ux = here[0] - before[0];
        double uy = here[1] - before[1];
        double vx = after[0] - here[0];
        double vy = after[1] - here[1];
        return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    }
}
