package org.fizzhull.hydrostatics;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.numeric.BracketedRoot;

/**
 * The smallest heel from an attitude at which the rim of a boat touches the water, over all sides to lean to, at
 * constant displacement.
 * <ol>
 *   <li>Heels in steps of one degree, on each of 48 sides, up to the first at which some side is wet; one side is
 *       enough for a round rim about an upright axis.
 *   <li>The side that lies deepest is found between its neighbours by Brent's minimisation.
 *   <li>The heel on that side at which the rim just touches, by Brent's root.
 * </ol>
 *
 * <p>Error: a rim that dips and comes out again within one degree is passed over; else 1e-13 rad on the side found,
 * which is true to 1e-6 rad. Cost: up to 48 drafts a degree. Called by {@link Boat}. One instance serves one thread.
 */
final class RimHeel {
    /** Steps of the heel from 0 to pi/2: one degree each. */
    private static final int STEPS = 90;
    /** Sides that are looked at, evenly around. */
    private static final int SIDES = 48;

    private final Hollow hollow;
    /** Direction up from which the boat heels. */
    private final Vec3 up;
    /** Level unit vector of the side 0. */
    private final Vec3 right;
    /** Level unit vector of the side pi/2. */
    private final Vec3 ahead;
    /** Displaced volume, held while it heels, m3. */
    private final double displaced;
    /** Whether all sides are alike: a round rim about an upright axis. */
    private final boolean round;

    private final PlaneCut cut = new PlaneCut();
    /** Level of the last draft, m: the guess for the next. */
    private double level = Double.NaN;

    /** Of a boat in equilibrium with a direction up, that displaces a volume, m3. */
    RimHeel(Hollow hollow, Vec3 up, double displaced) {
        this.hollow = hollow;
        this.up = up;
        this.displaced = displaced;
        round = hollow.rim().round() && up.z() == 1;
        right = round ? new Vec3(1, 0, 0) : across(up);
        ahead = up.cross(right);
    }

    /** A unit vector at right angles to another. */
    private static Vec3 across(Vec3 up) {
        Vec3 axis = Math.abs(up.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        return axis.minus(up.times(axis.dot(up))).unit();
    }

    /** The smallest heel at which the rim touches the water, rad; pi/2 where none up to that does. */
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
        // between the neighbouring sides, the one that lies deepest at the wet heel
        double step = 2 * Math.PI / SIDES;
        UnivariatePointValuePair deepest = new BrentOptimizer(1e-9, 1e-6)
                .optimize(
                        GoalType.MINIMIZE,
                        new MaxEval(200),
                        new UnivariateObjectiveFunction(angle -> above(wet, angle)),
                        new SearchInterval(side - step, side + step, side));
        return dips(deepest.getValue() <= 0 ? deepest.getPoint() : side, dry, wet);
    }

    /**
     * The heel, rad, between a dry and a wet one on one side at which the lowest point of the rim lies in the water
     * plane.
     */
    private double dips(double side, double dry, double wet) {
        return above(dry, side) > 0 ? BracketedRoot.find(heel -> above(heel, side), dry, wet, 1e-13) : dry;
    }

    /** Height of the lowest rim point above the water after a heel to a side, m. */
    private double above(double heel, double side) {
        // up direction after the heel, in the body frame
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
