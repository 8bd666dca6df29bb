package org.fizzhull.mesh;

/**
 * The ways that fill a body, as many as it takes. All together they hold the volume of the body, whatever its shape: how
 * far they miss it tells whether its facets can be taken for chords of a smooth surface, or the surface is rough.
 *
 * @param stretches of the ways
 * @param apart largest share by which a quarter of the ways differs from all in the first 90 % of the volume
 * @param missed share of the volume of the body by which the ways miss it
 */
record FrontFilling(DepthStretches stretches, double apart, double missed) {
    /** Ways that find out how far ways go; ways that do for a smooth body; ways that do for any. */
    private static final int PILOT = 1 << 10;

    private static final int FEW = 1 << 12;
    private static final int MANY = 1 << 15;

    /** A few ways do when four quarters of them agree by this, and all with the volume of the body by the other. */
    private static final double AGREED = 0.004;

    private static final double FILLED = 0.002;

    /** Four quarters of the ways are four times as far from the truth as all together: evenly spread points. */
    private static final int QUARTERS = 4;

    /** What is missed of the volume is up to about twice as much of its last tenth (balls with displaced vertices). */
    private static final double MISSED = 2;

    private static final int LEVELS = 32;
    private static final double MOSTLY = 0.1;

    /** Fills a body of a volume, m3, from its open facets of an area, m2. */
    static FrontFilling of(TriangleMesh mesh, boolean[] open, boolean[] shut, double volume, double area) {
        double across = FaceSets.diagonal(mesh.box());
        FacetTree tree = new FacetTree(mesh, open);
        FacetCrossings[] walls = {};
        if (FaceSets.any(shut)) {
            walls = new FacetCrossings[] {new FacetCrossings(new FacetTree(mesh, shut))};
        }
        FrontSources sources = new FrontSources(mesh, open, tree.facet);
        FrontWays ways = new FrontWays(sources, new MedialReach(tree, across, volume / area), walls);
        sources.weigh(volume / area);
        sources.weigh(ways.take(PILOT).meanEnd());
        FrontFilling few = judged(ways.take(FEW), volume);
        return few.apart <= AGREED && few.missed <= FILLED ? few : judged(ways.take(MANY), volume);
    }

    private static FrontFilling judged(DepthStretches stretches, double volume) {
        return new FrontFilling(stretches, apart(stretches), Math.abs(stretches.volume(0) / volume - 1));
    }

    /** What is to be expected of the error of the volume left, as a share of it, in the first 90 % of the volume. */
    double error() {
        return Math.max(apart / QUARTERS, missed > FILLED ? MISSED * missed : 0);
    }

    private static double apart(DepthStretches stretches) {
        double step = stretches.deepest() / LEVELS;
        double whole = stretches.volume(0);
        double most = 0;
        double left = whole;
        for (int k = 0; k < LEVELS && left >= MOSTLY * whole; k++) {
            for (int q = 0; q < QUARTERS; q++) {
                most = Math.max(most, Math.abs(QUARTERS * stretches.volume(k * step, q, QUARTERS) / left - 1));
            }
            left = stretches.volume((k + 1) * step);
        }
        return most;
    }
}
