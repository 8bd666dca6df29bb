package org.fizzhull.mesh;

/**
 * What is left of a closed mesh at inward depths from its open facets: the volume swept by the front is gathered along
 * ways that start at right angles to the surface, each up to where another part of the surface is nearer. Thin walls cost
 * and err no more than compact bodies. Facets that turn by less than 20 degrees are taken for chords of a smooth surface.
 * Deterministic.
 */
public final class MeshDepth {
    private static final int NODES = 32;

    /** Accuracy of the volume on all our bodies, chords of 128 to the round included: see the tests. */
    private static final double ACCURACY = 0.005;

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
        boolean[] hollow = shutHollows ? FaceSets.hollows(mesh) : none;
        boolean[] resting = shutResting ? FaceSets.resting(mesh) : none;
        return of(mesh, FaceSets.either(resting, hollow));
    }

    /** The same with any facets shut: the front does not start there, and ends where it comes upon them. */
    static DepthColumns of(TriangleMesh mesh, boolean[] shut) {
        boolean[] open = FaceSets.without(FaceSets.all(mesh), shut);
        double volume = MassProperties.of(mesh).volume();
        if (!(volume > 0) || !FaceSets.any(open)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward and has an open facet");
        }
        double area = FaceSets.area(mesh, open);
        FrontFilling filling = FrontFilling.of(mesh, open, shut, volume, area);
        DepthStretches stretches = filling.stretches();
        double step = stretches.deepest() / NODES;
        double[] left = new double[NODES + 1];
        double[] rate = new double[NODES + 1];
        for (int k = 0; k <= NODES; k++) {
            left[k] = stretches.volume(k * step);
            rate[k] = stretches.area(k * step);
        }
        return DepthColumns.ofNodes(left, rate, step, volume, area, Math.max(ACCURACY, filling.error()));
    }
}
