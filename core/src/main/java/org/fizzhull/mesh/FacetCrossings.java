package org.fizzhull.mesh;

import java.util.Arrays;

/** Where a straight way goes through the facets of a {@link FacetTree}, and whether into the material or out of it. */
final class FacetCrossings {
    /** A crossing nearer to the start than this share of the way is the start itself. */
    private static final double START = 1e-9;

    private final FacetTree tree;
    private final int[] stack = new int[FacetTree.DEEPEST];
    private double[] distance = new double[8];
    private boolean[] entering = new boolean[8];
    private int count;

    FacetCrossings(FacetTree tree) {
        this.tree = tree;
    }

    /** Finds the crossings from a point in a direction of length 1 up to a length, m, and says how many there are. */
    int find(double[] start, double[] direction, double length) {
        count = 0;
        int top = 0;
        stack[0] = 0;
        while (top >= 0) {
            int node = stack[top--];
            if (!meets(FacetTree.STRIDE * node, start, direction, length)) {
                continue;
            }
            int right = tree.link[node];
            if (right >= 0) {
                stack[++top] = right;
                stack[++top] = node + 1;
                continue;
            }
            int first = -right - 1;
            for (int i = first; i < first + tree.size[node]; i++) {
                cross(9 * i, start, direction, length);
            }
        }
        return count;
    }

    /** Length of the way to a crossing, m. */
    double distance(int crossing) {
        return distance[crossing];
    }

    /** Whether the way enters the material there. */
    boolean entering(int crossing) {
        return entering[crossing];
    }

    private boolean meets(int b, double[] start, double[] direction, double length) {
        double low = 0;
        double high = length;
        for (int k = 0; k < 3; k++) {
            double down = tree.bound[b + k] - start[k];
            double up = tree.bound[b + 3 + k] - start[k];
            if (direction[k] != 0) {
                low = Math.max(low, Math.min(down / direction[k], up / direction[k]));
                high = Math.min(high, Math.max(down / direction[k], up / direction[k]));
            } else if (down > 0 || up < 0) {
                return false;
            }
        }
        return low <= high;
    }

    /** The facet whose coordinates begin at t: Moeller and Trumbore 1997, J. Graph. Tools 2, 21 (from memory). */
    private void cross(int t, double[] start, double[] u, double length) {
        double[] xyz = tree.corner;
        double px = xyz[t + 3] - xyz[t];
        double py = xyz[t + 4] - xyz[t + 1];
        double pz = xyz[t + 5] - xyz[t + 2];
        double qx = xyz[t + 6] - xyz[t];
        double qy = xyz[t + 7] - xyz[t + 1];
        double qz = xyz[t + 8] - xyz[t + 2];
        double nx = py * qz - pz * qy;
        double ny = pz * qx - px * qz;
        double nz = px * qy - py * qx;
        double down = -(nx * u[0] + ny * u[1] + nz * u[2]);
        double ox = start[0] - xyz[t];
        double oy = start[1] - xyz[t + 1];
        double oz = start[2] - xyz[t + 2];
        double s = (nx * ox + ny * oy + nz * oz) / down;
        if (!(s > START * length && s < length)) {
            return;
        }
        double mx = oy * u[2] - oz * u[1];
        double my = oz * u[0] - ox * u[2];
        double mz = ox * u[1] - oy * u[0];
        double b = (qx * mx + qy * my + qz * mz) / down;
        double c = -(px * mx + py * my + pz * mz) / down;
        if (b >= 0 && c >= 0 && b + c <= 1) {
            if (count == distance.length) {
                distance = Arrays.copyOf(distance, 2 * count);
                entering = Arrays.copyOf(entering, 2 * count);
            }
            distance[count] = s;
            entering[count++] = down > 0;
        }
    }
}
