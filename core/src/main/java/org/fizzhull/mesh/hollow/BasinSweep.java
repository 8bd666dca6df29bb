package org.fizzhull.mesh.hollow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.DisjointSets;

/**
 * The basins of a closed mesh and their spill points. The vertices are taken from the lowest up, and the connected parts
 * of the surface below each are tracked (sublevel sets). A part begins at a local minimum. One that begins at a pit is a
 * basin; one that begins at an underside belongs to the part of the floor straight below it, or, with no floor below, to
 * the outside. A basin spills at the vertex, a saddle, where it meets the outside: exact for the mesh, also under
 * overhangs. Cost: O(n log n) in the number of vertices, for the sort.
 */
final class BasinSweep {
    /** What a part of the surface bounds. */
    private enum Kind {
        BASIN,
        /** An overhang; the part of the floor below it is not known yet. */
        UNDERSIDE,
        OUTSIDE
    }

    /** A basin.
     *
     * @param spillPoint the vertex over which it spills
     * @param minima its local minima: all of its surface below the spill point is connected to one of them
     */
    record Basin(int spillPoint, List<Integer> minima) {
        /** Height of the spill point above the lowest point, m. */
        double depth(TriangleMesh mesh) {
            double low = minima.stream().mapToDouble(v -> mesh.at(v, 2)).min().orElseThrow();
            return mesh.at(spillPoint, 2) - low;
        }
    }

    private final Neighbours near;
    private final FacetBelow floor;
    private final TriangleMesh mesh;

    /** Parts of the surface, each named by its lowest vertex. */
    private final DisjointSets parts;

    /** Kind of each part, by its lowest vertex. */
    private final Kind[] kind;

    /** Local minima of each part, by the lowest vertex of the part. */
    private final Map<Integer, List<Integer>> minima = new HashMap<>();

    private final List<Basin> basins = new ArrayList<>();

    private BasinSweep(TriangleMesh mesh, Neighbours near, FacetBelow floor) {
        this.mesh = mesh;
        this.near = near;
        this.floor = floor;
        parts = new DisjointSets(mesh.vertexCount());
        kind = new Kind[mesh.vertexCount()];
    }

    /** The basins in the order of their spill points, the lowest first. */
    static List<Basin> of(TriangleMesh mesh, Neighbours near, LocalMinima found, FacetBelow floor) {
        BasinSweep sweep = new BasinSweep(mesh, near, floor);
        long[] order = near.key.clone();
        Arrays.sort(order);
        for (long key : order) {
            sweep.addVertex(Neighbours.vertex(key), found);
        }
        return sweep.basins;
    }

    private void addVertex(int v, LocalMinima found) {
        int[] lower = near.lower(v);
        if (lower.length == 0) {
            kind[v] = found.pits().get(v) ? Kind.BASIN : Kind.UNDERSIDE;
            minima.put(v, new ArrayList<>(List.of(v)));
            return;
        }
        parts.join(lower[0], v);
        for (int other : lower) {
            joinAt(parts.root(v), parts.root(other), v);
        }
    }

    /** Joins two parts that meet at a vertex; where a basin meets the outside, the vertex is its spill point. */
    private void joinAt(int one, int two, int at) {
        if (one == two) {
            return;
        }
        if (kind[one] == Kind.UNDERSIDE && kind[two] == Kind.UNDERSIDE) {
            join(one, two, Kind.UNDERSIDE);
            return;
        }
        joinFloor(one);
        joinFloor(two);
        int a = parts.root(one);
        int b = parts.root(two);
        if (a == b) {
            return;
        }
        if (kind[a] != kind[b]) {
            basins.add(new Basin(at, List.copyOf(minima.getOrDefault(kind[a] == Kind.BASIN ? a : b, List.of()))));
        }
        join(a, b, kind[a] == kind[b] ? kind[a] : Kind.OUTSIDE);
    }

    /** Joins an underside to the part of the floor below it; without a floor below it is outside. */
    private void joinFloor(int part) {
        if (kind[part] != Kind.UNDERSIDE) {
            return;
        }
        int facet = floor.of(part);
        int low = part;
        for (int k = 0; facet >= 0 && k < 3; k++) {
            low = near.lower(mesh.corner(facet, k), low) ? mesh.corner(facet, k) : low;
        }
        int base = parts.root(low);
        if (base == part) {
            kind[part] = Kind.OUTSIDE;
        } else {
            joinFloor(base);
            base = parts.root(base);
            join(base, part, kind[base]);
        }
    }

    /** Joins two parts under the name of the lower one. */
    private void join(int one, int two, Kind joined) {
        int low = near.lower(one, two) ? one : two;
        int high = low == one ? two : one;
        parts.join(low, high);
        kind[low] = joined;
        List<Integer> more = minima.remove(high);
        if (joined == Kind.OUTSIDE) {
            minima.remove(low);
        } else if (more != null) {
            minima.computeIfAbsent(low, name -> new ArrayList<>()).addAll(more);
        }
    }
}
