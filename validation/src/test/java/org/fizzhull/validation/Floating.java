package org.fizzhull.validation;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Hull;

/**
 * A hull afloat with one direction up, worked out here from the cut of the hull alone: bisection for the level, then the
 * potential energy per weight U = (G - B) . n and its second derivative K = J/V - U, whose two values are the metacentric
 * heights (reference sheet on hydrostatics, 2.2). So the cut is checked without the library's own search. SI.
 *
 * @param hull what displaces water
 * @param up body direction that points up, a unit vector
 * @param centre centre of mass, m
 * @param level the plane {@code up . x = level} is the water, m
 * @param cut what lies below it
 */
record Floating(Hull hull, Vec3 up, Vec3 centre, double level, PlaneCut cut) {
    private static final int HALVINGS = 70;

    /** Afloat displacing a volume, m3. */
    static Floating displacing(Hull hull, double volume, Vec3 centre, Vec3 up) {
        PlaneCut cut = new PlaneCut();
        double level = root(
                c -> {
                    hull.cut(up.x(), up.y(), up.z(), c, cut);
                    return cut.volume - volume;
                },
                -hull.reach(-up.x(), -up.y(), -up.z()),
                hull.reach(up.x(), up.y(), up.z()));
        hull.cut(up.x(), up.y(), up.z(), level, cut);
        return new Floating(hull, up, centre, level, cut);
    }

    /** A homogeneous body of a density relative to the water. */
    static Floating homogeneous(Hull hull, double relativeDensity, Vec3 up) {
        return displacing(hull, relativeDensity * hull.volume(), hull.centroid(), up);
    }

    double draft() {
        return level + hull.reach(-up.x(), -up.y(), -up.z());
    }

    /** Centre of the displaced volume, m. */
    Vec3 buoyancy() {
        return new Vec3(cut.mx / cut.volume, cut.my / cut.volume, cut.mz / cut.volume);
    }

    /** Height of G over B, m: the potential energy per weight. */
    double energy() {
        return centre.minus(buoyancy()).dot(up);
    }

    /** Moment arm about a horizontal direction: positive where U rises on turning {@code up} towards it, m. */
    double slope(Vec3 towards) {
        return centre.minus(buoyancy()).dot(towards);
    }

    double smallerGm() {
        return meanMoment() - spread() - energy();
    }

    double largerGm() {
        return meanMoment() + spread() - energy();
    }

    double smallerBm() {
        return meanMoment() - spread();
    }

    private double meanMoment() {
        return (cut.juu + cut.jww) / 2 / cut.volume;
    }

    private double spread() {
        return Math.hypot((cut.juu - cut.jww) / 2, cut.juw) / cut.volume;
    }

    /** Where a function that changes sign between two ends is zero. */
    static double root(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        boolean rising = f.applyAsDouble(high) > 0;
        if (rising == f.applyAsDouble(low) > 0) {
            throw new IllegalStateException("no change of sign between " + from + " and " + to);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (f.applyAsDouble(middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
