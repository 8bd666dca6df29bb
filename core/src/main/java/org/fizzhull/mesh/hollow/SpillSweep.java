package org.fizzhull.mesh.hollow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.DisjointSets;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Where the pits of a closed mesh spill: its vertices are taken from the lowest up, and what of the surface is joined
 * below each is followed. A part begins at a vertex without lower neighbours: a pit where the surface looks up, else
 * the underside of something that hangs over the floor straight below it, or over nothing, which is outside. A pit spills
 * at the vertex where it joins what is outside: exact for the mesh, under overhangs too.
 */
final class SpillSweep {
    private static final byte PIT = 1;
    private static final byte HANGS = 2;
    private static final byte OUTSIDE = 3;

    /**
     * A pit that spills.
     *
     * @param over the vertex it spills over
     * @param begins the vertices from which all of its surface is reached below that
     */
    record Spill(int over, List<Integer> begins) {}

    private final TriangleMesh mesh;
    private final Neighbours near;
    private final DisjointSets parts;

    /** Kind of a part, at the vertex that names it: where it began, the lowest of all. */
    private final byte[] kind;

    /** The vertices where a pit, or what hangs, began, by the one that names it. */
    private final Map<Integer, List<Integer>> begins = new HashMap<>();

    private final List<Spill> spills = new ArrayList<>();
    private final FloorBelow floor;

    private SpillSweep(TriangleMesh mesh, Neighbours near, FloorBelow floor) {
        this.floor = floor;
        this.mesh = mesh;
        this.near = near;
        parts = new DisjointSets(mesh.vertexCount());
        kind = new byte[mesh.vertexCount()];
    }

    /**
     * For each vertex without lower neighbours above 0 where there is air just over it, a pit, and below 0 where there is
     * material, an underside; 0 for all others. A level a little higher cuts the facets around the vertex in a closed
     * polygon, whose area tells by its sign what is inside: a facet whose other corners stand h and g higher adds its own
     * shadow over h g. Summed without those heights a steep facet, however narrow at the vertex, would outweigh a flat one.
     */
    static byte[] births(TriangleMesh mesh, Neighbours near) {
        double level = OpenHollows.SAME * FaceSets.diagonal(mesh.box());
        double[] air = new double[mesh.vertexCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                if (near.lowest(v)) {
                    // of corners on a level with the vertex the order decides, as if they stood a trifle higher
                    double h = Math.max(level, mesh.at(mesh.corner(f, (k + 1) % 3), 2) - mesh.at(v, 2));
                    double g = Math.max(level, mesh.at(mesh.corner(f, (k + 2) % 3), 2) - mesh.at(v, 2));
                    air[v] += FaceSets.shadow(mesh, f) / (h * g);
                }
            }
        }
        byte[] births = new byte[air.length];
        for (int v = 0; v < births.length; v++) {
            births[v] = !near.lowest(v) ? 0 : (byte) (air[v] > 0 ? 1 : -1);
        }
        return births;
    }

    /** The spills, the lowest first. */
    static List<Spill> of(TriangleMesh mesh, Neighbours near, byte[] births, FloorBelow floor) {
        SpillSweep sweep = new SpillSweep(mesh, near, floor);
        long[] order = near.key.clone();
        Arrays.sort(order);
        for (long key : order) {
            sweep.take(Neighbours.vertex(key), births);
        }
        return sweep.spills;
    }

    private void take(int v, byte[] births) {
        if (births[v] != 0) {
            kind[v] = births[v] > 0 ? PIT : HANGS;
            begins.put(v, new ArrayList<>(List.of(v)));
            return;
        }
        boolean joined = false;
        for (int i = 0; i < near.count(v); i++) {
            int other = near.at(v, i);
            if (near.lower(other, v)) {
                if (!joined) {
                    parts.join(other, v);
                    joined = true;
                } else {
                    meet(parts.root(v), parts.root(other), v);
                }
            }
        }
    }

    /** Two parts meet at a vertex. */
    private void meet(int one, int two, int at) {
        if (one == two) {
            return;
        }
        if (kind[one] == HANGS && kind[two] == HANGS) {
            join(one, two, HANGS);
            return;
        }
        int a = settled(one);
        int b = settled(two);
        a = parts.root(a);
        if (a == b) {
            return;
        }
        if (kind[a] != kind[b]) {
            int pit = kind[a] == PIT ? a : b;
            spills.add(new Spill(at, List.copyOf(begins.getOrDefault(pit, List.of()))));
        }
        join(a, b, kind[a] == PIT && kind[b] == PIT ? PIT : OUTSIDE);
    }

    /** The root of a part, once it is known where it hangs. */
    private int settled(int part) {
        if (kind[part] != HANGS) {
            return parts.root(part);
        }
        int low = lowest(floor.under(part), part);
        int base = parts.root(low);
        if (base == part) {
            kind[part] = OUTSIDE;
            return part;
        }
        base = settled(base);
        join(base, part, kind[base]);
        return parts.root(base);
    }

    /** The lowest corner of a facet; the vertex given where there is no facet or its corners are no lower. */
    private int lowest(int facet, int than) {
        int low = than;
        for (int k = 0; facet >= 0 && k < 3; k++) {
            low = near.lower(mesh.corner(facet, k), low) ? mesh.corner(facet, k) : low;
        }
        return low;
    }

    /** Joins two parts, under the name of the one that began lower. */
    private void join(int one, int two, byte of) {
        int low = near.lower(one, two) ? one : two;
        int high = low == one ? two : one;
        parts.join(low, high);
        kind[low] = of;
        List<Integer> all = begins.getOrDefault(low, List.of());
        List<Integer> more = begins.remove(high);
        if (of == OUTSIDE) {
            begins.remove(low);
        } else if (more != null) {
            all.addAll(more);
        }
    }
}
