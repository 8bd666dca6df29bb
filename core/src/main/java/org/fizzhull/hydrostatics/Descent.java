package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * Downhill on the sphere of directions to the nearest stable equilibrium. Each pass
 * <ol>
 *   <li>takes gradient and second derivative K from {@link Floating} and turns them into the axes of K;
 *   <li>steps by Newton's method with the absolute values of the two eigenvalues, so that the step goes downhill also
 *       where the energy curves down, at most 0.3 rad;
 *   <li>halves the step until the energy falls by enough (Armijo's rule), or, where the energy is level to rounding,
 *       until the gradient does.
 * </ol>
 *
 * <p>An equilibrium with a negative metacentric height is a saddle: the search turns 0.02 rad along the soft
 * direction, either way, and goes on from there where that is lower. So it does from one whose metacentric height
 * counts as zero, where a small turn leads further down (a cube of half density on its edge). Ends early near an
 * attitude that an earlier run has found.
 *
 * <p>Used by {@link GeneralSearch}, which starts it from many directions, and by {@link Boat}, which starts it upright.
 * Mutable, one to a search. Source: docs/physics/hydrostatics.md, 4.
 */
final class Descent {
    /** Longest step, rad. */
    private static final double LONGEST = 0.3;
    /** Turn away from a saddle, rad. */
    private static final double NUDGE = 0.02;
    /** Cosine of one degree: directions this close to a known attitude belong to it. */
    private static final double COSINE = Math.cos(Math.PI / 180);

    /** The body, which the search turns. */
    private final Floating body;
    /** Directions up of the isolated attitudes found before. */
    private final List<Vec3> settled = new ArrayList<>();
    /** Families of attitudes found before, through which the body turns freely. */
    private final List<Valley> valleys = new ArrayList<>();

    Descent(Floating body) {
        this.body = body;
    }

    /** Registers a stable attitude, so that later runs need not converge to it to the last digit. */
    void settled(Vec3 up) {
        settled.add(up);
    }

    /** Registers a family of attitudes, so that later runs need not look for the lowest spot between facets. */
    void settled(Valley valley) {
        valleys.add(valley);
    }

    /**
     * Whether the body is within a degree of a known attitude, where the energy curves up both ways; or belongs to a
     * known family.
     */
    private boolean arrived(double neutral) {
        for (Valley valley : valleys) {
            if (valley.holds(body)) {
                return true;
            }
        }
        if (body.smallerGm() > neutral) {
            for (Vec3 up : settled) {
                if (up.x() * body.nx + up.y() * body.ny + up.z() * body.nz > COSINE) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Runs from a direction and leaves the body in equilibrium; false where none was reached.
     *
     * @param neutral size of a metacentric height that counts as zero, m
     */
    boolean from(double x, double y, double z, double neutral) {
        double size = body.size;
        body.at(x, y, z);
        int saddles = 0;
        for (int pass = 0; pass < 300; pass++) {
            double slope = body.slope();
            if (arrived(neutral)) {
                return true;
            }
            boolean level = slope <= 1e-13 * size;
            if (!level && newton(slope)) {
                continue;
            }
            // no step lowers the energy: an equilibrium if the gradient is small, else the run has failed
            if (!level && slope > 1e-9 * size) {
                return false;
            }
            if (body.smallerGm() > neutral || !leaves(neutral)) {
                return true;
            }
            if (++saddles > 5) {
                return false;
            }
        }
        return body.slope() <= 1e-8 * size && body.smallerGm() >= -neutral;
    }

    /** A bounded Newton step towards the minimum; false where it does not lower the energy. */
    private boolean newton(double slope) {
        // gradient in the axes of the second derivative: a, b the soft one; each over the size of its eigenvalue
        double soft = body.softAngle();
        double a = Math.cos(soft);
        double b = Math.sin(soft);
        double floor = 1e-6 * body.size;
        double along = -(body.gu * a + body.gw * b) / Math.max(floor, Math.abs(body.smallerGm()));
        double across = -(body.gw * a - body.gu * b) / Math.max(floor, Math.abs(body.largerGm()));
        // bounded, and turned back into the frame u, w of the water plane
        double length = Math.hypot(along, across);
        double scale = length > LONGEST ? LONGEST / length : 1;
        return step((along * a - across * b) * scale, (along * b + across * a) * scale, slope);
    }

    /** Turns a little along the soft direction, either way, and stays there if that is lower. */
    private boolean leaves(double neutral) {
        Vec3 up = body.up();
        double energy = body.energy;
        double drop = Math.max(1e-12 * body.size, neutral * NUDGE * NUDGE / 2);
        double soft = body.softAngle();
        // a way out falls by more than a metacentric height that counts as zero gives over the nudge
        for (int sense = 1; sense >= -1; sense -= 2) {
            Vec3 alongU = body.u().times(sense * NUDGE * Math.cos(soft));
            Vec3 alongW = body.w().times(sense * NUDGE * Math.sin(soft));
            place(body.up().plus(alongU).plus(alongW));
            if (body.energy < energy - drop) {
                return true;
            }
            place(up);
        }
        return false;
    }

    /**
     * One step (du, dw), rad, with halving; false, and the body where it was, where even a tiny step does not lower the
     * energy.
     */
    private boolean step(double du, double dw, double slope) {
        Vec3 up = body.up();
        Vec3 whole = body.tangent(du, dw);
        double energy = body.energy;
        double fall = body.gu * du + body.gw * dw;
        // a fall below this is rounding: then the gradient must fall instead of the energy
        boolean near = Math.abs(fall) < 1e-12 * body.size;
        // along the great circle in the direction of the step
        for (double share = 1; share > (near ? 0.1 : 1e-6); share /= 2) {
            Vec3 part = whole.times(share);
            double length = part.norm();
            double sine = length > 0 ? Math.sin(length) / length : 1;
            place(up.times(Math.cos(length)).plus(part.times(sine)));
            if (near ? body.slope() < slope : body.energy <= energy + 1e-4 * share * fall) {
                return true;
            }
        }
        place(up);
        return false;
    }

    /** Turns the body so that a vector of any length points up. */
    private void place(Vec3 up) {
        double length = up.norm();
        body.at(up.x() / length, up.y() / length, up.z() / length);
    }
}
