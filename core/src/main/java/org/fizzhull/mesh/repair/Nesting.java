package org.fizzhull.mesh.repair;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.uniting.CrossedShells;
import org.jspecify.annotations.Nullable;

/**
 * Which surfaces of a mesh lie inside which: a ray upward from one point of each counts what it leaves. Surfaces that
 * cross or touch lie in none of each other.
 */
final class Nesting {
    private final TriangleMesh mesh;
    private final @Nullable CrossedShells crossed;
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

    private Nesting(TriangleMesh mesh, @Nullable CrossedShells crossed, int[] label, BodySums sums) {
        this.mesh = mesh;
        this.crossed = crossed;
        this.label = label;
        this.sums = sums;
        count = sums.count();
        px = new double[count];
        py = new double[count];
        pz = new double[count];
        inside = new boolean[count * count];
    }

    /** Finds which surface lies inside which; tells the sums the outermost of them. */
    static Nesting of(TriangleMesh mesh, @Nullable CrossedShells crossed, int[] label, BodySums sums) {
        Nesting nesting = new Nesting(mesh, crossed, label, sums);
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

    private boolean apart(int i, int j) {
        return i != j && (crossed == null || !crossed.cross(i, j));
    }

    private boolean anyBoxInside() {
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (apart(i, j) && sums.boxInside(i, j)) {
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
            int a = mesh.corner(f, 0);
            int b = mesh.corner(f, 1);
            int c = mesh.corner(f, 2);
            double shadow = Math.abs(FaceSets.shadow(mesh, f));
            if (shadow > largest[label[f]]) {
                largest[label[f]] = shadow;
                px[label[f]] = 0.3719 * mesh.at(a, 0) + 0.3347 * mesh.at(b, 0) + 0.2934 * mesh.at(c, 0);
                py[label[f]] = 0.3719 * mesh.at(a, 1) + 0.3347 * mesh.at(b, 1) + 0.2934 * mesh.at(c, 1);
                pz[label[f]] = 0.3719 * mesh.at(a, 2) + 0.3347 * mesh.at(b, 2) + 0.2934 * mesh.at(c, 2);
            }
        }
    }

    /** What a ray meets above its start, of other surfaces whose box is around. */
    private void shoot() {
        RayTable rays = new RayTable(mesh, 2, px, py);
        for (int inner = 0; inner < count; inner++) {
            for (int k = rays.first(inner); k < rays.end(inner); k++) {
                int outer = label[rays.facet(k)];
                if (rays.height(k) > pz[inner] && apart(inner, outer) && sums.boxInside(inner, outer)) {
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
