package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.jspecify.annotations.Nullable;

/**
 * Stable attitudes of any body:
 * <ol>
 *   <li>a {@link Descent} from each of 100 directions spread evenly over the sphere (a Fibonacci lattice); results
 *       within one degree are one attitude, whose share is the part of the starts that ended there, so to about 0.05;
 *   <li>bodies of few facets are also started from every facet and vertex; an attitude found only so has the share 0,
 *       less than a hundredth, unless no start of the lattice ended anywhere: then shares are those of these starts;
 *   <li>attitudes with one metacentric height of zero belong to a family through which the body turns freely ({@link
 *       Valley}); the family is walked from one member, and the members found by other starts are counted with it.
 * </ol>
 *
 * <p>Misses an attitude that none of the starts leads to: one of a rounded body with a share well below a hundredth.
 * Cost: some thousands of drafts. Source: docs/physics/hydrostatics.md, 4. One to a search. Called by {@link
 * Attitudes}.
 */
final class GeneralSearch {
    /** Directions of the lattice. */
    private static final int STARTS = 100;
    /** Directions closer than this, rad, are one attitude. */
    private static final double SAME = Math.PI / 180;
    /** A metacentric height that comes of facets alone stays below the chord error over this. */
    private static final double GRAIN = 20;

    private final Floating body;
    private final Descent descent;
    /** Metacentric heights up to this count as zero, m. */
    private final double neutral;
    /** What was found so far. */
    private final List<Minimum> minima = new ArrayList<>();

    GeneralSearch(Floating body) {
        this.body = body;
        this.descent = new Descent(body);
        this.neutral = neutral(body);
    }

    /**
     * A metacentric height within this of zero is zero, m: 1e-8 of the size for exact hulls; for a mesh that stands for
     * a rounded body, whose facets make as much, 1e-4 of the size (docs/physics/hydrostatics.md, 4), or a twentieth of
     * the error of the mesh: balls and long ellipsoids of 500 to 100,000 uneven facets stayed below a 25th (measured).
     */
    static double neutral(Floating body) {
        Hull hull = body.hull;
        boolean rounded = hull.relativeError() > 0
                || (hull.symmetry() == Hull.Symmetry.GENERAL && hull.landmarks().isEmpty());
        return body.size * (rounded ? Math.max(1e-4, body.hull.relativeError() / GRAIN) : 1e-8);
    }

    /** A minimum, with its valley when it has one. */
    private static final class Minimum {
        /** Direction up at which it was first found. */
        final Vec3 up;
        /** Whether both metacentric heights are zero: the body lies any way, as a ball does. */
        final boolean free;
        /** The family it belongs to; null for an isolated attitude. */
        final @Nullable Valley valley;
        /** Starts of the lattice that ended here. */
        int count;

        Minimum(Vec3 up, boolean free, @Nullable Valley valley) {
            this.up = up;
            this.free = free;
            this.valley = valley;
        }
    }

    /** The attitudes, in the order in which they were found. */
    List<Attitude> find() {
        int counted = 0;
        for (int i = 0; i < STARTS; i++) {
            Vec3 start = Vec3.spread(i, STARTS);
            if (descent.from(start.x(), start.y(), start.z(), neutral)) {
                counted++;
                count(1);
            }
        }
        // attitudes of an angular body that no start of the lattice reached
        int each = counted == 0 ? 1 : 0;
        for (Vec3 start : body.hull.landmarks()) {
            if (descent.from(start.x(), start.y(), start.z(), neutral)) {
                counted += each;
                count(each);
            }
        }
        List<Attitude> found = new ArrayList<>();
        for (Minimum minimum : minima) {
            body.at(minimum.up);
            boolean tied = minimum.valley != null;
            double larger = minimum.free ? 0 : body.largerGm();
            double smaller = tied ? 0 : body.smallerGm();
            found.add(Attitudes.attitude(body, smaller, larger, tied, (double) minimum.count / counted));
        }
        if (found.isEmpty()) {
            throw new IllegalStateException("no stable attitude found from " + STARTS + " starts");
        }
        return found;
    }

    /** Adds the attitude in which the body now is to the minima, or so many starts to one that is known. */
    private void count(int times) {
        Vec3 up = body.up();
        for (Minimum known : minima) {
            if (known.valley != null
                    ? known.valley.holds(body)
                    : known.up.minus(up).norm() <= SAME) {
                known.count += times;
                return;
            }
        }
        // a new one
        boolean ring = body.smallerGm() <= neutral;
        boolean free = body.largerGm() <= neutral;
        Valley valley = ring ? new Valley(body, free, neutral) : null;
        Minimum fresh = new Minimum(up, free, valley);
        fresh.count = times;
        minima.add(fresh);
        if (valley != null) {
            descent.settled(valley);
        } else {
            descent.settled(up);
        }
    }
}
