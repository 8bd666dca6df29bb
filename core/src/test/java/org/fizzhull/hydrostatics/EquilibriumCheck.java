package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.numeric.GaussLegendre;
import org.fizzhull.shape.revolved.RevolvedHull;

/**
 * Checks a found attitude by another road than the one it was found by: the pressure of the water, summed over the
 * wetted surface, must carry the weight and must not turn the body, and the energy a little to every side must not be
 * lower. A ball is checked by its cubic; a hull that shows no surface by stacking its water planes.
 *
 * <p>Tolerances, relative to volume and size: 1e-8 for meshes (the sums are exact, the search stops at 1e-9), 1e-6 for
 * bodies of revolution (panels between the points where the water line enters or leaves a face), 2e-3 for stacked water
 * planes.
 */
final class EquilibriumCheck {
    private static final double TURN = 1e-3;

    private EquilibriumCheck() {}

    /**
     * Throws where the attitude is not at rest or not stable.
     *
     * @param displaced mass over water density, m3
     * @throws IllegalStateException with the figures: a fault of the library, not of its input
     */
    public static void verify(Hull hull, Vec3 massCentre, double displaced, Attitude attitude) {
        Vec3 up = attitude.up();
        if (hull.symmetry() == Hull.Symmetry.BALL) {
            ball(hull, massCentre, displaced, attitude);
            return;
        }
        double size = hull.reach(up.x(), up.y(), up.z())
                + hull.reach(-up.x(), -up.y(), -up.z())
                + hull.reach(up.z(), up.x(), up.y());
        WaterThrust thrust = new WaterThrust();
        double tolerance;
        if (thrust.on(hull, up.x(), up.y(), up.z(), attitude.level())) {
            tolerance = hull instanceof RevolvedHull ? 1e-6 : 1e-8;
        } else {
            stack(hull, up, attitude.level(), thrust);
            tolerance = 2e-3;
        }
        Vec3 force = new Vec3(thrust.fx, thrust.fy, thrust.fz).minus(up.times(displaced));
        require(force.norm() <= tolerance * hull.volume(), "force", force.norm() / displaced, attitude);
        Vec3 moment = new Vec3(thrust.mx, thrust.my, thrust.mz)
                .minus(massCentre.cross(up).times(displaced));
        require(moment.norm() <= tolerance * hull.volume() * size, "moment", moment.norm() / displaced, attitude);
        lowest(new Floating(hull, massCentre, displaced), attitude);
    }

    /** The energy on a small circle around the attitude. */
    private static void lowest(Floating body, Attitude attitude) {
        body.at(attitude.up());
        double here = body.energy;
        // a body all but submerged leaves its rest as soon as its small dry part goes under
        double room = Math.min(attitude.draft(), attitude.freeboard()) / body.size;
        double turn = Math.min(TURN, Math.max(1e-6, room / 50));
        // the centre of a small displaced volume is a quotient of small numbers
        double rounding = 1e-13 * body.size * body.hull.volume() / body.displaced;
        double allowed = rounding + GeneralSearch.neutral(body) * turn * turn;
        Vec3 u = new Vec3(body.cut.ux, body.cut.uy, body.cut.uz);
        Vec3 w = new Vec3(body.cut.wx, body.cut.wy, body.cut.wz);
        for (int k = 0; k < 4; k++) {
            Vec3 side = (k < 2 ? u : w).times(k % 2 == 0 ? Math.sin(turn) : -Math.sin(turn));
            body.at(attitude.up().times(Math.cos(turn)).plus(side));
            require(body.energy >= here - allowed, "energy next door", body.energy - here, attitude);
        }
    }

    private static void ball(Hull hull, Vec3 massCentre, double displaced, Attitude attitude) {
        double r = hull.reach(0, 0, 1) - hull.centroid().z();
        double h = attitude.draft();
        double volume = Math.PI * h * h * (3 * r - h) / 3;
        require(Math.abs(volume - displaced) <= 1e-12 * r * r * r, "force", volume / displaced - 1, attitude);
        Vec3 offset = hull.centroid().minus(massCentre);
        double off = offset.cross(attitude.up()).norm();
        require(off <= 1e-12 * r, "moment", off, attitude);
        require(offset.dot(attitude.up()) >= -1e-12 * r, "energy next door", -offset.norm(), attitude);
    }

    /** Volume and moment from the areas and centroids of the water planes below the level. */
    private static void stack(Hull hull, Vec3 up, double level, WaterThrust out) {
        double bottom = -hull.reach(-up.x(), -up.y(), -up.z());
        double half = (level - bottom) / 2;
        PlaneCut cut = new PlaneCut();
        double volume = 0;
        Vec3 moment = Vec3.ZERO;
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            hull.cut(up.x(), up.y(), up.z(), bottom + half * (1 + GaussLegendre.node(i)), cut);
            double slice = half * GaussLegendre.weight(i) * cut.area;
            volume += slice;
            moment = moment.plus(new Vec3(cut.ax, cut.ay, cut.az).times(slice));
        }
        Vec3 turning = moment.cross(up);
        out.fx = volume * up.x();
        out.fy = volume * up.y();
        out.fz = volume * up.z();
        out.mx = turning.x();
        out.my = turning.y();
        out.mz = turning.z();
    }

    private static void require(boolean holds, String what, double by, Attitude attitude) {
        if (!holds) {
            throw new IllegalStateException("not at rest: " + what + " is off by " + by + " (SI, over the displaced"
                    + " volume) in " + attitude);
        }
    }
}
