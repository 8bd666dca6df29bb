package org.fizzhull.mesh.hollow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MeshBuilder;

/**
 * Meshes with a lid at the rim: closed edge by edge. The surface is cut at the level of the rim, and the lid is a fan
 * around one point, so that a rim that is not star-shaped is covered by facets that overlap with opposite signs. Volumes,
 * centroids and water planes come out right all the same; only the area of such a lid is too large, and it is never wet.
 */
final class RimLid {
    private final OpenHollows hollows;
    private final TriangleMesh mesh;

    /** Whether what is below the rim is kept, or what is above. */
    private final boolean below;

    private final MeshBuilder built = new MeshBuilder();

    /** New vertices by the edge that they lie on. */
    private final Map<Long, Integer> crossings = new HashMap<>();

    /** For each lid the edges it is spanned from, two vertices each. */
    private final List<List<int[]>> rims = new ArrayList<>();

    private RimLid(OpenHollows hollows, int lids, boolean below) {
        this.hollows = hollows;
        this.below = below;
        mesh = hollows.mesh;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            built.vertex(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
        }
        for (int lid = 0; lid < lids; lid++) {
            rims.add(new ArrayList<>());
        }
    }

    /** The mesh with its dry hollows closed, each at its own rim; of so many hollows that were found. */
    static TriangleMesh closed(OpenHollows hollows, int count) {
        RimLid lid = new RimLid(hollows, count, false);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            int h = hollows.dryOwner(f);
            if (h < 0) {
                lid.built.facet(lid.mesh.corner(f, 0), lid.mesh.corner(f, 1), lid.mesh.corner(f, 2));
            } else {
                lid.cut(f, hollows.level(h), h);
            }
        }
        for (int h = 0; h < count; h++) {
            lid.span(h, hollows.level(h));
        }
        return lid.built.mesh();
    }

    /** What of the closed mesh is below the rim, turned upside down, so that it stands on its lid. */
    static TriangleMesh belowUpsideDown(OpenHollows hollows) {
        return below(hollows, f -> hollows.dryOwner(f) < 0, hollows.rim()).upsideDown();
    }

    /** What fills the largest hollow up to its rim, as a body of its own. */
    static TriangleMesh filling(OpenHollows hollows, int hollow) {
        return below(hollows, f -> hollows.dryOwner(f) == hollow, hollows.level(hollow))
                .insideOut();
    }

    /** What of some facets is below a level, with a lid there. */
    private static TriangleMesh below(OpenHollows hollows, IntPredicate which, double level) {
        RimLid lid = new RimLid(hollows, 1, true);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            if (which.test(f)) {
                lid.cut(f, level, 0);
            }
        }
        lid.span(0, level);
        return lid.built.mesh();
    }

    /** Keeps what of a facet is on the right side of a level, and notes the edges of the lid. */
    private void cut(int f, double level, int lid) {
        int[] above = new int[4];
        int high = 0;
        int[] under = new int[4];
        int low = 0;
        boolean any = false;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            int w = mesh.corner(f, (k + 1) % 3);
            int side = side(v, level);
            any |= side < 0;
            if (side >= 0) {
                above[high++] = v;
            }
            if (side <= 0) {
                under[low++] = v;
            }
            if (side * side(w, level) < 0) {
                int at = crossing(v, w, level);
                above[high++] = at;
                under[low++] = at;
            }
        }
        if (!below) {
            fan(above, high);
        } else if (any) {
            fan(under, low);
        }
        for (int i = 0; i < low && any && low > 2; i++) {
            int a = under[i];
            int b = under[(i + 1) % low];
            if (side(a, level) == 0 && side(b, level) == 0) {
                rims.get(lid).add(below ? new int[] {b, a} : new int[] {a, b});
            }
        }
    }

    private int side(int v, double level) {
        double above = built.at(v, 2) - level;
        return above > hollows.same() ? 1 : above < -hollows.same() ? -1 : 0;
    }

    private void fan(int[] polygon, int count) {
        for (int i = 2; i < count; i++) {
            built.facet(polygon[0], polygon[i - 1], polygon[i]);
        }
    }

    /** Closes a rim by facets around the middle of its outline. */
    private void span(int lid, double level) {
        double x = 0;
        double y = 0;
        List<int[]> rim = rims.get(lid);
        for (int[] edge : rim) {
            x += built.at(edge[0], 0) / rim.size();
            y += built.at(edge[0], 1) / rim.size();
        }
        int middle = built.vertex(x, y, level);
        for (int[] edge : rim) {
            built.facet(edge[0], edge[1], middle);
        }
    }

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
}
