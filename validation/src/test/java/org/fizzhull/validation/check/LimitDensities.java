package org.fizzhull.validation.check;

import static org.fizzhull.validation.check.Floating.root;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Stability;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.validation.table.Inputs;

/** Densities, sizes and angles at which a body held in one attitude turns from stable to unstable, sought by bisection. */
final class LimitDensities {
    private static final Vec3 CORNER = new Vec3(1, 1, 1).times(1 / Math.sqrt(3));

    private LimitDensities() {}

    /**
     * Length over diameter at which a cylinder turns unstable: upright below it, on its side above it. On its side it
     * rolls freely, one of its two metacentric heights is 0, so their sum changes sign.
     */
    static double cylinder(Inputs in) {
        Vec3 up = Bodies.up(in);
        double s = in.number("s");
        return root(
                ratio -> {
                    Stability body =
                            Floating.of(hull(Bodies.cylinder(ratio)), s, up).stability();
                    return body.gmSmaller() + body.gmLarger();
                },
                0.3,
                1.5);
    }

    static double cube(Inputs in) {
        Hull cube = hull(Bodies.cube());
        Vec3 up = Bodies.up(in);
        return root(s -> gm(cube, s, up), in.number("from"), in.number("to"));
    }

    /** Density at which a cube lies as low corner down as in its tilted attitude, tan^2 = 12 s (1 - s) - 2. */
    static double cubeEqualEnergies(Inputs in) {
        Hull cube = hull(Bodies.cube());
        return root(
                s -> {
                    double tilt = Math.atan(Math.sqrt(12 * s * (1 - s) - 2));
                    Vec3 tilted = new Vec3(Math.sin(tilt), 0, Math.cos(tilt));
                    double atCorner = Floating.of(cube, s, CORNER).stability().energy();
                    return atCorner - Floating.of(cube, s, tilted).stability().energy();
                },
                in.number("from"),
                in.number("to"));
    }

    /** Angle from level, in degrees, at which a long square bar rests with its axis level. */
    static double barAngle(Inputs in) {
        Hull bar = hull(Bodies.shape(in));
        double displaced = in.number("s") * bar.volume();
        return root(
                degrees -> Stability.rightingArm(
                        bar, bar.centroid(), Vec3.UP, new Vec3(1, 0, 0), Math.toRadians(degrees), displaced),
                1,
                44.5);
    }

    static double cone(Inputs in) {
        Hull cone = hull(cone(in.number("half_angle_deg")));
        Vec3 up = Bodies.up(in);
        return root(s -> gm(cone, s, up), 0.01, 0.99);
    }

    /** Least full apex angle, in degrees, of a cone that floats apex down. */
    static double coneAngle(Inputs in) {
        Vec3 apexDown = new Vec3(0, 0, -1);
        double s = in.number("s");
        return 2 * root(degrees -> gm(hull(cone(degrees)), s, apexDown), 5, 80);
    }

    private static double gm(Hull hull, double s, Vec3 up) {
        return Floating.of(hull, s, up).stability().gmSmaller();
    }

    private static Cone cone(double halfAngle) {
        double height = Units.millimetres(60);
        return Cone.ofDiameterAndHeight(2 * height * Math.tan(Math.toRadians(halfAngle)), height);
    }

    private static Hull hull(Shape shape) {
        return shape.hull().orElseThrow();
    }
}
