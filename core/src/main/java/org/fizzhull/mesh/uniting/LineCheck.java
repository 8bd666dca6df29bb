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
        RayTable rays = RayTable.over(mesh, axis, box, LINES);
        double[] length = new double[LINES * LINES];
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
