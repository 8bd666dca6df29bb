package org.fizzhull.mesh;

/**
 * The thinnest wall between the lower half of a dry hollow and the outside, m: from vertices and middles of facets of
 * either to the facets of the other. Higher up a rim may taper to an edge; that part stands out of the water and stays.
 */
final class HollowWall {
    private static final double SLACK = 1e-9;

    private HollowWall() {}

    /** Of hollows, with the facets flagged that water wets outside. */
    static double least(OpenHollows hollows, boolean[] outside) {
        TriangleMesh mesh = hollows.mesh;
        boolean[] inside = new boolean[outside.length];
        for (int f = 0; f < inside.length; f++) {
            inside[f] = hollows.dryOwner(f) >= 0;
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                inside[f] &= hollows.in(v) && mesh.at(v, 2) <= hollows.middle(v);
            }
        }
        boolean any = FaceSets.any(inside);
        double least = Double.POSITIVE_INFINITY;
        FacetTree.Probe out = new FacetTree(mesh, outside).probe();
        for (int f = 0; f < inside.length; f++) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                if (hollows.in(v) && mesh.at(v, 2) <= hollows.middle(v)) {
                    least = Math.min(least, out.distance(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2), SLACK));
                    least = Math.min(least, halfWay(mesh, v, mesh.corner(f, (k + 1) % 3), hollows.middle(v), out));
                }
            }
        }
        return any ? Math.min(least, Math.min(middles(mesh, inside, out), corners(mesh, outside, inside))) : least;
    }

    /** From where an edge crosses the middle height; endless where it does not. */
    private static double halfWay(TriangleMesh mesh, int v, int w, double middle, FacetTree.Probe out) {
        double t = (middle - mesh.at(v, 2)) / (mesh.at(w, 2) - mesh.at(v, 2));
        if (!(t > 0 && t < 1)) {
            return Double.POSITIVE_INFINITY;
        }
        double x = mesh.at(v, 0) + t * (mesh.at(w, 0) - mesh.at(v, 0));
        double y = mesh.at(v, 1) + t * (mesh.at(w, 1) - mesh.at(v, 1));
        return out.distance(x, y, middle, SLACK);
    }

    private static double middles(TriangleMesh mesh, boolean[] set, FacetTree.Probe probe) {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < set.length; f++) {
            if (set[f]) {
                least = Math.min(
                        least, probe.distance(middle(mesh, f, 0), middle(mesh, f, 1), middle(mesh, f, 2), SLACK));
            }
        }
        return least;
    }

    private static double corners(TriangleMesh mesh, boolean[] outside, boolean[] inside) {
        FacetTree.Probe in = new FacetTree(mesh, inside).probe();
        double least = middles(mesh, outside, in);
        for (int f = 0; f < outside.length; f++) {
            int v = mesh.corner(f, 0);
            if (outside[f]) {
                least = Math.min(least, in.distance(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2), SLACK));
            }
        }
        return least;
    }

    private static double middle(TriangleMesh mesh, int f, int axis) {
        return (mesh.at(mesh.corner(f, 0), axis) + mesh.at(mesh.corner(f, 1), axis) + mesh.at(mesh.corner(f, 2), axis))
                / 3;
    }
}
