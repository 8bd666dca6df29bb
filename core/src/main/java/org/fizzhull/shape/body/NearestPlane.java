package org.fizzhull.shape.body;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * The direction in which a plane that touches a mesh is nearest to its centroid c: the least of the support function
 * {@code h(n) = max n . (x - c)} over all unit vectors n.
 * <ol>
 *   <li>h is evaluated in 400 even directions; those lower than all around them are followed.
 *   <li>With m = n/h a direction is a point of the polar polytope {@code v . m <= 1} (one inequality for each corner
 *       v), and the least h is its farthest point, a corner: the normal of a facet of the convex hull.
 *   <li>The climb there is exact: the facet of the convex hull that the ray along n pierces (a linear programme in
 *       three unknowns, by the simplex method), then the one that its normal pierces, until it pierces itself.
 * </ol>
 *
 * <p>Error: 1e-9 rad in the facet found; a facet whose low directions lie all between those of the lattice can be
 * missed. Cost: the corner farthest along a direction comes from the tree of facets, so a few milliseconds for any
 * mesh. Used by {@link PolyhedronHull#nearestPlane}. For any other hull: {@code EvenDirections} of the package
 * geometry.
 */
final class NearestPlane {
    /** Directions of the lattice. */
    private static final int DIRECTIONS = 400;

    /** Even directions of that number have all their neighbours within this angle. */
    private static final double AROUND = Math.cos(0.25);

    /** Steps of the simplex method after which the facet so far is taken. */
    private static final int MOST_PIVOTS = 300;
    /** Facets that a climb visits at most. */
    private static final int MOST_FACETS = 100;

    /** Of the size: the first three points of the simplex lie this deep inside the body. */
    private static final double INSIDE = 1e-4;

    /** Nearer by less than this share is not nearer. */
    private static final double SAME = 1e-12;

    /** Facets of the mesh, for the corner farthest along a direction. */
    private final FacetTree tree;
    /** Point from which planes are measured, m. */
    private final Vec3 centroid;
    /** Longest side of the box, m. */
    private final double size;

    private NearestPlane(FacetTree tree, Vec3 centroid) {
        this.tree = tree;
        this.centroid = centroid;
        double[] box = tree.mesh().box();
        size = Math.max(box[3] - box[0], Math.max(box[4] - box[1], box[5] - box[2]));
    }

    /** A unit vector of the frame of the mesh of a tree. */
    static Vec3 of(FacetTree tree, Vec3 centroid) {
        return new NearestPlane(tree, centroid).search();
    }

    /** The corner farthest along a direction, from the centroid, m. */
    private Vec3 farthest(Vec3 n) {
        return tree.farthest(n.x(), n.y(), n.z()).minus(centroid);
    }

    /** The best of all climbs. */
    private Vec3 search() {
        // the lattice, and the distance of the touching plane in each direction
        Vec3[] tried = new Vec3[DIRECTIONS];
        double[] height = new double[DIRECTIONS];
        for (int i = 0; i < DIRECTIONS; i++) {
            tried[i] = Vec3.spread(i, DIRECTIONS);
            height[i] = support(tried[i]);
        }
        Vec3 best = Vec3.UP;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < DIRECTIONS; i++) {
            if (!isLowest(i, tried, height)) {
                continue;
            }
            Vec3 n = climbed(tried[i]);
            double h = support(n);
            if (h < least * (1 - SAME)) {
                least = h;
                best = n;
            }
        }
        return best;
    }

    /** Whether none of the directions around one is lower. */
    private static boolean isLowest(int i, Vec3[] tried, double[] height) {
        for (int k = 0; k < DIRECTIONS; k++) {
            if (height[k] < height[i] && tried[k].dot(tried[i]) > AROUND) {
                return false;
            }
        }
        return true;
    }

    /** Distance of the touching plane with the outward normal n from the centroid, m. */
    private double support(Vec3 n) {
        return farthest(n).dot(n);
    }

    /** From a direction from facet to facet until the plane comes no nearer: a local minimum. */
    private Vec3 climbed(Vec3 from) {
        Vec3 n = from;
        double h = support(n);
        for (int pass = 0; pass < MOST_FACETS; pass++) {
            Vec3 next = pierced(n);
            double there = support(next);
            if (!(there < h * (1 - SAME))) {
                return n;
            }
            n = next;
            h = there;
        }
        return n;
    }

    /**
     * Normal of the facet of the convex hull that the ray from the centroid along a direction pierces.
     *
     * <p>Three corners of a plane that the ray pierces are kept; the corner farthest beyond that plane comes in for the
     * one that can leave, until none lies beyond. The first three are points inside the body, around the ray.
     */
    private Vec3 pierced(Vec3 ray) {
        // three points of a small triangle that the ray pierces, well inside the body
        Vec3 u = (Math.abs(ray.x()) < 0.6 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0))
                .cross(ray)
                .unit();
        Vec3 w = ray.cross(u);
        double small = INSIDE * size;
        Vec3[] corner = {
            ray.plus(u).times(small),
            ray.minus(u.times(0.5)).plus(w.times(Math.sqrt(0.75))).times(small),
            ray.minus(u.times(0.5)).minus(w.times(Math.sqrt(0.75))).times(small)
        };
        Vec3 plane = plane(corner);
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            // the corner farthest beyond the plane of the three
            Vec3 enters = farthest(plane);
            if (!(enters.dot(plane) > 1 + SAME)) {
                break;
            }
            int leaves = leaving(corner, ray, enters);
            if (leaves < 0) {
                break;
            }
            corner[leaves] = enters;
            plane = plane(corner);
        }
        return plane.norm() > 0 && plane.norm() < Double.POSITIVE_INFINITY ? plane.unit() : ray;
    }

    /** m with m . corner = 1 for all three. */
    private static Vec3 plane(Vec3[] c) {
        Vec3 sum = c[1].cross(c[2]).plus(c[2].cross(c[0])).plus(c[0].cross(c[1]));
        return sum.times(1 / c[0].dot(c[1].cross(c[2])));
    }

    /** The corner without which the cone of the others and the new one still holds the ray. */
    private static int leaving(Vec3[] c, Vec3 ray, Vec3 enters) {
        int leaves = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            // shares of the ray and of the new corner that belong to corner i; the smallest ratio leaves
            Vec3 face = c[(i + 1) % 3].cross(c[(i + 2) % 3]);
            double whole = face.dot(c[i]);
            double part = face.dot(enters) / whole;
            double ratio = face.dot(ray) / whole / part;
            if (part > SAME && ratio < least) {
                least = ratio;
                leaves = i;
            }
        }
        return leaves;
    }
}
