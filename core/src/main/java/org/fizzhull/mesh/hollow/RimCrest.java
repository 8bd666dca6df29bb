package org.fizzhull.mesh.hollow;

import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * The crest of the rim of dry hollows: where, going up the surface, what runs into the hollow ends and what runs
 * outside begins (flooding from both sides, the lowest vertex first: Meyer's watershed, from memory). A level rim counts to
 * its outer edge: there the water first comes upon it.
 */
final class RimCrest {
    private static final byte IN = 1;
    private static final byte OUT = 2;

    private final OpenHollows hollows;
    private final TriangleMesh mesh;
    private final Neighbours near;
    private final byte[] side;
    private final PriorityQueue<Long> shore = new PriorityQueue<>();

    private RimCrest(OpenHollows hollows) {
        this.hollows = hollows;
        mesh = hollows.mesh;
        near = hollows.near;
        side = new byte[mesh.vertexCount()];
    }

    /** Points of the crest, x, y, z one after another, m: all its vertices. */
    static double[] of(OpenHollows hollows) {
        RimCrest crest = new RimCrest(hollows);
        crest.flood();
        boolean[] on = crest.edges();
        on[hollows.spillsOver()] = true;
        crest.level(on);
        return IntStream.range(0, on.length)
                .filter(v -> on[v])
                .boxed()
                .flatMapToDouble(v -> IntStream.range(0, 3).mapToDouble(axis -> crest.mesh.at(v, axis)))
                .toArray();
    }

    private void flood() {
        double low = hollows.rim() - hollows.same();
        for (int v = 0; v < side.length; v++) {
            side[v] = hollows.in(v) ? IN : mesh.at(v, 2) < low ? OUT : 0;
        }
        long[] order = IntStream.range(0, side.length)
                .filter(v -> side[v] != 0)
                .mapToLong(v -> near.key[v])
                .sorted()
                .toArray();
        for (long key : order) {
            spread(Neighbours.vertex(key));
        }
        while (!shore.isEmpty()) {
            spread(Neighbours.vertex(shore.remove()));
        }
    }

    private void spread(int v) {
        for (int i = 0; i < near.count(v); i++) {
            int next = near.at(v, i);
            if (side[next] == 0) {
                side[next] = side[v];
                shore.add(near.key[next]);
            }
        }
    }

    /** The higher ends of the edges from one side to the other; both where they are level. */
    private boolean[] edges() {
        boolean[] on = new boolean[side.length];
        for (int v = 0; v < side.length; v++) {
            for (int i = 0; i < near.count(v); i++) {
                int other = near.at(v, i);
                if (side[v] != side[other] && mesh.at(v, 2) >= mesh.at(other, 2) - hollows.same()) {
                    on[v] = true;
                }
            }
        }
        return on;
    }

    /** Adds what is level with the crest and joined to it by level facets: a rim's outer edge, or a deck's. */
    private void level(boolean[] on) {
        boolean more = true;
        while (more) {
            more = false;
            for (int f = 0; f < mesh.facetCount(); f++) {
                int count = 0;
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < 3; k++) {
                    int v = mesh.corner(f, k);
                    count += on[v] ? 1 : 0;
                    low = Math.min(low, mesh.at(v, 2));
                    high = Math.max(high, mesh.at(v, 2));
                }
                if (count > 0 && count < 3 && high - low <= hollows.same() && FaceSets.shadow(mesh, f) > 0) {
                    for (int k = 0; k < 3; k++) {
                        on[mesh.corner(f, k)] = true;
                    }
                    more = true;
                }
            }
        }
    }
}
