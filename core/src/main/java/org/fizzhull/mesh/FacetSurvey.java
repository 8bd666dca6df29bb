package org.fizzhull.mesh;

import java.util.List;

/**
 * What can be known of a surface while its facets arrive: whether edges pair and the facets hang together, and the sums
 * for volume, area, centroid and inertia. A sound file, one closed surface facing outward, needs no second look; for any
 * other {@link MeshCheck} starts from the facets again.
 */
final class FacetSurvey {
    private final VertexWeld weld;
    private final double metresPerUnit;
    private final Errands errands;
    private final EdgeFront front;
    private final VertexBox box = new VertexBox();
    private MassSums sums = new MassSums(0, 0, 0);
    private int handed;
    private int taken;
    private int boxed;
    private boolean easy = true;

    /**
     * @param facets facets that will come, about
     * @param metresPerUnit length of one unit of the file, m
     * @param errands takes the pieces of the survey
     */
    FacetSurvey(VertexWeld weld, int facets, double metresPerUnit, Errands errands) {
        this.weld = weld;
        this.metresPerUnit = metresPerUnit;
        this.errands = errands;
        front = new EdgeFront(facets);
    }

    /**
     * Takes the facets of a block that were the last to go into the weld; the block is the survey's until it says
     * otherwise. What the weld adds later lies behind what is looked at here.
     */
    void advance(FacetBits block, int facets) {
        // A collapsed facet is in the block, but not in the weld; the file is not sound anyway.
        if (facets > 0 && weld.collapsed() == 0) {
            handed += facets;
            block.lend(errands.hand(
                    new Piece(this, block, facets, weld.roomyCorners(), weld.roomyBits(), weld.vertices())));
        }
    }

    /** One block's work; a class and not a lambda, whose first use costs a short command tens of milliseconds. */
    private static final class Piece implements Runnable {
        private final FacetSurvey survey;
        private final FacetBits block;
        private final int facets;
        private final int[] corners;
        private final int[] bits;
        private final int vertices;

        Piece(FacetSurvey survey, FacetBits block, int facets, int[] corners, int[] bits, int vertices) {
            this.survey = survey;
            this.block = block;
            this.facets = facets;
            this.corners = corners;
            this.bits = bits;
            this.vertices = vertices;
        }

        @Override
        public void run() {
            survey.take(block, facets, corners, bits, vertices);
        }
    }

    private void take(FacetBits block, int facets, int[] corners, int[] bits, int vertices) {
        if (taken == 0) {
            sums = new MassSums(
                    Float.intBitsToFloat(bits[0]), Float.intBitsToFloat(bits[1]), Float.intBitsToFloat(bits[2]));
        }
        int f = 0;
        while (f < facets && easy) {
            int to = Chunks.end(taken + f, taken + facets) - taken;
            easy = front.advance(corners, block, f, to);
            sums.add(block, f, to);
            f = to;
        }
        taken += facets;
        while (boxed < vertices && easy) {
            int end = Chunks.end(boxed, vertices);
            box.widen(bits, boxed, end);
            boxed = end;
        }
    }

    /** Whether the facets are one closed surface, all facing outward, that encloses something and nothing twice. */
    boolean sound() {
        errands.await();
        return handed > 0
                && handed == weld.added()
                && easy
                && front.closedAndOne(weld.corners())
                && encloses()
                && probe();
    }

    private boolean encloses() {
        double volume = sums.volume();
        return volume > BodySums.FLAT * sums.area() * box.longest()
                && sums.fluxSpread() <= MeshBodies.FLUX_TOLERANCE * volume;
    }

    private boolean probe() {
        return new WindingProbe(weld.places(metresPerUnit), weld.corners(), List.of(body()), errands).clean();
    }

    /** The mesh; only where {@link #sound}. */
    TriangleMesh mesh() {
        return new TriangleMesh(weld.places(metresPerUnit), weld.corners());
    }

    /** The one surface; only where {@link #sound}. */
    MeshBody body() {
        return box.body(handed, properties().volume(), metresPerUnit);
    }

    /** The sums; only where {@link #sound}. */
    MassProperties properties() {
        return sums.properties().times(metresPerUnit);
    }
}
