package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.uniting.FacetEdges;

/** Vertices of a facet list as points, m, and how far they lie from one another. */
final class Vertices {
    private Vertices() {}

    static Vec3 at(double[] xyz, int v) {
        return new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    static double distance(double[] xyz, int a, int b) {
        return at(xyz, a).minus(at(xyz, b)).norm();
    }

    /** Distance from a to the foot of v on the line from a to b, m; 0 where a and b fall together. */
    static double along(double[] xyz, int a, int b, int v) {
        Vec3 way = at(xyz, b).minus(at(xyz, a));
        double length = way.norm();
        return length > 0 ? way.dot(at(xyz, v).minus(at(xyz, a))) / length : 0;
    }

    /** Distance of a vertex from the line through two others, m; its distance from them where they fall together. */
    static double offLine(double[] xyz, int a, int b, int v) {
        Vec3 way = at(xyz, b).minus(at(xyz, a));
        Vec3 there = at(xyz, v).minus(at(xyz, a));
        double length = way.norm();
        return length > 0 ? way.cross(there).norm() / length : there.norm();
    }

    /** Area of a triangle, m2. */
    static double area(Vec3 a, Vec3 b, Vec3 c) {
        return b.minus(a).cross(c.minus(a)).norm() / 2;
    }

    /** The vertices at both ends of some sides (three times the facet plus the corner), each once, by x. */
    static int[] byX(double[] xyz, int[] corners, int[] sides) {
        return Arrays.stream(sides)
                .flatMap(h -> IntStream.of(corners[h], corners[FacetEdges.next(h)]))
                .sorted()
                .distinct()
                .boxed()
                .sorted(Comparator.comparingDouble(v -> xyz[3 * v]))
                .mapToInt(v -> v)
                .toArray();
    }
}
