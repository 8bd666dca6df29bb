package org.fizzhull.mesh.hollow;

import java.util.BitSet;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * The crest of the rim of dry hollows: the watershed on the surface between the part that drains into the hollows and
 * the part that drains to the outside (flooding from both sides, the lowest vertex first: Meyer's watershed, from
 * memory). The whole of a level rim belongs to the crest, since the water reaches its outer edge first.
 */
final class RimCrest {
    private static final byte IN = 1;
    private static final byte OUT = 2;

    private final OpenHollows hollows;
    private final TriangleMesh mesh;
    private final Neighbours near;

    /** Where a vertex drains to: {@link #IN}, {@link #OUT}, or 0 as long as that is not known. */
    private final byte[] side;

    /** Keys (by height, see {@link Neighbours}) of the flooded vertices from which the flood has yet to spread. */
    private final PriorityQueue<Long> front = new PriorityQueue<>();

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
        BitSet on = crest.watershed();
        on.set(hollows.spillPoint());
        crest.addLevelFacets(on);
        return on.stream()
                .boxed()
                .flatMapToDouble(v -> IntStream.range(0, 3).mapToDouble(axis -> crest.mesh.at(v, axis)))
                .toArray();
    }

    private void flood() {
        double low = hollows.rim() - hollows.tolerance();
        for (int v = 0; v < side.length; v++) {
            side[v] = hollows.inDryHollow(v) ? IN : mesh.at(v, 2) < low ? OUT : 0;
        }
        // sorted() collects all seeds before the first of them spreads and changes other sides
        IntStream.range(0, side.length)
                .filter(v -> side[v] != 0)
                .mapToLong(v -> near.key[v])
                .sorted()
                .forEach(this::spread);
        while (!front.isEmpty()) {
            spread(front.remove());
        }
    }

    private void spread(long key) {
        int v = Neighbours.vertex(key);
        for (int next : near.of(v)) {
            if (side[next] == 0) {
                side[next] = side[v];
                front.add(near.key[next]);
            }
        }
    }

    /** The higher end of each edge that leads from one side to the other; both ends where the edge is level. */
    private BitSet watershed() {
        BitSet on = new BitSet();
        for (int v = 0; v < side.length; v++) {
            for (int other : near.of(v)) {
                if (side[v] != side[other] && mesh.at(v, 2) >= mesh.at(other, 2) - hollows.tolerance()) {
                    on.set(v);
                }
            }
        }
        return on;
    }

    /** Adds the level facets connected to the crest: a rim's outer edge, or a deck's. */
    private void addLevelFacets(BitSet on) {
        int[] level = IntStream.range(0, mesh.facetCount()).filter(this::level).toArray();
        int before;
        do {
            before = on.cardinality();
            IntStream.of(level)
                    .filter(f -> mesh.corners(f).anyMatch(on::get))
                    .forEach(f -> mesh.corners(f).forEach(on::set));
        } while (on.cardinality() > before);
    }

    private boolean level(int f) {
        double low = mesh.corners(f).mapToDouble(v -> mesh.at(v, 2)).min().orElseThrow();
        double high = mesh.corners(f).mapToDouble(v -> mesh.at(v, 2)).max().orElseThrow();
        return high - low <= hollows.tolerance() && FaceSets.shadow(mesh, f) > 0;
    }
}
