package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Normals of the facets of a mesh, and at their corners those of the smooth surface they seem to follow: the mean over
 * the facets around the corner that turn from the facet by less than a crease, weighed by their angles there.
 */
final class FacetNormals {
    /** Turn at an edge from which it is meant as an edge, rad: 18 facets around. */
    static final double CREASE = Math.toRadians(20);

    private static final double SMOOTH = Math.cos(CREASE);
    private static final double SMOOTH_ALL_ROUND = Math.cos(CREASE / 2);

    private final TriangleMesh mesh;
    private final VertexStars stars;
    private final boolean[] open;
    /** Inward, of length 1; zero for a facet without area. */
    private final double[] normal;

    /** Inward, of length 1, of vertices that lie in a smooth surface; NaN where it is creased. */
    private final double[] atVertex;

    /** Of a mesh whose open facets count. */
    FacetNormals(TriangleMesh mesh, VertexStars stars, boolean[] open) {
        this.mesh = mesh;
        this.stars = stars;
        this.open = open;
        normal = new double[3 * mesh.facetCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            double x = FaceSets.doubled(mesh, f, 1, 2);
            double y = FaceSets.doubled(mesh, f, 2, 0);
            double z = FaceSets.doubled(mesh, f, 0, 1);
            double size = Math.sqrt(x * x + y * y + z * z);
            normal[3 * f] = size > 0 ? -x / size : 0;
            normal[3 * f + 1] = size > 0 ? -y / size : 0;
            normal[3 * f + 2] = size > 0 ? -z / size : 0;
        }
        atVertex = new double[3 * mesh.vertexCount()];
        double[] mean = new double[3];
        for (int v = 0; v < mesh.vertexCount(); v++) {
            vertex(v, mean);
        }
    }

    private void vertex(int v, double[] mean) {
        boolean smooth = mean(v, mean);
        for (int i = 0; i < stars.count(v) && smooth; i++) {
            int facet = stars.facet(v, i);
            double cosine =
                    normal[3 * facet] * mean[0] + normal[3 * facet + 1] * mean[1] + normal[3 * facet + 2] * mean[2];
            smooth = !open[facet] || cosine > SMOOTH_ALL_ROUND;
        }
        for (int k = 0; k < 3; k++) {
            atVertex[3 * v + k] = smooth ? mean[k] : Double.NaN;
        }
    }

    /** Sets the mean inward normal of the open facets at a vertex, weighed by their angles; false where there is none. */
    boolean mean(int vertex, double[] out) {
        Arrays.fill(out, 0);
        for (int i = 0; i < stars.count(vertex); i++) {
            add(stars.facet(vertex, i), vertex, out);
        }
        return shortened(out);
    }

    /** Adds the normal of an open facet, weighed by its angle at a vertex. */
    private void add(int facet, int vertex, double[] sum) {
        double angle = open[facet] ? angle(facet, vertex) : 0;
        for (int k = 0; k < 3; k++) {
            sum[k] += angle * normal[3 * facet + k];
        }
    }

    /** Gives a vector the length 1, if it has any. */
    static boolean shortened(double[] vector) {
        double size = Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
        for (int k = 0; k < 3; k++) {
            vector[k] /= size;
        }
        return size > 0;
    }

    /** Whether a facet has an area. */
    boolean has(int facet) {
        return turn(facet, facet) > 0;
    }

    /** Component of the inward normal of a facet. */
    double at(int facet, int axis) {
        return normal[3 * facet + axis];
    }

    /** Cosine of the turn between two facets. */
    double turn(int one, int two) {
        return normal[3 * one] * normal[3 * two]
                + normal[3 * one + 1] * normal[3 * two + 1]
                + normal[3 * one + 2] * normal[3 * two + 2];
    }

    /** Whether two open facets belong to one smooth surface. */
    boolean smooth(int one, int two) {
        return turn(one, two) > SMOOTH;
    }

    /** Sets the inward normal at a vertex of the smooth surface that a facet there belongs to. */
    void corner(int facet, int vertex, double[] out) {
        if (!Double.isNaN(atVertex[3 * vertex])) {
            System.arraycopy(atVertex, 3 * vertex, out, 0, 3);
            return;
        }
        Arrays.fill(out, 0);
        for (int i = 0; i < stars.count(vertex); i++) {
            int beside = stars.facet(vertex, i);
            if (smooth(facet, beside)) {
                add(beside, vertex, out);
            }
        }
        if (!shortened(out)) {
            System.arraycopy(normal, 3 * facet, out, 0, 3);
        }
    }

    /**
     * Sets the inward normal at a tip when one comes along an edge of a facet: that at the other end, carried on through
     * the mean of both facets, which is the one halfway.
     */
    void tip(int facet, int tip, int end, double[] atEnd, double[] out) {
        int beside = beside(facet, tip, end);
        for (int k = 0; k < 3; k++) {
            out[k] = normal[3 * facet + k] + (beside < 0 ? 0 : normal[3 * beside + k]);
        }
        shortened(out);
        for (int k = 0; k < 3; k++) {
            out[k] = 2 * out[k] - atEnd[k];
        }
        shortened(out);
    }

    /** Open facet across an edge that is smooth with a facet; -1 where there is none. */
    private int beside(int facet, int from, int to) {
        for (int i = 0; i < stars.count(from); i++) {
            int other = stars.facet(from, i);
            if (other != facet && stars.corner(other, to) >= 0 && open[other] && smooth(facet, other)) {
                return other;
            }
        }
        return -1;
    }

    /** Whether the smooth surface that a facet belongs to turns by more than a crease around a vertex: a cone's tip. */
    boolean pointed(int facet, int vertex) {
        if (!Double.isNaN(atVertex[3 * vertex])) {
            return false;
        }
        int k = stars.corner(facet, vertex);
        return turns(facet, vertex, mesh.corner(facet, (k + 1) % 3))
                || turns(facet, vertex, mesh.corner(facet, (k + 2) % 3));
    }

    private boolean turns(int facet, int vertex, int side) {
        int at = facet;
        int edge = side;
        for (int i = 0; i < stars.count(vertex); i++) {
            int next = beside(at, vertex, edge);
            if (next < 0 || next == facet) {
                return false;
            }
            if (!smooth(facet, next)) {
                return true;
            }
            int third = 3 - stars.corner(next, vertex) - stars.corner(next, edge);
            edge = mesh.corner(next, third);
            at = next;
        }
        return false;
    }

    /** Angle of a facet at a vertex, rad. */
    private double angle(int facet, int vertex) {
        int k = stars.corner(facet, vertex);
        int b = mesh.corner(facet, (k + 1) % 3);
        int c = mesh.corner(facet, (k + 2) % 3);
        double uu = 0;
        double ww = 0;
        double uw = 0;
        for (int i = 0; i < 3; i++) {
            double u = mesh.at(b, i) - mesh.at(vertex, i);
            double w = mesh.at(c, i) - mesh.at(vertex, i);
            uu += u * u;
            ww += w * w;
            uw += u * w;
        }
        return Math.atan2(Math.sqrt(Math.max(0, uu * ww - uw * uw)), uw);
    }
}
