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
 * centroids of the facets on one side to the facets on the other. The upper half is left out, since a rim may taper
 * to an edge there, which stays above the water and does not dissolve. Of a mesh with {@value #SAMPLES} facets or
 * more at most that many are sampled, at even intervals in their order. The wall found is an upper bound.
 */
final class HollowWall {
    private static final int SAMPLES = 4_000;

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
        double rim = hollows.rim() - hollows.tolerance();
        BitSet outside =
                wall.facets(f -> hollows.dryOwner(f) < 0 && mesh.corners(f).anyMatch(v -> mesh.at(v, 2) < rim));
        BitSet inside = wall.facets(f -> mesh.corners(f).allMatch(wall::lowerHalf));
        NearestFacet toOutside = wall.nearestOf(outside, tree);
        wall.measureFromFacets(inside, toOutside);
        wall.measureFromLowerHalf(FaceSets.others(mesh, inside), toOutside);
        if (!inside.isEmpty()) {
            wall.measureFromFacets(outside, wall.nearestOf(inside, tree));
        }
        return wall.least;
    }

    private BitSet facets(IntPredicate which) {
        BitSet set = new BitSet();
        IntStream.range(0, mesh.facetCount()).filter(which).forEach(set::set);
        return set;
    }

    /** The search for the nearest of these facets alone. */
    private NearestFacet nearestOf(BitSet facets, FacetTree tree) {
        return new NearestFacet(tree, FaceSets.others(mesh, facets));
    }

    private boolean lowerHalf(int v) {
        return hollows.inDryHollow(v) && mesh.at(v, 2) <= hollows.midHeight(v);
    }

    private IntStream sample(BitSet facets) {
        int stride = 1 + mesh.facetCount() / SAMPLES;
        return facets.stream().filter(f -> f % stride == 0);
    }

    /** Measures from the corners and centroids of facets. */
    private void measureFromFacets(BitSet facets, NearestFacet to) {
        sample(facets).forEach(f -> {
            double[] centroid = new double[3];
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                measureFrom(v, v, 0, mesh.at(v, 2), to);
                for (int axis = 0; axis < 3; axis++) {
                    centroid[axis] += mesh.at(v, axis) / 3;
                }
            }
            least = to.distance(centroid[0], centroid[1], centroid[2], least);
        });
    }

    /** Measures from the corners in the lower half of a hollow, and from the points at which edges leave it. */
    private void measureFromLowerHalf(BitSet facets, NearestFacet to) {
        sample(facets)
                .forEach(f -> mesh.corners(f).filter(this::lowerHalf).forEach(v -> {
                    measureFrom(v, v, 0, mesh.at(v, 2), to);
                    mesh.corners(f).forEach(w -> {
                        double t = (hollows.midHeight(v) - mesh.at(v, 2)) / (mesh.at(w, 2) - mesh.at(v, 2));
                        if (t > 0 && t < 1) {
                            measureFrom(v, w, t, hollows.midHeight(v), to);
                        }
                    });
                }));
    }

    /** Measures from the point at a share t (0 to 1) of the way from vertex v to w, whose height is z, m. */
    private void measureFrom(int v, int w, double t, double z, NearestFacet to) {
        double x = mesh.at(v, 0) + t * (mesh.at(w, 0) - mesh.at(v, 0));
        double y = mesh.at(v, 1) + t * (mesh.at(w, 1) - mesh.at(v, 1));
        least = to.distance(x, y, z, least);
    }
}
