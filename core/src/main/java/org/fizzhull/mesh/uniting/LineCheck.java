package org.fizzhull.mesh.uniting;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/**
 * Compares a union with the surfaces it was made of, independently of how it was made: on each of a set of parallel
 * lines the length inside at least one of the bodies must equal the length inside the union.
 */
final class LineCheck {
    /** Lines along each side of the square grid of lines. */
    private static final int LINES = 48;

    private LineCheck() {}

    /** Difference of the lengths inside, as a share of the length; the larger of that along z and that along x. */
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

    /** Length of each line inside a mesh, m; -1 where a line does not leave as often as it enters. */
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
