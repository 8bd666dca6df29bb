package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * The ways into the material that start at the edges of a mesh where it stands more than a half turn wide: those between
 * the inward normals of the two facets. Beside a closed facet they end along that facet.
 */
final class EdgeWedges {
    /** Wedges are cut into pieces no wider, rad. */
    private static final double WIDEST = Math.PI / 16;

    /** Narrower wedges hold nothing: rounding of coordinates, rad. */
    private static final double NARROWEST = 1e-6;

    private final TriangleMesh mesh;
    private final VertexStars stars;
    private final FacetNormals normals;
    private final boolean[] open;
    /** For each piece of a wedge the facet times three plus its edge, the facet beside, the piece, the number of pieces. */
    private int[] rows = new int[64];

    private int count;
    /** How many wedges start at a vertex, and how many sharp edges. */
    private final byte[] wedgesAt;

    private final byte[] edgesAt;
    private final double[] across = new double[3];
    private final double[] along = new double[3];
    /** Directions at the ends of a wedge. */
    private final double[] first = new double[3];

    private final double[] last = new double[3];

    EdgeWedges(TriangleMesh mesh, VertexStars stars, FacetNormals normals, boolean[] open, int[] order) {
        this.mesh = mesh;
        this.stars = stars;
        this.normals = normals;
        this.open = open;
        wedgesAt = new byte[mesh.vertexCount()];
        edgesAt = new byte[mesh.vertexCount()];
        for (int facet : order) {
            for (int k = 0; k < 3 && normals.has(facet); k++) {
                find(facet, k);
            }
        }
    }

    /** Number of pieces. */
    int count() {
        return count;
    }

    /** Number of wedges that start at a vertex. */
    int wedgesAt(int vertex) {
        return wedgesAt[vertex];
    }

    /** Number of edges at a vertex that are no chords of a smooth surface. */
    int edgesAt(int vertex) {
        return edgesAt[vertex];
    }

    private void find(int facet, int k) {
        int a = mesh.corner(facet, k);
        int b = mesh.corner(facet, (k + 1) % 3);
        int few = stars.fewer(a, b);
        frame(facet, k);
        int next = -1;
        double turn = 0;
        for (int i = 0; i < stars.count(few); i++) {
            int beside = stars.facet(few, i);
            boolean other = beside != facet && normals.has(beside);
            if (other && stars.corner(beside, a) >= 0 && stars.corner(beside, b) >= 0) {
                double angle = turnTo(facet, beside, a, b);
                if (next < 0 || angle < turn) {
                    turn = angle;
                    next = beside;
                }
            }
        }
        if (next < 0 || (open[next] && (next < facet || normals.smooth(facet, next)))) {
            return;
        }
        edgesAt[a] = more(edgesAt[a]);
        edgesAt[b] = more(edgesAt[b]);
        double wide = (open[next] ? turn - Math.PI / 2 : Math.min(turn, Math.PI)) - Math.PI / 2;
        if (wide > NARROWEST) {
            wedgesAt[a] = more(wedgesAt[a]);
            wedgesAt[b] = more(wedgesAt[b]);
            int pieces = (int) Math.ceil(wide / WIDEST);
            for (int i = 0; i < pieces; i++) {
                add(3 * facet + k, next, i, pieces);
            }
        }
    }

    private void add(int edge, int beside, int piece, int pieces) {
        if (4 * count == rows.length) {
            rows = Arrays.copyOf(rows, 8 * count);
        }
        rows[4 * count] = edge;
        rows[4 * count + 1] = beside;
        rows[4 * count + 2] = piece;
        rows[4 * count++ + 3] = pieces;
    }

    private static byte more(byte n) {
        return (byte) Math.min(n + 1, Byte.MAX_VALUE);
    }

    /** Sets the edge, and the direction across it into the facet, which has an area. */
    private void frame(int facet, int k) {
        int a = mesh.corner(facet, k);
        int b = mesh.corner(facet, (k + 1) % 3);
        int c = mesh.corner(facet, (k + 2) % 3);
        for (int i = 0; i < 3; i++) {
            along[i] = mesh.at(b, i) - mesh.at(a, i);
            across[i] = mesh.at(c, i) - mesh.at(a, i);
        }
        double down = dot(along, across) / dot(along, along);
        for (int i = 0; i < 3; i++) {
            across[i] -= down * along[i];
        }
        double height = Math.sqrt(dot(across, across));
        for (int i = 0; i < 3; i++) {
            across[i] /= height;
        }
    }

    /** Angle from the facet of the frame through the material to another facet at the edge, rad. */
    private double turnTo(int facet, int beside, int a, int b) {
        int third = 3 - stars.corner(beside, a) - stars.corner(beside, b);
        double u = 0;
        double v = 0;
        for (int i = 0; i < 3; i++) {
            double way = mesh.at(mesh.corner(beside, third), i) - mesh.at(a, i);
            u += way * across[i];
            v += way * normals.at(facet, i);
        }
        double angle = Math.atan2(v, u);
        return angle > 0 ? angle : angle + 2 * Math.PI;
    }

    private static double dot(double[] u, double[] v) {
        return u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
    }

    /** Sets a piece of a wedge. */
    void bundle(int i, FrontBundle out) {
        int facet = rows[4 * i] / 3;
        int k = rows[4 * i] % 3;
        int beside = rows[4 * i + 1];
        double low = (double) rows[4 * i + 2] / rows[4 * i + 3];
        double high = (rows[4 * i + 2] + 1.0) / rows[4 * i + 3];
        int a = mesh.corner(facet, k);
        int b = mesh.corner(facet, (k + 1) % 3);
        frame(facet, k);
        out.triangle = false;
        for (int j = 0; j < 3; j++) {
            out.o[j] = mesh.at(a, j);
            out.p[j] = along[j];
            out.q[j] = 0;
            out.r[j] = 0;
        }
        boolean half = !open[beside] && turnTo(facet, beside, a, b) > Math.PI;
        fan(facet, beside, half, a);
        between(low, out.d);
        between(high, out.f);
        fan(facet, beside, half, b);
        between(low, out.e);
        between(high, out.g);
        out.fromCorners();
    }

    /** Sets the first and the last direction at a vertex; a half turn of a wedge ends back over the facet itself. */
    private void fan(int facet, int beside, boolean half, int vertex) {
        normals.corner(facet, vertex, first);
        if (open[beside]) {
            normals.corner(beside, vertex, last);
            return;
        }
        double up = 0;
        for (int j = 0; j < 3; j++) {
            up += first[j] * normals.at(beside, j);
        }
        for (int j = 0; j < 3; j++) {
            last[j] = half ? -across[j] : first[j] - up * normals.at(beside, j);
        }
        FacetNormals.shortened(last);
    }

    private void between(double share, double[] out) {
        double angle = Math.acos(Math.max(-1, Math.min(1, dot(first, last))));
        for (int j = 0; j < 3; j++) {
            // opposite ways go round across the edge
            out[j] = angle > Math.PI - NARROWEST
                    ? Math.cos(share * angle) * first[j] - Math.sin(share * angle) * across[j]
                    : Math.sin((1 - share) * angle) * first[j] + Math.sin(share * angle) * last[j];
        }
        FacetNormals.shortened(out);
    }
}
