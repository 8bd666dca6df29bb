package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * The ways into the material that start at the open facets of a mesh, in the directions of the normals of the smooth
 * surface that the facets seem to follow. Two facets that make a flat four-sided figure are one bundle, and a facet at the
 * tip of a cone has a normal there for each of its edges.
 */
final class FacetPrisms {
    private final TriangleMesh mesh;
    private final FacetNormals normals;
    private final FlatPairs pairs;
    private final int[] facets;
    private int count;

    FacetPrisms(TriangleMesh mesh, VertexStars stars, FacetNormals normals, boolean[] open, int[] order) {
        this.mesh = mesh;
        this.normals = normals;
        pairs = new FlatPairs(mesh, stars, normals, open);
        facets = new int[order.length];
        for (int facet : order) {
            if (normals.has(facet) && pairs.partner(facet) < facet) {
                facets[count++] = facet;
            }
        }
    }

    /** Number of bundles. */
    int count() {
        return count;
    }

    /** Sets a bundle. */
    void bundle(int i, FrontBundle out) {
        int facet = facets[i];
        if (pairs.partner(facet) >= 0) {
            pair(facet, pairs.partner(facet), out);
            return;
        }
        for (int k = 0; k < 3; k++) {
            if (normals.pointed(facet, mesh.corner(facet, k))) {
                tip(facet, k, out);
                return;
            }
        }
        out.triangle = true;
        points(facet, 0, out.p, out.q, out);
        Arrays.fill(out.r, 0);
        directions(facet, 0, out);
        for (int k = 0; k < 3; k++) {
            out.g[k] = out.e[k] + out.f[k] - out.d[k];
        }
        out.fromCorners();
    }

    /** Two facets in one plane: from the corner of the first that is not on the edge between them. */
    private void pair(int facet, int beside, FrontBundle out) {
        int k = pairs.apart(facet);
        int far = mesh.corner(beside, pairs.apart(beside));
        out.triangle = false;
        points(facet, k, out.p, out.q, out);
        for (int i = 0; i < 3; i++) {
            out.r[i] = mesh.at(far, i) - out.o[i] - out.p[i] - out.q[i];
        }
        directions(facet, k, out);
        normals.corner(beside, far, out.g);
        out.fromCorners();
    }

    /** A facet at the tip of a cone: b runs from the tip to the edge across, c along that. */
    private void tip(int facet, int k, FrontBundle out) {
        int a = mesh.corner(facet, (k + 1) % 3);
        int b = mesh.corner(facet, (k + 2) % 3);
        out.triangle = false;
        points(facet, k, out.p, out.r, out);
        Arrays.fill(out.q, 0);
        for (int i = 0; i < 3; i++) {
            out.r[i] -= out.p[i];
        }
        normals.corner(facet, a, out.e);
        normals.corner(facet, b, out.g);
        normals.tip(facet, mesh.corner(facet, k), a, out.e, out.d);
        normals.tip(facet, mesh.corner(facet, k), b, out.g, out.f);
        out.fromCorners();
    }

    /** Sets a corner of a facet, and the ways from there to the next two. */
    private void points(int facet, int k, double[] next, double[] last, FrontBundle out) {
        for (int i = 0; i < 3; i++) {
            out.o[i] = mesh.at(mesh.corner(facet, k), i);
            next[i] = mesh.at(mesh.corner(facet, (k + 1) % 3), i) - out.o[i];
            last[i] = mesh.at(mesh.corner(facet, (k + 2) % 3), i) - out.o[i];
        }
    }

    /** Sets the normals at a corner of a facet and at the next two. */
    private void directions(int facet, int k, FrontBundle out) {
        normals.corner(facet, mesh.corner(facet, k), out.d);
        normals.corner(facet, mesh.corner(facet, (k + 1) % 3), out.e);
        normals.corner(facet, mesh.corner(facet, (k + 2) % 3), out.f);
    }
}
