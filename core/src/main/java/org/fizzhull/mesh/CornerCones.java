package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * The ways into the material that start at a vertex: the directions that no open edge or facet there comes nearer to,
 * which is where they make an obtuse angle with every open edge. Found as a polygon on the plane at distance 1 across the
 * mean inward normal, by cutting a large square with one line an edge. On the far side the same cone lies outside of the
 * material (Baerentzen and Aanaes 2005, IEEE Trans. Vis. Comput. Graph. 11, 243, from memory).
 */
final class CornerCones {
    /** Half side of the square: directions up to 89.7 degrees from the normal. */
    private static final double REACH = 200;

    /** Corners of the polygon nearer to each other are one. */
    private static final double SMALLEST = 1e-9;

    private final TriangleMesh mesh;
    private final VertexStars stars;
    private final FacetNormals normals;
    private final boolean[] open;
    private final double[] axis = new double[3];
    private final double[] right = new double[3];
    private final double[] up = new double[3];
    private final double[] middle = new double[3];
    private final double[] u = new double[3];
    private final double[] w = new double[3];
    private double[] px = new double[64];
    private double[] py = new double[64];
    private double[] nextX = new double[64];
    private double[] nextY = new double[64];
    private int count;
    private int[] tip = new int[16];
    private double[] rows = new double[144];
    private int cones;

    CornerCones(TriangleMesh mesh, VertexStars stars, FacetNormals normals, boolean[] open, EdgeWedges wedges) {
        this.mesh = mesh;
        this.stars = stars;
        this.normals = normals;
        this.open = open;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (wedges.wedgesAt(v) > 2 || (wedges.edgesAt(v) == 0 && pointed(v))) {
                find(v);
            }
        }
    }

    /** Whether facets without an edge between them turn from each other all the same: the tip of a cone. */
    private boolean pointed(int vertex) {
        for (int i = 1; i < stars.count(vertex); i++) {
            if (!normals.smooth(stars.facet(vertex, 0), stars.facet(vertex, i))) {
                return true;
            }
        }
        return false;
    }

    /** Number of parts. */
    int count() {
        return cones;
    }

    /** Sets a part of a cone. */
    void bundle(int i, FrontBundle out) {
        out.triangle = true;
        for (int k = 0; k < 3; k++) {
            out.o[k] = mesh.at(tip[i], k);
            out.p[k] = 0;
            out.q[k] = 0;
            out.r[k] = 0;
            out.d[k] = rows[9 * i + k];
            out.e[k] = rows[9 * i + 3 + k];
            out.f[k] = rows[9 * i + 6 + k];
            out.g[k] = 0;
        }
    }

    private void find(int vertex) {
        if (!frame(vertex)) {
            return;
        }
        square();
        for (int i = 0; i < stars.count(vertex) && count > 0; i++) {
            cut(stars.facet(vertex, i), vertex);
        }
        Arrays.fill(middle, 0);
        for (int i = 0; i < count; i++) {
            direction(i, u);
            for (int k = 0; k < 3; k++) {
                middle[k] += u[k];
            }
        }
        FacetNormals.shortened(middle);
        for (int i = 0; i < count; i++) {
            int j = i + 1 == count ? 0 : i + 1;
            if (Math.hypot(px[j] - px[i], py[j] - py[i]) > SMALLEST) {
                direction(i, u);
                direction(j, w);
                add(vertex);
            }
        }
    }

    /** Sets the direction to a corner of the polygon. */
    private void direction(int i, double[] out) {
        for (int k = 0; k < 3; k++) {
            out[k] = axis[k] + px[i] * right[k] + py[i] * up[k];
        }
        FacetNormals.shortened(out);
    }

    /** Adds the part between the middle and two corners of the polygon. */
    private void add(int vertex) {
        if (cones == tip.length) {
            tip = Arrays.copyOf(tip, 2 * cones);
            rows = Arrays.copyOf(rows, 18 * cones);
        }
        for (int k = 0; k < 3; k++) {
            rows[9 * cones + k] = middle[k];
            rows[9 * cones + 3 + k] = u[k] - middle[k];
            rows[9 * cones + 6 + k] = w[k] - middle[k];
        }
        tip[cones++] = vertex;
    }

    /** Sets the mean inward normal and two directions across; false where the normals leave none. */
    private boolean frame(int vertex) {
        if (!normals.mean(vertex, axis)) {
            return false;
        }
        double x = axis[0];
        double y = axis[1];
        double z = axis[2];
        int least = Math.abs(x) < Math.abs(y) ? (Math.abs(x) < Math.abs(z) ? 0 : 2) : Math.abs(y) < Math.abs(z) ? 1 : 2;
        int j = (least + 1) % 3;
        int k = (least + 2) % 3;
        double across = Math.sqrt(axis[j] * axis[j] + axis[k] * axis[k]);
        right[least] = 0;
        right[j] = -axis[k] / across;
        right[k] = axis[j] / across;
        for (int i = 0; i < 3; i++) {
            int m = (i + 1) % 3;
            int n = (i + 2) % 3;
            up[i] = axis[m] * right[n] - axis[n] * right[m];
        }
        return true;
    }

    private void sides(int facet, int vertex) {
        int k = stars.corner(facet, vertex);
        int b = mesh.corner(facet, (k + 1) % 3);
        int c = mesh.corner(facet, (k + 2) % 3);
        for (int i = 0; i < 3; i++) {
            u[i] = mesh.at(b, i) - mesh.at(vertex, i);
            w[i] = mesh.at(c, i) - mesh.at(vertex, i);
        }
    }

    private void square() {
        count = 4;
        for (int i = 0; i < 4; i++) {
            px[i] = i == 0 || i == 3 ? -REACH : REACH;
            py[i] = i < 2 ? -REACH : REACH;
        }
    }

    /** Keeps what makes an obtuse angle with both sides of an open facet, or lies behind a closed one. */
    private void cut(int facet, int vertex) {
        sides(facet, vertex);
        if (open[facet]) {
            cut(u[0], u[1], u[2]);
            cut(w[0], w[1], w[2]);
        } else {
            cut(u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]);
        }
    }

    private void cut(double x, double y, double z) {
        double size = Math.sqrt(x * x + y * y + z * z);
        double a = (x * axis[0] + y * axis[1] + z * axis[2]) / size;
        double b = (x * right[0] + y * right[1] + z * right[2]) / size;
        double c = (x * up[0] + y * up[1] + z * up[2]) / size;
        room();
        int left = 0;
        for (int i = 0; i < count; i++) {
            int j = i + 1 == count ? 0 : i + 1;
            double here = a + b * px[i] + c * py[i];
            double there = a + b * px[j] + c * py[j];
            if (here <= 0) {
                nextX[left] = px[i];
                nextY[left++] = py[i];
            }
            if (here <= 0 != there <= 0) {
                double t = here / (here - there);
                nextX[left] = px[i] + t * (px[j] - px[i]);
                nextY[left++] = py[i] + t * (py[j] - py[i]);
            }
        }
        count = left;
        double[] x0 = px;
        px = nextX;
        nextX = x0;
        double[] y0 = py;
        py = nextY;
        nextY = y0;
    }

    private void room() {
        if (count + 2 > px.length) {
            px = Arrays.copyOf(px, 2 * px.length);
            py = Arrays.copyOf(py, 2 * py.length);
        }
        if (nextX.length < px.length) {
            nextX = new double[px.length];
            nextY = new double[px.length];
        }
    }
}
