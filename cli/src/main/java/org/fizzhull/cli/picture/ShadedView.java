package org.fizzhull.cli.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/**
 * A mesh seen from the front, somewhat from the right and from above, without perspective. Facets that face the eye are
 * painted from far to near in Lambert's shade of one light; large ones are cut up first, so that a near one hides a far
 * one. Under them lies the outline, between them lie the edges.
 */
public final class ShadedView {
    private static final double AZIMUTH = Math.toRadians(25);
    private static final double ELEVATION = Math.toRadians(32);
    private static final Vec3 RIGHT = new Vec3(Math.cos(AZIMUTH), Math.sin(AZIMUTH), 0);
    private static final Vec3 EYE = new Vec3(
            Math.sin(AZIMUTH) * Math.cos(ELEVATION), -Math.cos(AZIMUTH) * Math.cos(ELEVATION), Math.sin(ELEVATION));
    private static final Vec3 UP = EYE.cross(RIGHT);
    private static final Vec3 LIGHT =
            EYE.plus(UP.times(0.9)).minus(RIGHT.times(0.8)).unit();

    private static final double AMBIENT = 0.5;
    private static final int SHADES = 48;
    private static final int[] COLOUR = {250, 226, 190};

    /** Longest side of a facet as painted, over the size of the body. */
    private static final double LONGEST = 0.1;

    /** An edge is painted as if it lay nearer by this share of the size: facets beside it do not cover half of it. */
    private static final double EDGE_NEARER = 0.04;

    private static final int MOST_PAINTED = 3000;
    private static final String EDGE = "stroke=\"#7a5a2f\" stroke-linecap=\"round\" stroke-width=\"";

    private final Facets facets;
    private final boolean edges;
    private final List<Patch> patches = new ArrayList<>();
    private final double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};

    private ShadedView(TriangleMesh mesh, boolean edges) {
        this.edges = edges;
        facets = new Facets(mesh);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vec3 p = new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
            box[0] = Math.min(box[0], p.dot(RIGHT));
            box[1] = Math.min(box[1], p.dot(UP));
            box[2] = Math.max(box[2], p.dot(RIGHT));
            box[3] = Math.max(box[3], p.dot(UP));
        }
    }

    /**
     * Draws the mesh into a square of a side in pixels round a middle.
     *
     * @param edges false for a mesh so coarse that its bends mean nothing: the outline alone is drawn
     */
    public static void draw(Svg svg, TriangleMesh mesh, boolean edges, double x, double y, double side) {
        new ShadedView(mesh, edges).paint(svg, x, y, side);
    }

    private double size() {
        return Math.max(box[2] - box[0], box[3] - box[1]);
    }

    private void paint(Svg svg, double x, double y, double side) {
        double longest = LONGEST * size();
        do {
            patches.clear();
            cut(longest);
            longest *= 1.4;
        } while (patches.size() > MOST_PAINTED && longest < 4 * size());
        patches.sort(Comparator.comparingDouble(Patch::near));
        double scale = side / size();
        List<double[][]> same = new ArrayList<>();
        String colour = "";
        for (Patch patch : patches) {
            double[][] flat = new double[patch.corners.length][];
            for (int k = 0; k < flat.length; k++) {
                Vec3 p = patch.corners[k];
                flat[k] = new double[] {
                    tenth(x + scale * (p.dot(RIGHT) - (box[0] + box[2]) / 2)),
                    tenth(y - scale * (p.dot(UP) - (box[1] + box[3]) / 2))
                };
            }
            if (!patch.colour.equals(colour)) {
                flush(svg, same, colour);
                colour = patch.colour;
            }
            if (flat.length == 2) {
                svg.polyline(flat, colour);
            } else {
                same.add(flat);
            }
        }
        flush(svg, same, colour);
    }

    private static void flush(Svg svg, List<double[][]> same, String colour) {
        if (!same.isEmpty()) {
            svg.patches(same, "fill=\"" + colour + "\" stroke=\"" + colour + "\" stroke-width=\".8\"");
            same.clear();
        }
    }

    private static double tenth(double pixels) {
        return Math.rint(pixels * 10) / 10;
    }

    private void cut(double longest) {
        for (int f = 0; f < facets.normals.length; f++) {
            if (!faces(f)) {
                continue;
            }
            add(new Vec3[] {facets.corner(f, 0), facets.corner(f, 1), facets.corner(f, 2)}, colour(f), longest);
            for (int k = 0; k < 3; k++) {
                int other = facets.beyond(f, k);
                boolean rim = !faces(other);
                if (rim) {
                    line(f, k, EDGE + "2.6\"", -Double.MAX_VALUE, longest);
                }
                // an edge between two facets is painted once
                if (edges && (rim || (f < other && facets.sharp(f, other)))) {
                    line(f, k, EDGE + "1.1\"", EDGE_NEARER * size(), longest);
                }
            }
        }
    }

    private boolean faces(int f) {
        return facets.normals[f].dot(EYE) > 0;
    }

    /** A side of a facet, in pieces no longer than a patch. */
    private void line(int f, int k, String style, double nearer, double longest) {
        Vec3 from = facets.corner(f, k);
        Vec3 way = facets.corner(f, (k + 1) % 3).minus(from);
        int parts = nearer > 0 ? Math.max(1, (int) Math.ceil(way.norm() / longest)) : 1;
        for (int p = 0; p < parts; p++) {
            Vec3 a = from.plus(way.times((double) p / parts));
            Vec3 b = from.plus(way.times((double) (p + 1) / parts));
            patches.add(new Patch(new Vec3[] {a, b}, style, a.plus(b).dot(EYE) / 2 + nearer));
        }
    }

    /** Halves the longest side until all are short enough. */
    private void add(Vec3[] corners, String colour, double longest) {
        int far = 0;
        double most = 0;
        for (int k = 0; k < 3; k++) {
            double length = corners[(k + 1) % 3].minus(corners[k]).norm();
            if (length > most) {
                most = length;
                far = k;
            }
        }
        Vec3 a = corners[far];
        Vec3 b = corners[(far + 1) % 3];
        Vec3 c = corners[(far + 2) % 3];
        if (most <= longest) {
            patches.add(new Patch(corners, colour, a.plus(b).plus(c).dot(EYE) / 3));
            return;
        }
        Vec3 m = a.plus(b).times(0.5);
        add(new Vec3[] {a, m, c}, colour, longest);
        add(new Vec3[] {m, b, c}, colour, longest);
    }

    private String colour(int f) {
        double lit = Math.max(0, facets.smooth(f).dot(LIGHT));
        double shade = AMBIENT + (1 - AMBIENT) * Math.rint(lit * SHADES) / SHADES;
        StringBuilder out = new StringBuilder("#");
        for (int part : COLOUR) {
            int value = (int) Math.rint(part * shade);
            out.append(Character.forDigit(value >> 4, 16)).append(Character.forDigit(value & 15, 16));
        }
        return out.toString();
    }

    /** What is painted at once: a triangle in its colour, or a line in its style; the larger {@code near}, the later. */
    private record Patch(Vec3[] corners, String colour, double near) {}
}
