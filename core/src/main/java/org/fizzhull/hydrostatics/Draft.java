package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;

/**
 * How deep a hull lies in a given attitude. A body at least as heavy as the water it can displace has no water line: it
 * is submerged and its figures are those of the wholly immersed body.
 *
 * <p>The water plane cuts off the displaced volume: {@code V(level) = m/rho_w}, m mass (kg), rho_w density of the water
 * (kg/m3). Solved by Newton's method, whose derivative is the area of the water plane, inside a bracket:
 * <pre>{@code
 * Draft draft = Draft.of(hull, Vec3.UP, mass / bath.density());
 * double under = draft.immersedFraction();
 * }</pre>
 *
 * <p>Range: still water, wholly closed hulls. Error: level to 1e-13 of the height of the body, beside the error of the
 * hull. Cost: one cut a Newton step; a ball takes one. Source: Archimedes; for a ball the root of a cubic,
 * docs/physics/hydrostatics.md, 2. Immutable.
 *
 * @param level height of the water plane {@code up . x = level} in the body frame, m; NaN when submerged
 * @param draft depth of the lowest point below the water, m; the whole height when submerged
 * @param freeboard height of the highest point above the water, m; 0 when submerged
 * @param immersedFraction displaced volume over hull volume, 0 to 1
 * @param submerged true where there is no water line
 */
public record Draft(double level, double draft, double freeboard, double immersedFraction, boolean submerged) {
    /**
     * {@return the draft of a hull that displaces a volume (mass over water density, m3) with {@code up} pointing up}
     *
     * @param hull closed surface of the body
     * @param up unit vector of the body frame that points up
     * @param displaced mass over water density, m3, above 0
     * @throws IllegalArgumentException where the volume is not above 0
     */
    public static Draft of(Hull hull, Vec3 up, double displaced) {
        double top = hull.reach(up.x(), up.y(), up.z());
        double bottom = -hull.reach(-up.x(), -up.y(), -up.z());
        if (!(displaced > 0)) {
            throw new IllegalArgumentException("displaced volume " + displaced + " m3 is not above 0");
        }
        if (displaced >= hull.volume()) {
            return new Draft(Double.NaN, top - bottom, 0, 1, true);
        }
        double level = level(hull, up.x(), up.y(), up.z(), displaced, Double.NaN, new PlaneCut());
        return new Draft(level, level - bottom, top - level, displaced / hull.volume(), false);
    }

    /**
     * {@return the level of the water plane, m, that cuts off the displaced volume, to 1e-13 of the height; Newton's
     * method on the volume, whose derivative is the water-plane area, kept inside a bracket that is halved whenever a
     * step fails} Allocates nothing but for a ball.
     *
     * @param hull closed surface of the body
     * @param nx x component of the unit vector that points up
     * @param ny y component of that vector
     * @param nz z component of that vector
     * @param displaced volume, m3, above 0 and below the volume of the hull
     * @param guess a first guess of the level, m, or NaN
     * @param out holds the cut at the level on return
     * @throws IllegalArgumentException where the volume is not above 0 and below that of the hull
     * @throws IllegalStateException where 200 passes do not find it, which no hull of the library does
     */
    public static double level(
            Hull hull, double nx, double ny, double nz, double displaced, double guess, PlaneCut out) {
        double volume = hull.volume();
        if (!(displaced > 0 && displaced < volume)) {
            throw new IllegalArgumentException("no water line: displaced " + displaced + " m3 of " + volume + " m3");
        }
        // a ball, or what can be stretched to one, in closed form
        if (hull.isEllipsoid()) {
            double centre = hull.centroid().dot(new Vec3(nx, ny, nz));
            double radius = hull.reach(nx, ny, nz) - centre;
            double level = centre + radius * (2 * ballDraft(displaced / volume) - 1);
            hull.cut(nx, ny, nz, level, out);
            return level;
        }
        // any other hull: from the guess, or from the level at which a straight-sided body would lie
        double low = -hull.reach(-nx, -ny, -nz);
        double high = hull.reach(nx, ny, nz);
        double size = high - low;
        double c = guess > low && guess < high ? guess : low + size * displaced / volume;
        double before = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < 200; pass++) {
            hull.cut(nx, ny, nz, c, out);
            double excess = out.volume - displaced;
            if (excess > 0) {
                high = c;
            } else {
                low = c;
            }
            double step = -excess / out.area;
            if (Math.abs(step) <= 1e-13 * size || high - low <= 1e-15 * size || excess == 0) {
                return c;
            }
            // a step that does not halve the error is bisected instead: a corner or a flat face lies between
            boolean slow = Math.abs(excess) > before / 2;
            before = Math.abs(excess);
            double next = c + step;
            c = !slow && next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalStateException("draft not found: displaced " + displaced + " m3, level " + c + " m");
    }

    /**
     * {@return the draft of a ball over its diameter at the ratio s of its density to that of water, 0 to 1: s = x^2 (3
     * - 2x), solved by {@code x = 1/2 - sin(asin(1 - 2s)/3)} (docs/physics/hydrostatics.md, 2)}
     *
     * @param s density of the ball over that of the water, 0 to 1
     */
    public static double ballDraft(double s) {
        return 0.5 - Math.sin(Math.asin(1 - 2 * s) / 3);
    }
}
