package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.uniting.CrossedShells;
import org.jspecify.annotations.Nullable;

/**
 * Which surfaces of a mesh lie inside which, by the parity of the crossings of a vertical ray from a point of each
 * surface. Of two surfaces that cross or touch neither lies inside the other.
 */
final class Nesting {
    private final Surfaces surfaces;
    private final @Nullable CrossedShells crossed;

    /** Whether surface i lies inside surface j, at i and j. */
    private final boolean[][] inside;

    /** @param crossed which surfaces cross; null where crossings are not looked at */
    Nesting(Surfaces surfaces, @Nullable CrossedShells crossed) {
        this.surfaces = surfaces;
        this.crossed = crossed;
        int count = surfaces.count();
        inside = new boolean[count][count];
        boolean any = IntStream.range(0, count * count).anyMatch(i -> maybe(i / count, i % count));
        if (any) {
            shoot(crossed == null ? surfaces.mesh() : crossed.grown(), surfaces.label());
        }
    }

    /** Whether one surface may lie inside another: they do not cross, and its box lies in the box of the other. */
    private boolean maybe(int inner, int outer) {
        return inner != outer
                && (crossed == null || !crossed.cross(inner, outer))
                && surfaces.get(inner).boxInside(surfaces.get(outer));
    }

    /**
     * Counts the crossings of the ray from each surface with every surface whose box contains that of the first. The
     * ray starts inside the facet with the largest horizontal projection, off its edges and medians, so that it
     * leaves its own surface cleanly.
     */
    private void shoot(TriangleMesh mesh, int[] label) {
        double[] largest = new double[inside.length];
        double[][] start = new double[3][inside.length];
        Arrays.fill(largest, -1);
        for (int f = 0; f < label.length; f++) {
            int own = label[f];
            double shadow = Math.abs(FaceSets.shadow(mesh, f));
            if (shadow > largest[own]) {
                largest[own] = shadow;
                for (int k = 0; k < 3; k++) {
                    start[k][own] = 0.3719 * mesh.at(mesh.corner(f, 0), k)
                            + 0.3347 * mesh.at(mesh.corner(f, 1), k)
                            + 0.2934 * mesh.at(mesh.corner(f, 2), k);
                }
            }
        }
        RayTable rays = new RayTable(mesh, 2, start[0], start[1]);
        for (int inner = 0; inner < inside.length; inner++) {
            for (int k = rays.first(inner); k < rays.end(inner); k++) {
                int outer = label[rays.facet(k)];
                inside[inner][outer] ^= rays.height(k) > start[2][inner] && maybe(inner, outer);
            }
        }
    }

    /** Winding number just outside a surface: of the surfaces around it, the bodies less the cavities. */
    int windingOutside(int surface) {
        return IntStream.range(0, inside.length)
                .filter(outer -> inside[surface][outer])
                .map(this::step)
                .sum();
    }

    /** By how much the winding number rises on the way in through a surface. */
    int step(int surface) {
        return surfaces.get(surface).volume() > 0 ? 1 : -1;
    }

    /** The outermost surface around one; the surface itself where none is around it. */
    int outermost(int surface) {
        return IntStream.range(0, inside.length)
                .filter(outer -> inside[surface][outer] && free(outer))
                .reduce(surface, (first, second) -> second);
    }

    private boolean free(int surface) {
        return IntStream.range(0, inside.length).noneMatch(outer -> inside[surface][outer]);
    }
}
