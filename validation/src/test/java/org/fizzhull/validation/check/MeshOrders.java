package org.fizzhull.validation.check;

import static org.fizzhull.validation.check.Floating.root;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.hydrostatics.Stability;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.validation.table.Inputs;

/**
 * How fast a mesh comes to the body it stands for: chords half as long leave a quarter of the error, order 2. The ball
 * is an icosahedron cut k times; the cone of half angle 30 degrees, 60 mm high, stands on its point and has n chords.
 */
final class MeshOrders {
    private static final double HEIGHT = Units.millimetres(60);
    private static final double RADIUS = HEIGHT / Math.sqrt(3);
    private static final Vec3 DOWN = new Vec3(0, 0, -1);

    private MeshOrders() {}

    /** log2 of the error of one mesh over that of the next finer one, against the exact value of the row. */
    static double order(Inputs in) {
        double exact = in.number("exact");
        double coarse = value(in, 0);
        double fine = value(in, 1);
        return Math.log((coarse - exact) / (fine - exact)) / Math.log(2);
    }

    /** The value at chords of no length, from two meshes of order 2 (Richardson). */
    static double limit(Inputs in) {
        return (4 * value(in, 1) - value(in, 0)) / 3;
    }

    private static double value(Inputs in, int finer) {
        boolean ball = in.word("body").equals("ball");
        TriangleMesh mesh = ball
                ? Icosphere.of(Units.millimetres(in.number("R_mm")), (int) in.number("k") + finer)
                : cone((int) in.number("n") << finer);
        PolyhedronHull hull = new PolyhedronHull(mesh, 0);
        return switch (in.word("of")) {
            case "volume" -> 1e9 * hull.volume();
            case "surface" -> 1e6 * hull.properties().area();
            case "draft" ->
                1e3
                        * Draft.of(hull, ball ? Vec3.UP : DOWN, 1e-9 * in.number("displaced_mm3"))
                                .draft();
            case "stands-from" ->
                root(
                        s -> Stability.of(hull, hull.centroid(), DOWN, s * hull.volume())
                                .gmSmaller(),
                        0.01,
                        0.99);
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    private static TriangleMesh cone(int chords) {
        double[] xyz = new double[3 * (chords + 2)];
        int[] corners = new int[6 * chords];
        xyz[3 * chords + 5] = HEIGHT;
        for (int i = 0; i < chords; i++) {
            xyz[3 * i] = RADIUS * Math.cos(2 * Math.PI * i / chords);
            xyz[3 * i + 1] = RADIUS * Math.sin(2 * Math.PI * i / chords);
            int[] two = {i, (i + 1) % chords, chords + 1, (i + 1) % chords, i, chords};
            System.arraycopy(two, 0, corners, 6 * i, 6);
        }
        return new TriangleMesh(xyz, corners);
    }
}
