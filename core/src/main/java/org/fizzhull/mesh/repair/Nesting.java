package org.fizzhull.mesh.repair;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/** Which surfaces of a mesh lie inside which: a ray upward from one point of each counts what it leaves. */
final class Nesting {
    private final double[] xyz;
    private final int[] corners;
    private final int[] label;
    private final BodySums sums;
    private final int count;

    /** Start of the ray of each surface. */
    private final double[] px;

    private final double[] py;
    private final double[] pz;

    /** Whether surface i lies inside surface j, at i times count plus j. */
    private final boolean[] inside;

    private int[] depth = new int[0];

    private Nesting(double[] xyz, int[] corners, int[] label, BodySums sums) {
        this.xyz = xyz;
        this.corners = corners;
        this.label = label;
        this.sums = sums;
        count = sums.count();
        px = new double[count];
        py = new double[count];
        pz = new double[count];
        inside = new boolean[count * count];
    }

    /** Finds which surface lies inside which; tells the sums the outermost of them. */
    static Nesting of(double[] xyz, int[] corners, int[] label, BodySums sums) {
        Nesting nesting = new Nesting(xyz, corners, label, sums);
        if (nesting.count > 1 && nesting.anyBoxInside()) {
            nesting.chooseStarts();
            nesting.shoot();
        }
        nesting.depth = nesting.count();
        return nesting;
    }

    /** Number of surfaces around one. */
    int depth(int surface) {
        return depth[surface];
    }

    /** Whether one surface lies inside another. */
    boolean inside(int inner, int outer) {
        return inside[inner * count + outer];
    }

    private boolean anyBoxInside() {
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (i != j && sums.boxInside(i, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A point off the edges of the facet with the largest shadow: there the ray leaves its own surface cleanly. */
    private void chooseStarts() {
        double[] largest = new double[count];
        Arrays.fill(largest, -1);
        for (int f = 0; f < label.length; f++) {
            int a = 3 * corners[3 * f];
            int b = 3 * corners[3 * f + 1];
            int c = 3 * corners[3 * f + 2];
            double shadow = Math.abs(
                    (xyz[b] - xyz[a]) * (xyz[c + 1] - xyz[a + 1]) - (xyz[b + 1] - xyz[a + 1]) * (xyz[c] - xyz[a]));
            if (shadow > largest[label[f]]) {
                largest[label[f]] = shadow;
                px[label[f]] = 0.3719 * xyz[a] + 0.3347 * xyz[b] + 0.2934 * xyz[c];
                py[label[f]] = 0.3719 * xyz[a + 1] + 0.3347 * xyz[b + 1] + 0.2934 * xyz[c + 1];
                pz[label[f]] = 0.3719 * xyz[a + 2] + 0.3347 * xyz[b + 2] + 0.2934 * xyz[c + 2];
            }
        }
    }

    /** What a ray meets above its start, of other surfaces whose box is around. */
    private void shoot() {
        RayTable rays = new RayTable(new TriangleMesh(xyz, corners), 2, px, py);
        for (int inner = 0; inner < count; inner++) {
            for (int k = rays.first(inner); k < rays.end(inner); k++) {
                int outer = label[rays.facet(k)];
                if (rays.height(k) > pz[inner] && inner != outer && sums.boxInside(inner, outer)) {
                    inside[inner * count + outer] ^= true;
                }
            }
        }
    }

    private int[] count() {
        int[] depth = new int[count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                depth[i] += inside[i * count + j] ? 1 : 0;
            }
        }
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (inside[i * count + j] && depth[j] == 0) {
                    sums.setOutermost(i, j);
                }
            }
        }
        return depth;
    }
}
