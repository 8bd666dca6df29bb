package org.fizzhull.mesh;

/**
 * What is left of a closed mesh at inward depths from its open facets: the volume swept by the front is gathered along
 * ways that start at right angles to the surface, each up to where another part of the surface is nearer. Thin walls cost
 * and err no more than compact bodies. Facets that turn by less than {@link FacetNormals#CREASE} are taken for chords of a
 * smooth surface. Deterministic.
 */
public final class MeshDepth {
    /** Ways that find out how far ways go; ways that do for a smooth body; ways that do for any. */
    private static final int PILOT = 1 << 10;

    private static final int FEW = 1 << 12;
    private static final int MANY = 1 << 15;

    /** A few ways do when four quarters of them agree by this. */
    private static final double AGREED = 0.004;

    private static final int NODES = 32;

    /** Accuracy of the volume on all our bodies, chords of 128 to the round included: see the tests. */
    private static final double ACCURACY = 0.005;

    /** Four quarters of the ways are four times as far from the truth as all together: evenly spread points. */
    private static final int QUARTERS = 4;

    private static final double MOSTLY = 0.1;

    private MeshDepth() {}

    /**
     * Measures a mesh.
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the flat face in the lowest horizontal plane is closed
     * @param shutHollows whether closed hollows are closed to the front, which then runs from the outside only
     */
    public static DepthColumns of(TriangleMesh mesh, boolean shutResting, boolean shutHollows) {
        boolean[] resting = FaceSets.resting(mesh);
        boolean[] hollow = FaceSets.hollows(mesh);
        boolean[] shut = new boolean[mesh.facetCount()];
        for (int f = 0; f < shut.length; f++) {
            shut[f] = (shutResting && resting[f]) || (shutHollows && hollow[f]);
        }
        return of(mesh, shut);
    }

    /** The same with any facets shut: the front does not start there, and ends where it comes upon them. */
    static DepthColumns of(TriangleMesh mesh, boolean[] shut) {
        boolean[] open = FaceSets.without(FaceSets.all(mesh), shut);
        double volume = MassProperties.of(mesh).volume();
        if (!(volume > 0) || !FaceSets.any(open)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward and has an open facet");
        }
        double area = FaceSets.area(mesh, open);
        FrontWays ways = ways(mesh, open, shut, volume / area);
        DepthStretches stretches = ways.take(FEW);
        double apart = apart(stretches);
        if (apart > AGREED) {
            stretches = ways.take(MANY);
            apart = apart(stretches);
        }
        double step = stretches.deepest() / NODES;
        double[] left = new double[NODES + 1];
        double[] rate = new double[NODES + 1];
        for (int k = 0; k <= NODES; k++) {
            left[k] = stretches.volume(k * step);
            rate[k] = stretches.area(k * step);
        }
        return DepthColumns.ofNodes(left, rate, step, volume, area, Math.max(ACCURACY, apart / QUARTERS));
    }

    /** Largest share by which a quarter of the ways differs from all in the first 90 % of the volume. */
    private static double apart(DepthStretches stretches) {
        double step = stretches.deepest() / NODES;
        double whole = stretches.volume(0);
        double most = 0;
        double left = whole;
        for (int k = 0; left >= MOSTLY * whole; k++) {
            for (int q = 0; q < QUARTERS; q++) {
                most = Math.max(most, Math.abs(QUARTERS * stretches.volume(k * step, q, QUARTERS) / left - 1));
            }
            left = stretches.volume((k + 1) * step);
        }
        return most;
    }

    private static FrontWays ways(TriangleMesh mesh, boolean[] open, boolean[] shut, double usual) {
        double[] box = mesh.box();
        double across = Math.hypot(box[3] - box[0], Math.hypot(box[4] - box[1], box[5] - box[2]));
        FacetTree tree = new FacetTree(mesh, open);
        FrontSources sources = new FrontSources(mesh, open, tree.facet);
        FacetCrossings[] walls = {};
        if (FaceSets.any(shut)) {
            walls = new FacetCrossings[] {new FacetCrossings(new FacetTree(mesh, shut))};
        }
        FrontWays ways = new FrontWays(sources, new MedialReach(tree, across, usual), walls);
        sources.weigh(usual);
        sources.weigh(ways.take(PILOT).meanEnd());
        return ways;
    }
}
