package org.fizzhull.mesh;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/**
 * What can be known of a surface while its facets arrive: whether edges pair and the facets hang together, and the sums
 * for volume, area, centroid and inertia. A sound file, one closed surface facing outward, needs no second look; for any
 * other {@link MeshCheck} starts from the facets again.
 */
final class FacetSurvey {
    /** Facets, or vertices, in one call of the inner loops: one that is called often is compiled early. */
    private static final int FEW = 64;

    private final VertexWeld weld;
    private final int facets;
    private EdgeFront front = new EdgeFront(0);
    private final Executor helper;
    private CompletableFuture<Void> work = CompletableFuture.completedFuture(null);
    private final double metresPerUnit;
    private double[] metres = new double[0];
    private int converted;
    private final VertexBox box = new VertexBox();
    private MassSums sums = new MassSums(0, 0, 0);
    private int handed;
    private boolean easy = true;

    /**
     * @param facets facets that will come, or more
     * @param metresPerUnit length of one unit of the file, m
     * @param helper runs the pieces of the survey, one after the other
     */
    FacetSurvey(VertexWeld weld, int facets, double metresPerUnit, Executor helper) {
        this.weld = weld;
        this.metresPerUnit = metresPerUnit;
        this.helper = helper;
        this.facets = facets;
    }

    /** Takes the facets that came since the last call. What the weld adds later lies behind what is looked at here. */
    void advance() {
        int from = handed;
        int to = weld.facets();
        int vertices = weld.vertices();
        int[] bits = weld.roomyBits();
        int[] corners = weld.roomyCorners();
        handed = to;
        if (to > from) {
            work = work.thenRunAsync(new Block(this, bits, corners, vertices, from, to), helper);
        }
    }

    /** One block's work; a class and not a lambda, whose first use costs a short command tens of milliseconds. */
    private static final class Block implements Runnable {
        private final FacetSurvey survey;
        private final int[] bits;
        private final int[] corners;
        private final int vertices;
        private final int from;
        private final int to;

        Block(FacetSurvey survey, int[] bits, int[] corners, int vertices, int from, int to) {
            this.survey = survey;
            this.bits = bits;
            this.corners = corners;
            this.vertices = vertices;
            this.from = from;
            this.to = to;
        }

        @Override
        public void run() {
            survey.take(bits, corners, vertices, from, to);
        }
    }

    private void take(int[] bits, int[] corners, int vertices, int from, int to) {
        if (!easy) {
            return;
        }
        if (from == 0) {
            front = new EdgeFront(facets);
            metres = new double[3 * (facets / 2 + 2)];
        }
        convert(bits, vertices);
        if (from == 0) {
            sums = new MassSums(metres[0], metres[1], metres[2]);
        }
        for (int f = from; f < to && easy; f += FEW) {
            int end = Math.min(to, f + FEW);
            easy = front.advance(corners, vertices, end);
            sums.add(metres, corners, f, end);
        }
    }

    private void convert(int[] bits, int vertices) {
        if (3 * vertices > metres.length) {
            metres = Arrays.copyOf(metres, Math.max(3 * vertices, metres.length + metres.length / 6 * 3));
        }
        while (converted < vertices) {
            int end = Math.min(vertices, converted + FEW);
            convert(bits, converted, end);
            box.widen(metres, converted, end);
            converted = end;
        }
    }

    private void convert(int[] bits, int from, int to) {
        for (int i = 3 * from; i < 3 * to; i++) {
            metres[i] = Float.intBitsToFloat(bits[i]) * metresPerUnit;
        }
    }

    /** Whether the facets are one closed surface, all facing outward, that encloses something and nothing twice. */
    boolean sound() {
        work.join();
        return handed > 0 && easy && front.closedAndOne() && encloses() && probe();
    }

    private boolean encloses() {
        double volume = sums.volume();
        return volume > BodySums.FLAT * sums.area() * box.longest()
                && sums.fluxSpread() <= MeshBodies.FLUX_TOLERANCE * volume;
    }

    private boolean probe() {
        return new WindingProbe(metres, converted, weld.corners(), List.of(body()), helper).clean();
    }

    /** The mesh; only where {@link #sound}. */
    TriangleMesh mesh() {
        return new TriangleMesh(metres, converted, weld.corners());
    }

    /** The one surface; only where {@link #sound}. */
    MeshBody body() {
        return box.body(handed, sums.volume());
    }

    /** The sums; only where {@link #sound}. */
    MassProperties properties() {
        return sums.properties();
    }

    /** Coordinates of the vertices, m. */
    double[] coordinates() {
        work.join();
        return easy ? Arrays.copyOf(metres, 3 * converted) : weld.coordinates(metresPerUnit);
    }
}
