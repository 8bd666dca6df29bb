package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Where a straight line runs inside the body of a {@link FacetTree}: between crossings at which more facets were entered
 * than left. Crossings: Moeller and Trumbore 1997, J. Graph. Tools 2, 21 (from memory). Holds its answer: not thread-safe.
 */
final class LineThrough {
    private static final int DEEPEST = 128;

    private final FacetTree tree;
    private final int[] stack = new int[DEEPEST];
    private final double[] p = new double[3];
    private final double[] u = new double[3];
    private double[] place = new double[16];
    private boolean[] in = new boolean[16];
    private int crossings;
    private final double[] normal = new double[3];

    LineThrough(FacetTree tree) {
        this.tree = tree;
    }

    /**
     * Finds the stretches of a line inside the body.
     *
     * @param point on the line, outside of the body, m
     * @param direction of length 1
     * @return begin and end of each stretch, m from the point, rising; empty for a line that misses the body; null for
     *     one that slips through a seam, so that what it enters it does not leave
     */
    double @Nullable [] stretches(double[] point, double[] direction) {
        System.arraycopy(point, 0, p, 0, 3);
        System.arraycopy(direction, 0, u, 0, 3);
        cross();
        for (int i = 1; i < crossings; i++) {
            double s = place[i];
            boolean entry = in[i];
            int at = i;
            while (at > 0 && place[at - 1] > s) {
                place[at] = place[at - 1];
                in[at] = in[at - 1];
                at--;
            }
            place[at] = s;
            in[at] = entry;
        }
        double[] found = new double[crossings];
        int used = 0;
        int winding = 0;
        for (int i = 0; i < crossings; i++) {
            int before = winding;
            winding += in[i] ? 1 : -1;
            if ((before > 0) != (winding > 0)) {
                found[used++] = place[i];
            }
        }
        return winding == 0 ? Arrays.copyOf(found, used) : null;
    }

    private void cross() {
        crossings = 0;
        int top = 0;
        stack[0] = 0;
        while (top >= 0) {
            int node = stack[top--];
            if (!meets(node)) {
                continue;
            }
            if (tree.leaf(node)) {
                for (int i = tree.first(node); i < tree.end(node); i++) {
                    cross(9 * i);
                }
            } else {
                stack[++top] = tree.right(node);
                stack[++top] = node + 1;
            }
        }
    }

    private boolean meets(int node) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            double down = tree.box(node, k) - p[k];
            double up = tree.box(node, 3 + k) - p[k];
            if (u[k] != 0) {
                low = Math.max(low, Math.min(down / u[k], up / u[k]));
                high = Math.min(high, Math.max(down / u[k], up / u[k]));
            } else if (down > 0 || up < 0) {
                return false;
            }
        }
        return low <= high;
    }

    private void cross(int t) {
        double[] xyz = tree.corner;
        double ax = xyz[t + 3] - xyz[t];
        double ay = xyz[t + 4] - xyz[t + 1];
        double az = xyz[t + 5] - xyz[t + 2];
        double bx = xyz[t + 6] - xyz[t];
        double by = xyz[t + 7] - xyz[t + 1];
        double bz = xyz[t + 8] - xyz[t + 2];
        normal[0] = ay * bz - az * by;
        normal[1] = az * bx - ax * bz;
        normal[2] = ax * by - ay * bx;
        double along = normal[0] * u[0] + normal[1] * u[1] + normal[2] * u[2];
        double ox = xyz[t] - p[0];
        double oy = xyz[t + 1] - p[1];
        double oz = xyz[t + 2] - p[2];
        double mx = u[1] * oz - u[2] * oy;
        double my = u[2] * ox - u[0] * oz;
        double mz = u[0] * oy - u[1] * ox;
        double b = -(bx * mx + by * my + bz * mz) / along;
        double c = (ax * mx + ay * my + az * mz) / along;
        if (b >= 0 && c >= 0 && b + c <= 1) {
            if (crossings == place.length) {
                place = Arrays.copyOf(place, 2 * crossings);
                in = Arrays.copyOf(in, 2 * crossings);
            }
            place[crossings] = (normal[0] * ox + normal[1] * oy + normal[2] * oz) / along;
            in[crossings++] = along < 0;
        }
    }
}
