package org.fizzhull.mesh.hollow;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Meshes with a lid at the rim: closed edge by edge. The surface is cut at the level of the rim, and the lid is a fan
 * around one point, so that a rim that is not star-shaped is covered by facets that overlap with opposite signs. Volumes,
 * centroids and water planes come out right all the same; only the area of such a lid is too large, and it is never wet.
 */
final class RimLid {
    private final OpenHollows hollows;
    private final TriangleMesh mesh;

    /** 1 to keep what is above the rim, -1 for what is below. */
    private final int kept;

    private final int[] apex;
    private final double[] sum;
    private final int[] shared;
    private final Map<Long, Integer> crossings = new HashMap<>();
    private double[] xyz;
    private int vertices;
    private int[] corners;
    private int used;

    private RimLid(OpenHollows hollows, int lids, int kept) {
        this.hollows = hollows;
        this.kept = kept;
        mesh = hollows.mesh;
        apex = new int[lids];
        Arrays.fill(apex, -1);
        sum = new double[2 * lids];
        shared = new int[lids];
        vertices = mesh.vertexCount();
        xyz = new double[3 * vertices + 3 * lids];
        for (int i = 0; i < 3 * vertices; i++) {
            xyz[i] = mesh.at(i / 3, i % 3);
        }
        corners = new int[3 * mesh.facetCount()];
    }

    /** The mesh with its dry hollows closed, each at its own rim; of so many hollows that were found. */
    static TriangleMesh closed(OpenHollows hollows, int count) {
        RimLid lid = new RimLid(hollows, count, 1);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            int h = hollows.dryOwner(f);
            if (h < 0) {
                lid.facet(lid.mesh.corner(f, 0), lid.mesh.corner(f, 1), lid.mesh.corner(f, 2));
            } else {
                lid.cut(f, hollows.level(h), h);
            }
        }
        for (int h = 0; h < count; h++) {
            lid.place(h, hollows.level(h));
        }
        return lid.mesh(1);
    }

    /** What of the closed mesh is below the rim, turned upside down, so that it stands on its lid. */
    static TriangleMesh belowUpsideDown(OpenHollows hollows) {
        RimLid lid = new RimLid(hollows, 1, -1);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            if (hollows.dryOwner(f) < 0) {
                lid.cut(f, hollows.rim(), 0);
            }
        }
        lid.place(0, hollows.rim());
        return lid.mesh(-1);
    }

    /** What fills the largest hollow up to its rim, as a body of its own. */
    static TriangleMesh filling(OpenHollows hollows, int hollow) {
        RimLid lid = new RimLid(hollows, 1, -1);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            if (hollows.dryOwner(f) == hollow) {
                lid.cut(f, hollows.level(hollow), 0);
            }
        }
        lid.place(0, hollows.level(hollow));
        for (int i = 0; i < lid.used; i += 3) {
            int kept = lid.corners[i];
            lid.corners[i] = lid.corners[i + 1];
            lid.corners[i + 1] = kept;
        }
        return lid.mesh(1);
    }

    /** Keeps what of a facet is on the right side of a level, and spans a lid from the line where it is cut. */
    private void cut(int f, double level, int lid) {
        int[] keep = new int[4];
        int left = 0;
        int[] gone = new int[4];
        int lost = 0;
        boolean any = false;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            int w = mesh.corner(f, (k + 1) % 3);
            int side = side(v, level);
            any |= side < 0;
            if (side >= 0) {
                keep[left++] = v;
            }
            if (side <= 0) {
                gone[lost++] = v;
            }
            if (side * side(w, level) < 0) {
                int at = crossing(v, w, level);
                keep[left++] = at;
                gone[lost++] = at;
            }
        }
        if (kept > 0) {
            fan(keep, left);
        } else if (any) {
            fan(gone, lost);
        }
        for (int i = 0; i < lost && any && lost > 2; i++) {
            int a = gone[i];
            int b = gone[(i + 1) % lost];
            if (side(a, level) == 0 && side(b, level) == 0) {
                span(kept > 0 ? a : b, kept > 0 ? b : a, lid);
            }
        }
    }

    private int side(int v, double level) {
        double above = xyz[3 * v + 2] - level;
        return above > hollows.same() ? 1 : above < -hollows.same() ? -1 : 0;
    }

    private void fan(int[] polygon, int count) {
        for (int i = 2; i < count; i++) {
            facet(polygon[0], polygon[i - 1], polygon[i]);
        }
    }

    private void span(int a, int b, int lid) {
        if (apex[lid] < 0) {
            apex[lid] = vertex();
        }
        sum[2 * lid] += xyz[3 * a];
        sum[2 * lid + 1] += xyz[3 * a + 1];
        shared[lid]++;
        facet(a, b, apex[lid]);
    }

    /** Puts the apex of a lid in the middle of its outline. */
    private void place(int lid, double level) {
        if (apex[lid] >= 0) {
            xyz[3 * apex[lid]] = sum[2 * lid] / shared[lid];
            xyz[3 * apex[lid] + 1] = sum[2 * lid + 1] / shared[lid];
            xyz[3 * apex[lid] + 2] = level;
        }
    }

    private int crossing(int v, int w, double level) {
        int low = Math.min(v, w);
        int high = Math.max(v, w);
        long edge = ((long) low << 32) | high;
        Integer known = crossings.get(edge);
        if (known != null) {
            return known;
        }
        double t = (level - mesh.at(low, 2)) / (mesh.at(high, 2) - mesh.at(low, 2));
        int at = vertex();
        for (int axis = 0; axis < 2; axis++) {
            xyz[3 * at + axis] = mesh.at(low, axis) + t * (mesh.at(high, axis) - mesh.at(low, axis));
        }
        xyz[3 * at + 2] = level;
        crossings.put(edge, at);
        return at;
    }

    private int vertex() {
        if (3 * vertices == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        return vertices++;
    }

    private void facet(int a, int b, int c) {
        if (used + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[used++] = a;
        corners[used++] = b;
        corners[used++] = c;
    }

    /** The mesh of the vertices that are left; with a sign of -1 upside down. */
    private TriangleMesh mesh(int sign) {
        for (int v = 0; v < vertices; v++) {
            xyz[3 * v + 1] *= sign;
            xyz[3 * v + 2] *= sign;
        }
        return TriangleMesh.compact(Arrays.copyOf(xyz, 3 * vertices), Arrays.copyOf(corners, used));
    }
}
