package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Facets that make a flat four-sided figure with a neighbour across the longest edge of both, as most programs cut the
 * walls of turned and swept bodies. Across the whole figure the normals of a cone turn evenly, across its halves not.
 */
final class FlatPairs {
    /** Cosine of the turn, 0.001 rad, below which facets lie in one plane: coordinates are rounded to single precision. */
    private static final double FLAT = 1 - 5e-7;

    private final TriangleMesh mesh;
    private final VertexStars stars;
    private final FacetNormals normals;
    private final int[] partner;

    FlatPairs(TriangleMesh mesh, VertexStars stars, FacetNormals normals, boolean[] open) {
        this.mesh = mesh;
        this.stars = stars;
        this.normals = normals;
        partner = new int[mesh.facetCount()];
        Arrays.fill(partner, -1);
        for (int f = 0; f < partner.length; f++) {
            if (open[f] && partner[f] < 0 && normals.has(f)) {
                join(f, open);
            }
        }
    }

    /** The other half, or -1. */
    int partner(int facet) {
        return partner[facet];
    }

    /** The corner of a facet that is not on its longest edge. */
    int apart(int facet) {
        return (longest(facet) + 2) % 3;
    }

    private void join(int facet, boolean[] open) {
        int k = longest(facet);
        int a = mesh.corner(facet, k);
        int b = mesh.corner(facet, (k + 1) % 3);
        int few = stars.fewer(a, b);
        for (int i = 0; i < stars.count(few); i++) {
            int beside = stars.facet(few, i);
            if (beside != facet
                    && open[beside]
                    && partner[beside] < 0
                    && normals.turn(facet, beside) > FLAT
                    && mesh.corner(beside, longest(beside)) == b
                    && mesh.corner(beside, (longest(beside) + 1) % 3) == a) {
                partner[facet] = beside;
                partner[beside] = facet;
                return;
            }
        }
    }

    /** Edge of a facet that is longest, by its first corner; the first of equal ones. */
    private int longest(int facet) {
        int longest = 0;
        double most = -1;
        for (int k = 0; k < 3; k++) {
            int a = mesh.corner(facet, k);
            int b = mesh.corner(facet, (k + 1) % 3);
            double square = 0;
            for (int i = 0; i < 3; i++) {
                double side = mesh.at(b, i) - mesh.at(a, i);
                square += side * side;
            }
            if (square > most) {
                most = square;
                longest = k;
            }
        }
        return longest;
    }
}
