package org.fizzhull.mesh.uniting;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/**
 * Holds a union against the surfaces it was made of, along lines through both that know nothing of how it was made: on
 * each, what at least one body fills must be as long as what the union fills.
 */
final class LineCheck {
    /** Lines to a side, along each of two axes. */
    private static final int LINES = 48;

    /** Where the first line stands, in steps: off round numbers, where edges of drawn bodies are, and off diagonals. */
    private static final double OFF_U = 0.3819660112501051;

    private static final double OFF_V = 0.7548776662466927;

    private LineCheck() {}

    /** Largest share of the length inside that the two differ by, along either axis. */
    static double difference(TriangleMesh parts, TriangleMesh union) {
        return Math.max(difference(parts, union, 2), difference(parts, union, 0));
    }

    private static double difference(TriangleMesh parts, TriangleMesh union, int axis) {
        double[] expected = lengths(parts, parts.box(), axis);
        double[] found = lengths(union, parts.box(), axis);
        double sum = 0;
        double off = 0;
        for (int i = 0; i < expected.length; i++) {
            // a line that grazes a face may be lost by rounding
            if (expected[i] >= 0 && found[i] >= 0) {
                sum += expected[i];
                off += Math.abs(found[i] - expected[i]);
            }
        }
        return sum > 0 ? off / sum : 1;
    }

    /** Length inside of each line, m; -1 where the crossings of one do not add up. */
    private static double[] lengths(TriangleMesh mesh, double[] box, int axis) {
        int u = (axis + 1) % 3;
        int v = (axis + 2) % 3;
        double step = Math.max(box[u + 3] - box[u], box[v + 3] - box[v]) / LINES;
        int across = (int) Math.ceil((box[u + 3] - box[u]) / step);
        int down = (int) Math.ceil((box[v + 3] - box[v]) / step);
        RayTable rays = RayTable.lattice(mesh, axis, box[u] + OFF_U * step, box[v] + OFF_V * step, step, across, down);
        double[] length = new double[across * down];
        for (int r = 0; r < length.length; r++) {
            int winding = 0;
            for (int k = rays.first(r); k < rays.end(r); k++) {
                length[r] += winding > 0 ? rays.height(k) - rays.height(k - 1) : 0;
                winding += rays.leaves(k) ? -1 : 1;
            }
            length[r] = winding == 0 ? length[r] : -1;
        }
        return length;
    }
}
