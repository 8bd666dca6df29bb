package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;

/**
 * The smallest heel from a rest at which the rim of a boat touches the water, over all sides to lean to, at constant
 * displacement: by bracketing its first zero on each of some sides, the best of them drawn out between its neighbours.
 *
 * <p>One instance serves one thread.
 */
final class RimHeel {
    private static final int STEPS = 90;
    private static final int SIDES = 48;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Hollow hollow;
    private final Vec3 up;
    private final Vec3 right;
    private final Vec3 ahead;
    private final double displaced;
    private final boolean round;
    private final PlaneCut cut = new PlaneCut();
    private double level = Double.NaN;

    /** Of a boat at rest with a direction up, that displaces a volume, m3. */
    RimHeel(Hollow hollow, Vec3 up, double displaced) {
        this.hollow = hollow;
        this.up = up;
        this.displaced = displaced;
        round = hollow.rim().round() && up.z() == 1;
        right = round ? new Vec3(1, 0, 0) : across(up);
        ahead = up.cross(right);
    }

    private static Vec3 across(Vec3 up) {
        Vec3 axis = Math.abs(up.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        return axis.minus(up.times(axis.dot(up))).unit();
    }

    /** The heel, rad; pi/2 where no smaller one does. */
    double smallest() {
        int sides = round ? 1 : SIDES;
        for (int i = 1; i <= STEPS; i++) {
            double heel = Math.PI / 2 * i / STEPS;
            double lowest = Double.POSITIVE_INFINITY;
            int first = 0;
            for (int side = 0; side < sides; side++) {
                double above = above(heel, 2 * Math.PI * side / sides);
                if (above < lowest) {
                    lowest = above;
                    first = side;
                }
            }
            if (lowest <= 0) {
                double dry = Math.PI / 2 * (i - 1) / STEPS;
                return round ? dips(0, dry, heel) : best(2 * Math.PI * first / sides, dry, heel);
            }
        }
        return Math.PI / 2;
    }

    /** The smallest heel near a side, where the rim is dry at one heel and wet at another. */
    private double best(double side, double dry, double wet) {
        double low = side - 2 * Math.PI / SIDES;
        double high = side + 2 * Math.PI / SIDES;
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = above(wet, a);
        double atB = above(wet, b);
        while (high - low > 1e-6) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = above(wet, a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = above(wet, b);
            }
        }
        double middle = (low + high) / 2;
        return dips(above(wet, middle) <= 0 ? middle : side, dry, wet);
    }

    private double dips(double side, double isDry, double isWet) {
        double dry = isDry;
        double wet = isWet;
        while (wet - dry > 1e-13) {
            double middle = (dry + wet) / 2;
            if (above(middle, side) > 0) {
                dry = middle;
            } else {
                wet = middle;
            }
            if (middle <= Math.nextUp(dry) && middle >= Math.nextDown(wet)) {
                break;
            }
        }
        return (dry + wet) / 2;
    }

    /** Height of the lowest rim point above the water after a heel to a side, m. */
    private double above(double heel, double side) {
        double c = Math.cos(heel);
        double s = Math.sin(heel);
        double r = round ? s : s * Math.cos(side);
        double a = round ? 0 : s * Math.sin(side);
        double nx = c * up.x() + r * right.x() + a * ahead.x();
        double ny = c * up.y() + r * right.y() + a * ahead.y();
        double nz = c * up.z() + r * right.z() + a * ahead.z();
        level = Draft.level(hollow.closed(), nx, ny, nz, displaced, level, cut);
        return hollow.rim().lowest(nx, ny, nz) - level;
    }
}
