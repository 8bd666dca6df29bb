package org.fizzhull.validation;

import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.validation.Floating.root;

import org.fizzhull.numeric.Vec3;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Cone;
import org.fizzhull.shape.Hollow;
import org.fizzhull.shape.Hull;
import org.fizzhull.shape.Shape;

/** Bodies afloat: level, centres, metacentric heights and the densities or sizes where an attitude turns unstable. mm. */
final class HydrostaticsChecks extends Bindings {
    HydrostaticsChecks() {
        super("hydrostatics");
        bind("draft", in -> inMillimetres(afloat(in).draft()));
        bind("energy", in -> inMillimetres(afloat(in).energy()));
        bind("bm", in -> inMillimetres(afloat(in).smallerBm()));
        bind("gm", in -> inMillimetres(afloat(in).smallerGm()));
        bind("gm-larger", in -> inMillimetres(afloat(in).largerGm()));
        bind("water-plane", in -> 1e6 * afloat(in).cut().area);
        bind("water-line", in -> 1e3 * Math.sqrt(afloat(in).cut().area / Math.PI));
        bind("buoyancy-height", in -> inMillimetres(afloat(in).buoyancy().z()));
        bind("displaced", in -> 1e9 * afloat(in).cut().volume);
        bind("boat-draft", in -> inMillimetres(boat(in).draft()));
        bind("boat-freeboard", in -> inMillimetres(hollow(in).rimHeight() - boat(in).draft()));
        bind("boat-gm", in -> inMillimetres(boat(in).smallerGm()));
        bind("boat-limit", in -> {
            Shape shape = Bodies.shape(in);
            return shape.hullVolume() / shape.volume();
        });
        bind("first-moment", HydrostaticsChecks::firstMoment);
        bind("halves-gm", HydrostaticsChecks::halves);
        bind("cylinder-limit", HydrostaticsChecks::cylinderLimit);
        bind("cube-limit", in -> {
            Hull cube = hull(Bodies.cube());
            Vec3 up = Bodies.up(in);
            return root(s -> gm(cube, s, up), in.number("from"), in.number("to"));
        });
        bind("cube-equal", in -> equalEnergies(in.number("from"), in.number("to")));
        bind("bar-angle", HydrostaticsChecks::barAngle);
        bind("cone-limit", in -> {
            Hull cone = hull(cone(in.number("half_angle_deg")));
            return root(s -> gm(cone, s, Bodies.up(in)), 0.01, 0.99);
        });
        bind("cone-angle", in -> 2 * root(deg -> gm(hull(cone(deg)), in.number("s"), apexDown()), 5, 80));
    }

    private static Floating afloat(Inputs in) {
        return Floating.homogeneous(hull(Bodies.shape(in)), in.number("s"), Bodies.up(in));
    }

    /** Open side up, its hollow dry; s is the density of the shell against the water. */
    private static Floating boat(Inputs in) {
        Shape shell = Bodies.shape(in);
        return Floating.displacing(
                hollow(in).closed(), in.number("s") * shell.volume(), shell.centroid(), Vec3.UP);
    }

    private static Hollow hollow(Inputs in) {
        return Bodies.shape(in).hollow().orElseThrow();
    }

    private static Hull hull(Shape shape) {
        return shape.hull().orElseThrow();
    }

    private static double gm(Hull hull, double s, Vec3 up) {
        return Floating.homogeneous(hull, s, up).smallerGm();
    }

    /** First moment of the displaced volume about the water plane, over the fourth power of the side a. */
    private static double firstMoment(Inputs in) {
        Floating body = afloat(in);
        double depth = body.level() - body.buoyancy().dot(body.up());
        return depth * body.cut().volume / Math.pow(in.millimetres("a_mm"), 4);
    }

    /** A ball of two half balls of different density, the heavier one below. */
    private static double halves(Inputs in) {
        Hull ball = hull(Bodies.shape(in));
        double below = in.number("s_below");
        double above = in.number("s_above");
        double radius = in.millimetres("R_mm");
        double centre = radius - 3 * radius / 8 * (below - above) / (below + above);
        double displaced = (below + above) / 2 * ball.volume();
        return inMillimetres(Floating.displacing(ball, displaced, new Vec3(0, 0, centre), Vec3.UP)
                .smallerGm());
    }

    /**
     * Length over diameter at which a cylinder turns unstable: upright below it, on its side above it. On its side it
     * rolls freely, one of its two metacentric heights is 0, so their sum changes sign.
     */
    private static double cylinderLimit(Inputs in) {
        Vec3 up = Bodies.up(in);
        double s = in.number("s");
        return root(
                ratio -> {
                    Floating body = Floating.homogeneous(hull(Bodies.cylinder(ratio)), s, up);
                    return body.smallerGm() + body.largerGm();
                },
                0.3,
                1.5);
    }

    /** Density at which a cube lies as low corner down as in its tilted attitude, tan^2 = 12 s (1 - s) - 2. */
    private static double equalEnergies(double from, double to) {
        Hull cube = hull(Bodies.cube());
        Vec3 corner = new Vec3(1, 1, 1).times(1 / Math.sqrt(3));
        return root(
                s -> {
                    double tilt = Math.atan(Math.sqrt(12 * s * (1 - s) - 2));
                    Vec3 tilted = new Vec3(Math.sin(tilt), 0, Math.cos(tilt));
                    return Floating.homogeneous(cube, s, corner).energy()
                            - Floating.homogeneous(cube, s, tilted).energy();
                },
                from,
                to);
    }

    /** Angle from level, in degrees, at which a long square bar rests with its axis level. */
    private static double barAngle(Inputs in) {
        Hull bar = hull(Bodies.shape(in));
        double s = in.number("s");
        return root(
                degrees -> {
                    double angle = Math.toRadians(degrees);
                    Vec3 up = new Vec3(0, Math.sin(angle), Math.cos(angle));
                    Vec3 towards = new Vec3(0, Math.cos(angle), -Math.sin(angle));
                    return Floating.homogeneous(bar, s, up).slope(towards);
                },
                1,
                44.5);
    }

    private static Cone cone(double halfAngle) {
        double height = Units.millimetres(60);
        return Cone.ofDiameterAndHeight(2 * height * Math.tan(Math.toRadians(halfAngle)), height);
    }

    private static Vec3 apexDown() {
        return new Vec3(0, 0, -1);
    }
}
