package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;

/**
 * All stable ways a body floats in still water: the minima of its potential energy over the sphere of directions, each
 * with the share of that sphere from which the body settles into it.
 *
 * <p>Potential energy over weight is the height of the centre of mass above the centre of buoyancy, {@code U(n) = (G -
 * B) . n}, n the unit vector of the body frame that points up, the displaced volume held; a minimum over all n is a
 * stable attitude. Three ways to find them, by the symmetry of the hull:
 * <ol>
 *   <li>a ball in closed form: its centre of mass hangs straight below its centre;
 *   <li>a body of revolution with its centre of mass on the axis by a scan of the angle to the axis ({@code
 *       RevolvedSearch});
 *   <li>anything else by descents from 100 evenly spread directions ({@code GeneralSearch}).
 * </ol>
 * <pre>{@code
 * Shape puck = Puck.ofDiameterAndHeight(millimetres(70), millimetres(28));
 * List<Attitude> ways = Attitudes.find(puck.hull().orElseThrow(), puck.centroid(), 0.95);
 * double lift = ways.get(0).freeboard();   // m, of the likeliest
 * }</pre>
 *
 * <p>Range: density ratios from above 0 to below 1; still water, no surface tension, a hull that lets no water in.
 * Error: that of the cuts of the hull; shares of general bodies to about 0.05. Cost: a ball one cut, a body of
 * revolution some tens of drafts, a mesh some thousands. Source: docs/physics/hydrostatics.md, 4. Stateless; the same
 * question gives the same answer to the last bit. Next: {@link Stability} for one attitude that is given, {@link Boat}
 * for a dry hollow.
 */
public final class Attitudes {
    private Attitudes() {}

    /**
     * {@return the stable attitudes, likeliest first; none where the body is at least as heavy as the water it can
     * displace}
     *
     * @param hull closed surface of the body
     * @param massCentre centre of mass in the body frame, m
     * @param mass mass of the body, kg, above 0
     * @param waterDensity density of the water, kg/m3, above 0
     * @throws IllegalArgumentException where mass or density is not above 0
     */
    public static List<Attitude> find(Hull hull, Vec3 massCentre, double mass, double waterDensity) {
        if (!(mass > 0 && waterDensity > 0)) {
            throw new IllegalArgumentException(
                    "mass " + mass + " kg and water " + waterDensity + " kg/m3 must be above 0");
        }
        return of(hull, massCentre, mass / waterDensity);
    }

    /**
     * {@return the stable attitudes, likeliest first}
     *
     * @param hull closed surface of the body
     * @param massCentre centre of mass in the body frame, m
     * @param ratio density of the body (mass over hull volume) to that of the water, above 0; no attitudes from 1 on
     * @throws IllegalArgumentException where the ratio is not above 0
     */
    public static List<Attitude> find(Hull hull, Vec3 massCentre, double ratio) {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("density ratio " + ratio + " is not above 0");
        }
        return of(hull, massCentre, ratio * hull.volume());
    }

    /** The attitudes at a displaced volume, m3, by the search that suits the symmetry of the hull. */
    private static List<Attitude> of(Hull hull, Vec3 massCentre, double displaced) {
        if (displaced >= hull.volume()) {
            return List.of();
        }
        Floating body = new Floating(hull, massCentre, displaced);
        List<Attitude> found;
        if (hull.symmetry() == Hull.Symmetry.BALL) {
            found = List.of(ball(body));
        } else if (hull.symmetry() == Hull.Symmetry.REVOLVED
                && Math.hypot(massCentre.x(), massCentre.y()) <= 1e-9 * body.size) {
            found = new RevolvedSearch(body).find();
        } else {
            found = new GeneralSearch(body).find();
        }
        List<Attitude> sorted = new ArrayList<>(found.size());
        for (Attitude attitude : found) {
            // by insertion: with its tolerances the order is not transitive, which a library sort may refuse
            int at = sorted.size();
            while (at > 0 && likelierFirst(sorted.get(at - 1), attitude) > 0) {
                at--;
            }
            sorted.add(at, attitude);
        }
        return List.copyOf(sorted);
    }

    /**
     * A ball is in stable equilibrium with its centre of mass straight below its centre; where the two agree, in any
     * attitude.
     */
    private static Attitude ball(Floating body) {
        Vec3 offset = body.hull.centroid().minus(body.massCentre);
        double gm = offset.norm();
        boolean free = gm <= 1e-12 * body.size;
        body.at(free ? Vec3.UP : offset.unit());
        return attitude(body, free ? 0 : gm, free ? 0 : gm, free, 1);
    }

    /** The attitude in which the body now is, with its metacentric heights, m, and its share. */
    static Attitude attitude(Floating body, double smaller, double larger, boolean free, double share) {
        double top = body.hull.reach(body.nx, body.ny, body.nz);
        double bottom = -body.hull.reach(-body.nx, -body.ny, -body.nz);
        return new Attitude(
                new Vec3(body.nx + 0.0, body.ny + 0.0, body.nz + 0.0),
                body.level,
                body.level - bottom,
                top - body.level,
                body.displaced / body.hull.volume(),
                smaller,
                larger,
                free,
                share,
                body.energy);
    }

    /** By share, then by energy, then by direction, so that the order never depends on the search. */
    private static int likelierFirst(Attitude a, Attitude b) {
        int order = Math.abs(a.share() - b.share()) > 1e-9 ? Double.compare(b.share(), a.share()) : 0;
        double height = a.draft() + a.freeboard();
        if (order == 0 && Math.abs(a.energy() - b.energy()) > 1e-9 * height) {
            order = Double.compare(a.energy(), b.energy());
        }
        order = order != 0 ? order : Double.compare(b.up().z(), a.up().z());
        order = order != 0 ? order : Double.compare(b.up().x(), a.up().x());
        return order != 0 ? order : Double.compare(b.up().y(), a.up().y());
    }
}
