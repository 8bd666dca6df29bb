package org.fizzhull.validation.check;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.meshed.MeshShape;

/** Half a hollow ball as a mesh: two arcs of chords turned about the axis, every vertex on one of the two balls. */
final class TurnedBowl {
    private static final int ARC = 64;

    private TurnedBowl() {}

    /** The shape; its depth profiles, which cost a second, are those of a ball and without meaning. */
    static MeshShape of(double outer, double inner, int around) {
        DepthProfile any = Sphere.ofDiameter(outer).depthProfile(DepthProfile.Exposure.ALL);
        return MeshShape.of("bowl.stl", "m", mesh(outer, inner, around), exposure -> any);
    }

    private static TriangleMesh mesh(double outer, double inner, int around) {
        // pole, rings up the outside, rings down the inside, pole
        int rings = 2 * ARC;
        double[] xyz = new double[3 * (rings * around + 2)];
        for (int i = 0; i < rings; i++) {
            boolean out = i < ARC;
            double radius = out ? outer : inner;
            double up = Math.PI / 2 * (out ? i + 1 : 2 * ARC - i) / ARC;
            for (int k = 0; k < around; k++) {
                int v = 3 * (1 + i * around + k);
                double angle = 2 * Math.PI * k / around;
                xyz[v] = radius * Math.sin(up) * Math.cos(angle);
                xyz[v + 1] = radius * Math.sin(up) * Math.sin(angle);
                xyz[v + 2] = up == Math.PI / 2 ? 0 : -radius * Math.cos(up);
            }
        }
        int last = rings * around + 1;
        xyz[2] = -outer;
        xyz[3 * last + 2] = -inner;
        int[] corners = new int[6 * rings * around];
        int used = 0;
        for (int k = 0; k < around; k++) {
            int l = (k + 1) % around;
            used = put(corners, used, 0, 1 + l, 1 + k);
            for (int i = 0; i + 1 < rings; i++) {
                int a = 1 + i * around;
                int b = a + around;
                used = put(corners, used, a + k, a + l, b + k);
                used = put(corners, used, a + l, b + l, b + k);
            }
            used = put(corners, used, 1 + (rings - 1) * around + k, 1 + (rings - 1) * around + l, last);
        }
        return new TriangleMesh(xyz, corners);
    }

    private static int put(int[] corners, int at, int a, int b, int c) {
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        return at + 3;
    }
}
