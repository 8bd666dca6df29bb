package org.fizzhull.mesh;

/**
 * Cubic lattice over a mesh. It begins exactly in the lowest plane, so that a flat resting face is a face of cubes; to
 * the sides it is moved off the middle, so that it does not share the symmetry of the body, whose medial surfaces would
 * then lie along faces of cubes and be seen everywhere or nowhere.
 */
final class DepthLattice {
    private static final double OFF_X = 0.137;
    private static final double OFF_Y = 0.274;

    private final TriangleMesh mesh;
    private final double[] origin = new double[3];
    private final int[] blocks = new int[3];
    private final double fine;
    private final double floor;

    /** A lattice whose blocks have a side of {@code block}, m. */
    DepthLattice(TriangleMesh mesh, double block) {
        this.mesh = mesh;
        this.fine = block / DepthField.FINE;
        double[] box = mesh.box();
        double[] off = {OFF_X, OFF_Y, 0};
        for (int k = 0; k < 3; k++) {
            double length = box[k + 3] - box[k];
            blocks[k] = (int) Math.ceil(length / block + 2 * off[k]);
            origin[k] = k == 2 ? box[2] : (box[k] + box[k + 3] - blocks[k] * block) / 2 + off[k] * block;
        }
        floor = FaceSets.floor(box);
    }

    int blocks(int axis) {
        return blocks[axis];
    }

    /** Distance of lattice points, m. */
    double fine() {
        return fine;
    }

    /** Vertical rays through the lattice points against some facets. */
    RayTable rays(boolean[] facets) {
        int nu = blocks[0] * DepthField.FINE + 1;
        int nv = blocks[1] * DepthField.FINE + 1;
        return new RayTable(mesh, facets, 2, origin[0], origin[1], fine, nu, nv);
    }

    /** The same against the walls of hollows, which face the other way: inside is what they enclose. */
    RayTable hollowRays(boolean[] walls) {
        RayTable rays = rays(walls);
        rays.turn();
        return rays;
    }

    /** Whether a lattice point lies inside; points of the lowest plane are looked at from just above it. */
    boolean inside(RayTable rays, int i, int j, int k) {
        return rays.inside(i, j, Math.max(origin[2] + k * fine, floor));
    }

    /** Distance of a lattice point, m. */
    double distance(FacetTree.Probe probe, int i, int j, int k, double slack) {
        return probe.distance(origin[0] + i * fine, origin[1] + j * fine, origin[2] + k * fine, slack);
    }
}
