package org.fizzhull.cli.picture;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/** The facets of a mesh with what shading asks of their neighbours. */
final class Facets {
    /** Cosine of the angle between facets up to which a bend counts as a curve, not as an edge. */
    private static final double CURVE = Math.cos(Math.toRadians(32));

    final TriangleMesh mesh;
    final Vec3[] normals;
    private final Map<Long, Integer> across = new HashMap<>();
    private final int[] first;
    private final int[] around;

    Facets(TriangleMesh mesh) {
        this.mesh = mesh;
        int count = mesh.facetCount();
        normals = new Vec3[count];
        first = new int[mesh.vertexCount() + 1];
        around = new int[3 * count];
        for (int f = 0; f < count; f++) {
            Vec3 a = corner(f, 0);
            normals[f] = corner(f, 1).minus(a).cross(corner(f, 2).minus(a));
            for (int k = 0; k < 3; k++) {
                across.put(key(mesh.corner(f, k), mesh.corner(f, (k + 1) % 3)), f);
                first[mesh.corner(f, k) + 1]++;
            }
        }
        for (int v = 0; v < mesh.vertexCount(); v++) {
            first[v + 1] += first[v];
        }
        int[] next = Arrays.copyOf(first, mesh.vertexCount());
        for (int f = 0; f < count; f++) {
            for (int k = 0; k < 3; k++) {
                around[next[mesh.corner(f, k)]++] = f;
            }
        }
    }

    private static long key(int from, int to) {
        return (long) from << 32 | to;
    }

    Vec3 corner(int f, int k) {
        int v = mesh.corner(f, k);
        return new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
    }

    /** The facet beyond side k; itself where none is known. */
    int beyond(int f, int k) {
        Integer other = across.get(key(mesh.corner(f, (k + 1) % 3), mesh.corner(f, k)));
        return other == null ? f : other;
    }

    /** Whether two facets meet in an edge. */
    boolean sharp(int f, int g) {
        return normals[f].dot(normals[g]) < CURVE * normals[f].norm() * normals[g].norm();
    }

    /** Mean normal of the curve that a facet is part of: edges part it from its neighbours. */
    Vec3 smooth(int f) {
        Vec3 sum = Vec3.ZERO;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            for (int i = first[v]; i < first[v + 1]; i++) {
                sum = sharp(f, around[i]) ? sum : sum.plus(normals[around[i]]);
            }
        }
        return sum.norm() > 0 ? sum.unit() : Vec3.UP;
    }
}
