package org.fizzhull.mesh.hollow;

import java.util.BitSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.distance.NearestFacet;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * The thinnest wall between the lower half of a dry hollow and the outside, m: the least distance from corners and
 * centroids of facets of either to the facets of the other. Higher up a rim may taper to an edge; that part stands out of
 * the water and stays. Of a mesh with many facets about 4,000, evenly spread, are asked.
 */
final class HollowWall {
    private static final int ASKED = 4_000;

    private final OpenHollows hollows;
    private final TriangleMesh mesh;
    private double least = Double.POSITIVE_INFINITY;

    private HollowWall(OpenHollows hollows) {
        this.hollows = hollows;
        mesh = hollows.mesh;
    }

    /** Thinnest wall of the dry hollows of a mesh, m; the tree is that of its facets. */
    static double least(OpenHollows hollows, FacetTree tree) {
        HollowWall wall = new HollowWall(hollows);
        TriangleMesh mesh = hollows.mesh;
        double rim = hollows.rim() - hollows.same();
        BitSet outside =
                wall.facets(f -> hollows.dryOwner(f) < 0 && mesh.corners(f).anyMatch(v -> mesh.at(v, 2) < rim));
        BitSet inside = wall.facets(f -> mesh.corners(f).allMatch(wall::lowerHalf));
        NearestFacet toOutside = wall.to(outside, tree);
        wall.askFacets(inside, toOutside);
        wall.askEdges(FaceSets.others(mesh, inside), toOutside);
        if (!inside.isEmpty()) {
            wall.askFacets(outside, wall.to(inside, tree));
        }
        return wall.least;
    }

    private BitSet facets(IntPredicate which) {
        BitSet set = new BitSet();
        IntStream.range(0, mesh.facetCount()).filter(which).forEach(set::set);
        return set;
    }

    /** Distances to these facets alone. */
    private NearestFacet to(BitSet facets, FacetTree tree) {
        return new NearestFacet(tree, FaceSets.others(mesh, facets));
    }

    private boolean lowerHalf(int v) {
        return hollows.in(v) && mesh.at(v, 2) <= hollows.middle(v);
    }

    private IntStream asked(BitSet facets) {
        int stride = 1 + mesh.facetCount() / ASKED;
        return facets.stream().filter(f -> f % stride == 0);
    }

    /** From corners and centroids of facets. */
    private void askFacets(BitSet facets, NearestFacet to) {
        asked(facets).forEach(f -> {
            double[] centroid = new double[3];
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                ask(v, v, 0, mesh.at(v, 2), to);
                for (int axis = 0; axis < 3; axis++) {
                    centroid[axis] += mesh.at(v, axis) / 3;
                }
            }
            least = to.distance(centroid[0], centroid[1], centroid[2], least);
        });
    }

    /** From corners in the lower half, and from where edges leave it. */
    private void askEdges(BitSet facets, NearestFacet to) {
        asked(facets)
                .forEach(f -> mesh.corners(f).filter(this::lowerHalf).forEach(v -> {
                    ask(v, v, 0, mesh.at(v, 2), to);
                    mesh.corners(f).forEach(w -> {
                        double t = (hollows.middle(v) - mesh.at(v, 2)) / (mesh.at(w, 2) - mesh.at(v, 2));
                        if (t > 0 && t < 1) {
                            ask(v, w, t, hollows.middle(v), to);
                        }
                    });
                }));
    }

    /** From the point of an edge at a share t of the way from v to w, which is at height z, m. */
    private void ask(int v, int w, double t, double z, NearestFacet to) {
        double x = mesh.at(v, 0) + t * (mesh.at(w, 0) - mesh.at(v, 0));
        double y = mesh.at(v, 1) + t * (mesh.at(w, 1) - mesh.at(v, 1));
        least = to.distance(x, y, z, least);
    }
}
