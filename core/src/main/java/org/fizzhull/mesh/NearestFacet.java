package org.fizzhull.mesh;

/** Asks a {@link FacetTree} for distances. */
final class NearestFacet extends TreeDescent {
    NearestFacet(FacetTree tree) {
        super(tree);
    }

    /** Distance from a point to the nearest facet, m. */
    double distance(double px, double py, double pz) {
        x = px;
        y = py;
        z = pz;
        reach = Double.POSITIVE_INFINITY;
        descend();
        return Math.sqrt(reach);
    }

    @Override
    boolean better(double squared) {
        if (squared < reach) {
            reach = squared;
            return true;
        }
        return false;
    }

    @Override
    boolean worth(int node) {
        return true;
    }
}
