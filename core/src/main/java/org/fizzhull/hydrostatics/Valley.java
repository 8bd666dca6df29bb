package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * A family of attitudes through which a body turns freely, as an egg turns about its axis: the floor of a valley of its
 * energy. It is walked from one member along the soft direction, the eigenvector of the metacentric height that is
 * zero, in strides of 0.08 rad, and back to the floor across it by Newton's method; until it closes on itself or ends.
 * Facets give a mesh many lowest spots along the floor; they lie no deeper than what counts as level, so the walk does
 * not look for them. Where both directions are soft, as for a ball, every direction of that energy belongs to it.
 *
 * <p>Used by {@link GeneralSearch} to count all members as one attitude. Mutable while it is made.
 */
final class Valley {
    /** Stride along the floor, and the distance at which a direction belongs to a member, rad. */
    private static final double STRIDE = 0.08;

    /** Direction up of the first member. */
    private final Vec3 start;
    /** Its energy, m. */
    private final double energy;
    /** Whether both directions are soft. */
    private final boolean anyWay;
    /** Metacentric heights up to this count as zero, m. */
    private final double neutral;
    /** Energies closer than this, m, are level. */
    private final double flat;
    /** Directions up of the members, one a stride. */
    private final List<Vec3> floor = new ArrayList<>();

    /**
     * The valley around the equilibrium in which the body now is.
     *
     * @param anyWay whether it is soft both ways
     * @param neutral size of a metacentric height that counts as zero, m
     */
    Valley(Floating body, boolean anyWay, double neutral) {
        this.start = body.up();
        this.energy = body.energy;
        this.anyWay = anyWay;
        this.neutral = neutral;
        this.flat = Math.max(neutral / 10, 1e-9 * body.size);
        floor.add(start);
        if (!anyWay && walk(body, 1) < 2) {
            walk(body, -1);
        }
        body.at(start);
    }

    /** Whether the attitude in which the body now is belongs to the family. */
    boolean holds(Floating body) {
        if (Math.abs(body.energy - energy) > flat || body.smallerGm() > neutral) {
            return false;
        }
        if (anyWay) {
            return body.largerGm() <= neutral;
        }
        for (Vec3 member : floor) {
            if (member.minus(body.up()).norm() <= STRIDE) {
                return true;
            }
        }
        return false;
    }

    /** Walks along the soft direction; 2 where the valley closed on itself, 1 where it ended. */
    private int walk(Floating body, int sense) {
        Vec3 here = start;
        body.at(here);
        Vec3 heading = soft(body).times(sense);
        for (int step = 0; step < 200; step++) {
            body.at(here.times(Math.cos(STRIDE)).plus(heading.times(Math.sin(STRIDE))));
            descend(body);
            Vec3 there = body.up();
            // the step failed where the energy or the softness is lost, or the walk did not come on
            boolean level = Math.abs(body.energy - energy) <= flat && Math.abs(body.smallerGm()) <= neutral;
            double moved = there.minus(here).dot(heading);
            if (!level || !(moved > STRIDE / 4) || moved > 6 * STRIDE) {
                return 1;
            }
            // onward in the sense of the walk so far; an eigenvector has no sense of its own
            Vec3 way = soft(body);
            heading = way.dot(heading) < 0 ? way.times(-1) : way;
            here = there;
            if (step > 3 && here.minus(start).norm() < STRIDE) {
                return 2;
            }
            floor.add(here);
        }
        return 1;
    }

    /** Newton's method across the valley alone. */
    private void descend(Floating body) {
        double enough = 1e-3 * neutral / body.size;
        for (int pass = 0; pass < 8 && body.largerGm() > 0; pass++) {
            double soft = body.softAngle();
            double a = -Math.sin(soft);
            double b = Math.cos(soft);
            double turn = -(body.gu * a + body.gw * b) / body.largerGm();
            if (!(Math.abs(turn) > enough)) {
                return;
            }
            turn = Math.max(-STRIDE, Math.min(STRIDE, turn));
            body.at(body.up()
                    .times(Math.cos(turn))
                    .plus(body.tangent(a, b).times(Math.sin(turn)))
                    .unit());
        }
    }

    /** Unit vector of the body frame along the eigenvector of the smaller eigenvalue, in the water plane. */
    private static Vec3 soft(Floating body) {
        double angle = body.softAngle();
        return body.tangent(Math.cos(angle), Math.sin(angle));
    }
}
