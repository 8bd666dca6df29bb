package org.fizzhull.mesh;

/**
 * What is left of a closed mesh at inward depths from its open facets. Chooses the lattice for {@link DepthField}, and
 * turns its fine levels into a table whose ends are exact: the volume of the mesh and the area of its open facets at
 * depth 0, nothing at the deepest point. Deterministic.
 */
public final class MeshDepth {
    /** Blocks are this share of the deepest depth, off a round number so that no level falls on a plane of the lattice. */
    private static final double BLOCK = 0.3391;

    /**
     * Cubes are halved that differ at the middle by more than this share of the deepest depth; a body with many cubes may
     * differ more.
     */
    private static final double TOLERANCE = 0.0015;

    private static final double MOST_TOLERANCE = 0.002;

    /** Volume over the cube of the deepest depth of a ball, the most compact body. */
    private static final double COMPACT = 4.0 / 3 * Math.PI;

    /** About how many of the smallest cubes may lie along the medial surface. */
    private static final double MOST_ALONG_RIDGE = 120_000;

    private static final double MOST_BLOCKS = 60_000;
    private static final int LEVELS = DepthColumns.LEVELS;

    /** Accuracy of the volume (see the tests), and how it grows with the smallest cube over the deepest depth. */
    private static final double ACCURACY = 0.005;

    private static final double COARSE = 1.5;

    /** From a fifth of the depth on it grows faster: 9 % at 0.22, 52 % at 0.29, 67 % at 0.45 (thin bowls, a flat disc). */
    private static final double COARSER = 80;

    /** A hollow taken away is measured on other cubes than the body around it: they differ by some 1e-4. */
    private static final double NOTHING = 1e-7;

    private static final double HOLLOW_NOTHING = 1e-3;

    private MeshDepth() {}

    /**
     * Measures a mesh.
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the flat face in the lowest horizontal plane is closed
     * @param shutHollows whether closed hollows are closed to the front, which then runs from the outside only
     */
    public static DepthColumns of(TriangleMesh mesh, boolean shutResting, boolean shutHollows) {
        boolean[] none = new boolean[mesh.facetCount()];
        return of(mesh, shutResting ? FaceSets.resting(mesh) : none, shutHollows ? FaceSets.hollows(mesh) : none);
    }

    /** The same with facets in the lowest plane that are shut; closed hollows are shut too. */
    static DepthColumns of(TriangleMesh mesh, boolean[] shut) {
        return of(mesh, shut, FaceSets.hollows(mesh));
    }

    /** The same with facets that are shut, and closed hollows that are shut. */
    private static DepthColumns of(TriangleMesh mesh, boolean[] shut, boolean[] hollow) {
        boolean[] body = FaceSets.without(FaceSets.all(mesh), hollow);
        boolean[] open = FaceSets.without(body, shut);
        double volume = MassProperties.of(mesh).volume();
        if (!(volume > 0) || !FaceSets.any(open)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward and has an open facet");
        }
        FacetTree tree = new FacetTree(mesh, open);
        double deepest = DeepestPoint.distance(mesh, body, tree, volume);
        double[] box = mesh.box();
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
        double nothing = FaceSets.any(hollow) ? HOLLOW_NOTHING : NOTHING;
        double smallest = 2 * lattice.fine() / deepest;
        double square = smallest * smallest;
        double error = Math.max(ACCURACY, COARSE * square + COARSER * square * square);
        return DepthColumns.ofLevels(
                levels.volumes(), deepest / LEVELS, volume, FaceSets.area(mesh, open), error, nothing);
    }
}
