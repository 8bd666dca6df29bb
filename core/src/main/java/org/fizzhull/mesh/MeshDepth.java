package org.fizzhull.mesh;

/**
 * What is left of a closed mesh at inward depths from its open facets. Chooses the lattice for {@link DepthField}, and
 * turns its fine levels into a table whose ends are exact: the volume of the mesh and the area of its open facets at
 * depth 0, nothing at the deepest point. Deterministic.
 */
public final class MeshDepth {
    /** Blocks are this share of the deepest depth, off a round number so that no level falls on a plane of the lattice. */
    private static final double BLOCK = 0.5086;

    /**
     * Cubes are halved that differ at the middle by more than this share of the deepest depth; a body with many cubes may
     * differ more.
     */
    private static final double TOLERANCE = 0.0015;

    private static final double MOST_TOLERANCE = 0.0025;

    /** Volume over the cube of the deepest depth of a ball, the most compact body. */
    private static final double COMPACT = 4.0 / 3 * Math.PI;

    /** About how many of the smallest cubes may lie along the medial surface. */
    private static final double MOST_ALONG_RIDGE = 70_000;

    private static final double MOST_BLOCKS = 60_000;
    private static final int LEVELS = 128;
    private static final int EVERY = 4;

    /** Accuracy of the volume (see the tests), and how it grows with the smallest cube over the deepest depth. */
    private static final double ACCURACY = 0.005;

    private static final double COARSE = 1.5;
    private static final double NOTHING = 1e-7;

    private MeshDepth() {}

    /**
     * Measures a mesh.
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the flat face in the lowest horizontal plane is closed
     * @param shutHollows whether closed hollows are closed to the front, which then runs from the outside only
     */
    public static DepthColumns of(TriangleMesh mesh, boolean shutResting, boolean shutHollows) {
        boolean[] all = FaceSets.all(mesh);
        boolean[] hollow = shutHollows ? FaceSets.hollows(mesh) : new boolean[all.length];
        boolean[] body = FaceSets.without(all, hollow);
        boolean[] open = shutResting ? FaceSets.without(body, FaceSets.resting(mesh)) : body;
        double volume = MassProperties.of(mesh).volume();
        if (!(volume > 0) || !FaceSets.any(open)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward and has an open facet");
        }
        FacetTree tree = new FacetTree(mesh, open);
        double deepest = DeepestPoint.distance(mesh, body, tree, volume);
        double[] box = FaceSets.box(mesh);
        double room = (box[3] - box[0]) * (box[4] - box[1]) * (box[5] - box[2]);
        double block = Math.max(
                BLOCK * deepest,
                Math.max(
                        DepthField.FINE / 2 * Math.sqrt(volume / deepest / MOST_ALONG_RIDGE),
                        Math.cbrt(room / MOST_BLOCKS)));
        DepthLattice lattice = new DepthLattice(mesh, block);
        LevelVolumes levels = new LevelVolumes(LEVELS + 1, deepest / LEVELS);
        double compact = Math.cbrt(volume / (COMPACT * deepest * deepest * deepest));
        double tolerance = Math.min(MOST_TOLERANCE, TOLERANCE * Math.max(1, compact)) * deepest;
        new DepthField(lattice, levels, tolerance, body, tree).measure();
        if (FaceSets.any(hollow)) {
            FacetTree walls = new FacetTree(mesh, hollow);
            new DepthField(lattice, levels, tolerance, lattice.hollowRays(hollow), walls, tree).measure();
        }
        double smallest = 2 * lattice.fine() / deepest;
        double error = Math.max(ACCURACY, COARSE * smallest * smallest);
        return table(levels.volumes(), deepest / LEVELS, volume, FaceSets.area(mesh, open), error);
    }

    /** Every fourth level; the rate there is the slope of the cubic that fits nine levels best. */
    private static DepthColumns table(double[] level, double step, double volume, double area, double error) {
        double scale = volume / level[0];
        int nodes = LEVELS / EVERY;
        while (nodes > 2 && level[(nodes - 1) * EVERY] <= NOTHING * level[0]) {
            nodes--;
        }
        double[] depth = new double[nodes + 1];
        double[] left = new double[nodes + 1];
        double[] front = new double[nodes + 1];
        for (int q = 0; q <= nodes; q++) {
            depth[q] = q * EVERY * step;
            left[q] = q == 0 ? volume : q == nodes ? 0 : Math.min(left[q - 1], scale * Math.max(0, level[q * EVERY]));
        }
        front[0] = area;
        for (int q = 1; q < nodes; q++) {
            double first = 0;
            double third = 0;
            for (int x = -EVERY; x <= EVERY; x++) {
                first += x * level[q * EVERY + x];
                third += (double) x * x * x * level[q * EVERY + x];
            }
            // sums of x^2, x^4 and x^6 from -4 to 4: 60, 708, 9780
            double slope = (9780 * first - 708 * third) / (60.0 * 9780 - 708.0 * 708.0);
            front[q] = Math.max(0, -slope * scale / step);
        }
        for (int q = 1; q <= nodes; q++) {
            // no cubic between two nodes may rise: Fritsch and Carlson (1980), SIAM J. Numer. Anal. 17, 238 (from memory)
            double before = 3 * (left[q - 1] - left[q]) / (EVERY * step);
            double after = q == nodes ? before : 3 * (left[q] - left[q + 1]) / (EVERY * step);
            front[q] = Math.min(front[q], Math.min(before, after));
        }
        return new DepthColumns(depth, left, front, error);
    }
}
