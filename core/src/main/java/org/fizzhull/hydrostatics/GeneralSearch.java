package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.PolyhedronHull;

/**
 * Stable attitudes of any body: a descent from each of 100 directions spread evenly over the sphere (a Fibonacci
 * lattice), results within one degree counted as one, shares by count, so to about 0.05. Bodies of few facets are also
 * started from every facet and vertex; an attitude found only so has the share 0, less than a hundredth. Attitudes
 * with one metacentric height of zero belong to a family through which the body turns freely; the family is walked
 * from one member, and the members found by other starts are counted with it.
 */
final class GeneralSearch {
    private static final int STARTS = 100;
    private static final double SAME = Math.PI / 180;
    private static final double STRIDE = 0.08;
    /** Facets from which on a mesh is taken for a rounded body. */
    private static final int ROUNDED = 64;

    private final Floating body;
    private final Descent descent;
    private final double neutral;
    private final List<Minimum> minima = new ArrayList<>();

    GeneralSearch(Floating body) {
        this.body = body;
        this.descent = new Descent(body);
        this.neutral = neutral(body);
    }

    /**
     * A metacentric height within this of zero is zero, m: 1e-4 of the size for a mesh that stands for a rounded body,
     * whose facets make as much (hydrostatics sheet 4.4), 1e-8 for exact hulls.
     */
    static double neutral(Floating body) {
        boolean rounded =
                body.hull.relativeError() > 0 || (body.hull instanceof PolyhedronHull mesh && mesh.facets() > ROUNDED);
        return body.size * (rounded ? Math.max(1e-4, body.hull.relativeError()) : 1e-8);
    }

    /** A minimum, with the directions of its family when it has one. */
    private static final class Minimum {
        final Vec3 up;
        final double energy;
        final boolean ring;
        final boolean free;
        final List<Vec3> family = new ArrayList<>();
        int count;

        Minimum(Vec3 up, double energy, boolean ring, boolean free) {
            this.up = up;
            this.energy = energy;
            this.ring = ring;
            this.free = free;
            family.add(up);
        }
    }

    List<Attitude> find() {
        double golden = Math.PI * (3 - Math.sqrt(5));
        int counted = 0;
        for (int i = 0; i < STARTS; i++) {
            double z = 1 - (2 * i + 1) / (double) STARTS;
            double r = Math.sqrt(1 - z * z);
            if (descent.from(r * Math.cos(i * golden), r * Math.sin(i * golden), z, neutral)) {
                counted++;
                count(1);
            }
        }
        if (body.hull instanceof PolyhedronHull mesh && mesh.facets() <= ROUNDED) {
            for (Vec3 start : mesh.landmarks()) {
                if (descent.from(start.x(), start.y(), start.z(), neutral)) {
                    count(0);
                }
            }
        }
        List<Attitude> found = new ArrayList<>();
        for (Minimum minimum : minima) {
            body.at(minimum.up);
            boolean tied = minimum.ring || minimum.free;
            double larger = minimum.free ? 0 : body.largerGm();
            double smaller = tied ? 0 : body.smallerGm();
            found.add(Attitudes.attitude(body, smaller, larger, tied, (double) minimum.count / counted));
        }
        if (found.isEmpty()) {
            throw new IllegalStateException("no stable attitude found from " + STARTS + " starts");
        }
        return found;
    }

    /** Notes where the body now rests, and counts it as often as told. */
    private void count(int times) {
        Vec3 up = body.up();
        double energy = body.energy;
        boolean ring = body.smallerGm() <= neutral;
        boolean free = body.largerGm() <= neutral;
        for (Minimum known : minima) {
            if (belongs(known, up, energy, ring, free)) {
                known.count += times;
                return;
            }
        }
        Minimum fresh = new Minimum(up, energy, ring && !free, free);
        fresh.count = times;
        minima.add(fresh);
        if (!ring) {
            descent.settled(up);
        }
        if (fresh.ring && walk(fresh, 1) < 2) {
            walk(fresh, -1);
        }
    }

    private boolean belongs(Minimum known, Vec3 up, double energy, boolean ring, boolean free) {
        boolean level = Math.abs(known.energy - energy) <= Math.max(neutral / 10, 1e-9 * body.size);
        if (known.free) {
            return free && level;
        }
        double reach = known.ring && ring && level ? 2.5 * STRIDE : SAME;
        for (Vec3 member : known.family) {
            if (member.minus(up).norm() <= reach) {
                return true;
            }
        }
        return false;
    }

    /** Walks along the soft direction; 2 where the family closed on itself, 1 where it ended. */
    private int walk(Minimum family, int sense) {
        Vec3 here = family.up;
        body.at(here);
        Vec3 heading = soft().times(sense);
        double stride = STRIDE;
        for (int step = 0; step < 200; step++) {
            Vec3 ahead = here.times(Math.cos(stride)).plus(heading.times(Math.sin(stride)));
            boolean rests = descent.from(ahead.x(), ahead.y(), ahead.z(), neutral)
                    && Math.abs(body.energy - family.energy) <= Math.max(neutral / 10, 1e-9 * body.size);
            Vec3 there = body.up();
            double moved = there.minus(here).dot(heading);
            if (!rests || moved > 6 * STRIDE) {
                return 1;
            }
            if (moved < STRIDE / 4) {
                // facets hold it: stride over the ridge
                stride *= 2;
                if (stride > 5 * STRIDE) {
                    return 1;
                }
                continue;
            }
            stride = STRIDE;
            Vec3 way = soft();
            heading = way.dot(heading) < 0 ? way.times(-1) : way;
            here = there;
            if (step > 3 && here.minus(family.up).norm() < STRIDE) {
                return 2;
            }
            family.family.add(here);
        }
        return 1;
    }

    private Vec3 soft() {
        double a = body.softAngle();
        Vec3 u = new Vec3(body.cut.ux, body.cut.uy, body.cut.uz);
        Vec3 w = new Vec3(body.cut.wx, body.cut.wy, body.cut.wz);
        return u.times(Math.cos(a)).plus(w.times(Math.sin(a)));
    }
}
