package org.fizzhull.mesh.hollow;

import java.util.BitSet;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.distance.NearestFacet;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * The thinnest wall between the lower half of a dry hollow and the outside, m: from corners and middles of facets of
 * either to the facets of the other. Higher up a rim may taper to an edge; that part stands out of the water and stays.
 * Of a mesh of many facets some are asked, evenly.
 */
final class HollowWall {
    private static final int ASKED = 4_000;

    private final TriangleMesh mesh;
    private final int stride;
    private double least = Double.POSITIVE_INFINITY;

    private HollowWall(TriangleMesh mesh) {
        this.mesh = mesh;
        stride = 1 + mesh.facetCount() / ASKED;
    }

    /** Of hollows, with the numbers of the facets that water wets outside. */
    static double least(OpenHollows hollows, FacetTree tree, BitSet outside) {
        HollowWall wall = new HollowWall(hollows.mesh);
        BitSet inside = new BitSet();
        NearestFacet out = wall.to(outside, tree);
        for (int f = 0; f < wall.mesh.facetCount(); f++) {
            boolean in = hollows.dryOwner(f) >= 0;
            for (int k = 0; k < 3; k++) {
                in &= wall.lower(hollows, wall.mesh.corner(f, k));
            }
            inside.set(f, in);
            for (int k = 0; k < 3 && f % wall.stride == 0 && !in; k++) {
                int v = wall.mesh.corner(f, k);
                if (wall.lower(hollows, v)) {
                    wall.halfWay(v, wall.mesh.corner(f, (k + 1) % 3), hollows.middle(v), out);
                    wall.halfWay(v, wall.mesh.corner(f, (k + 2) % 3), hollows.middle(v), out);
                }
            }
        }
        wall.ask(inside, out);
        if (!inside.isEmpty()) {
            wall.ask(outside, wall.to(inside, tree));
        }
        return wall.least;
    }

    /** Distances to some facets alone. */
    private NearestFacet to(BitSet facets, FacetTree tree) {
        return new NearestFacet(tree, FaceSets.others(mesh, facets));
    }

    private boolean lower(OpenHollows hollows, int v) {
        return hollows.in(v) && mesh.at(v, 2) <= hollows.middle(v);
    }

    /** From a vertex of the lower half, and from where an edge from there leaves it. */
    private void halfWay(int v, int w, double middle, NearestFacet out) {
        from(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2), out);
        double t = (middle - mesh.at(v, 2)) / (mesh.at(w, 2) - mesh.at(v, 2));
        if (t > 0 && t < 1) {
            from(
                    mesh.at(v, 0) + t * (mesh.at(w, 0) - mesh.at(v, 0)),
                    mesh.at(v, 1) + t * (mesh.at(w, 1) - mesh.at(v, 1)),
                    middle,
                    out);
        }
    }

    private void ask(BitSet set, NearestFacet probe) {
        for (int f = 0; f < mesh.facetCount(); f += stride) {
            double[] middle = new double[3];
            for (int k = 0; k < 3 && set.get(f); k++) {
                int v = mesh.corner(f, k);
                from(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2), probe);
                for (int axis = 0; axis < 3; axis++) {
                    middle[axis] += mesh.at(v, axis) / 3;
                }
            }
            if (set.get(f)) {
                from(middle[0], middle[1], middle[2], probe);
            }
        }
    }

    private void from(double x, double y, double z, NearestFacet probe) {
        least = probe.distance(x, y, z, least);
    }
}
