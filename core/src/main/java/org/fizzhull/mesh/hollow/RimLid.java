package org.fizzhull.mesh.hollow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MeshBuilder;

/**
 * Cuts a mesh at the level of the rim of a hollow and closes it there with a lid. The lid is a fan of triangles
 * around one point; on a rim that is not star-shaped some of them overlap with opposite signs. Volume, centroid and
 * water plane are exact all the same; only the area of such a lid is too large, and a lid is never wet.
 */
final class RimLid {
    /** Edge of a lid, from one vertex to the next on the rim. */
    private record Edge(int from, int to) {}

    private final OpenHollows hollows;
    private final TriangleMesh mesh;

    /** Whether what is below the rim is kept, or what is above. */
    private final boolean below;

    private final MeshBuilder built = new MeshBuilder();

    /** New vertices by the edge that they lie on. */
    private final Map<Long, Integer> crossings = new HashMap<>();

    /** The edges of the lid of each hollow. */
    private final Map<Integer, List<Edge>> rims = new TreeMap<>();

    private RimLid(OpenHollows hollows, boolean below) {
        this.hollows = hollows;
        this.below = below;
        mesh = hollows.mesh;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            built.vertex(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
        }
    }

    /**
     * The mesh cut by the rims of hollows, each covered by a lid.
     *
     * @param below whether what is below the rims is kept, or what is above
     * @param hollow the hollow at whose rim a facet is cut; -1 for one that is not cut: it counts as above
     */
    static TriangleMesh of(OpenHollows hollows, boolean below, IntUnaryOperator hollow) {
        RimLid lid = new RimLid(hollows, below);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            int h = hollow.applyAsInt(f);
            if (h >= 0 && lid.mesh.corners(f).anyMatch(v -> lid.side(v, hollows.level(h)) < 0)) {
                lid.cut(f, h);
            } else if (!below) {
                lid.built.facet(lid.mesh.corner(f, 0), lid.mesh.corner(f, 1), lid.mesh.corner(f, 2));
            }
        }
        return lid.withLids();
    }

    /** Keeps the part of a facet on the wanted side of the rim of a hollow, and records the edges of the lid. */
    private void cut(int f, int hollow) {
        double level = hollows.level(hollow);
        List<Integer> above = new ArrayList<>(4);
        List<Integer> under = new ArrayList<>(4);
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            int w = mesh.corner(f, (k + 1) % 3);
            int side = side(v, level);
            if (side >= 0) {
                above.add(v);
            }
            if (side <= 0) {
                under.add(v);
            }
            if (side * side(w, level) < 0) {
                int at = crossing(v, w, level);
                above.add(at);
                under.add(at);
            }
        }
        List<Integer> kept = below ? under : above;
        for (int i = 2; i < kept.size(); i++) {
            built.facet(kept.get(0), kept.get(i - 1), kept.get(i));
        }
        for (int i = 0; i < under.size(); i++) {
            int a = under.get(i);
            int b = under.get((i + 1) % under.size());
            if (side(a, level) == 0 && side(b, level) == 0) {
                rims.computeIfAbsent(hollow, h -> new ArrayList<>()).add(below ? new Edge(b, a) : new Edge(a, b));
            }
        }
    }

    /** Side of a level, m, on which a vertex lies: 1 above, -1 below, 0 at the level. */
    private int side(int v, double level) {
        double above = built.at(v, 2) - level;
        return Math.abs(above) > hollows.tolerance() ? (int) Math.signum(above) : 0;
    }

    /** Where an edge meets a level, m: a new vertex, the same one for both facets of the edge. */
    private int crossing(int v, int w, double level) {
        int low = Math.min(v, w);
        int high = Math.max(v, w);
        return crossings.computeIfAbsent((long) low << 32 | high, edge -> {
            double t = (level - mesh.at(low, 2)) / (mesh.at(high, 2) - mesh.at(low, 2));
            return built.vertex(
                    mesh.at(low, 0) + t * (mesh.at(high, 0) - mesh.at(low, 0)),
                    mesh.at(low, 1) + t * (mesh.at(high, 1) - mesh.at(low, 1)),
                    level);
        });
    }

    /** The cut mesh with each rim closed by a fan of facets around the mean of its vertices. */
    private TriangleMesh withLids() {
        rims.forEach((hollow, rim) -> {
            double x = 0;
            double y = 0;
            for (Edge edge : rim) {
                x += built.at(edge.from, 0) / rim.size();
                y += built.at(edge.from, 1) / rim.size();
            }
            int middle = built.vertex(x, y, hollows.level(hollow));
            for (Edge edge : rim) {
                built.facet(edge.from, edge.to, middle);
            }
        });
        return built.mesh();
    }
}
