package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;

/**
 * Stable attitudes of a body of revolution with its centre of mass on the axis: the energy U depends on the angle
 * between the axis and the vertical alone.
 * <ol>
 *   <li>A scan of 36 cells from upright to upside down finds every change of sign of dU/d(angle), the righting moment
 *       over the weight; a cell in which U may turn twice without one is halved up to three times.
 *   <li>Each change of sign is refined by Newton's method inside its bracket, to 1e-13 rad: a rise through 0 is a
 *       minimum, a fall a maximum.
 *   <li>Upright and upside down are equilibria by symmetry, and stable where both metacentric heights, equal there, are
 *       above 0; a tilted minimum is stable in its plane and turns freely about the axis.
 *   <li>The share of a minimum is the part of the sphere between the maxima on either side of it: {@code (cos from -
 *       cos to)/2}, exact.
 * </ol>
 *
 * <p>Near both ends the moment falls to 0 with the sine of the angle; the scan works on moment over sine, whose ends
 * are plus and minus the metacentric height there. One to a search. Called by {@link Attitudes}. Source:
 * docs/physics/hydrostatics.md, 4.
 */
final class RevolvedSearch {
    /**
     * On 1500 random bodies 36 cells found exactly what 180 found; a cell in which U may turn twice is halved
     * further.
     */
    private static final int CELLS = 36;

    /**
     * A body whose energy differs by less than this share of its size between all its attitudes floats in any of them,
     * as a ball whose outline is a chain of chords does: 1.3 um of 65 mm, less than one bubble shifts. A ball squashed
     * by a thousandth differs by more.
     */
    private static final double LEVEL_ENERGY = 2e-5;

    private final Floating body;
    /** Angles of the axis to the vertical at minima of U, rad, rising. */
    private final List<Double> minima = new ArrayList<>();
    /** Angles at maxima, rad. */
    private final List<Double> maxima = new ArrayList<>();
    /** dU/d(angle) at the last angle, m. */
    private double slope;
    /** Second derivative of U by the angle there, m: in equilibrium the metacentric height in the plane of the lean. */
    private double curvature;

    RevolvedSearch(Floating body) {
        this.body = body;
    }

    /** The attitudes, by rising angle. */
    List<Attitude> find() {
        double[] angle = new double[CELLS + 1];
        double[] moment = new double[CELLS + 1];
        double[] bend = new double[CELLS + 1];
        double largest = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= CELLS; i++) {
            angle[i] = i == CELLS ? Math.PI : Math.PI * i / CELLS;
            moment[i] = moment(angle[i]);
            bend[i] = curvature;
            largest = Math.max(largest, Math.abs(moment[i]));
            lowest = Math.min(lowest, body.energy);
            highest = Math.max(highest, body.energy);
        }
        // no moment anywhere: a ball in all but name
        if (largest <= 1e-11 * body.size) {
            body.at(0, 0, 1);
            return List.of(Attitudes.attitude(body, 0, 0, true, 1));
        }
        // the minima and maxima, upright first and upside down last
        note(0, moment[0] != 0 ? moment[0] : moment[1]);
        for (int i = 0; i < CELLS; i++) {
            cell(angle[i], moment[i], bend[i], angle[i + 1], moment[i + 1], bend[i + 1], 3);
        }
        note(Math.PI, -(moment[CELLS] != 0 ? moment[CELLS] : moment[CELLS - 1]));
        if (highest - lowest <= LEVEL_ENERGY * body.size) {
            moment(minima.get(0));
            return List.of(Attitudes.attitude(body, 0, 0, true, 1));
        }
        List<Attitude> found = new ArrayList<>();
        for (double at : minima) {
            add(at, found);
        }
        return found;
    }

    /**
     * Turns the body to an angle, rad, and returns the righting moment over the sine of the angle, m, which at both
     * ends tends to plus or minus the curvature.
     */
    private double moment(double angle) {
        double sine = angle == Math.PI ? 0 : Math.sin(angle);
        body.at(sine, 0, Math.cos(angle));
        curvature = body.kww;
        // the frame's w points to smaller angles
        slope = -body.gw;
        return sine == 0 ? (body.nz > 0 ? curvature : -curvature) : slope / sine;
    }

    /** Notes an equilibrium as a minimum where the moment rises through it, else as a maximum. */
    private void note(double angle, double rising) {
        (rising > 0 ? minima : maxima).add(angle);
    }

    /** Looks for equilibria between the angles a and b, with moments m and curvatures k at the ends. */
    private void cell(double a, double ma, double ka, double b, double mb, double kb, int deeper) {
        if (ma * mb < 0) {
            note(root(a, ma, b, mb), mb);
            return;
        }
        // the moment has one sign at both ends but turns towards 0 at both: it may touch or cross in between
        boolean turns = ma > 0 ? ka < 0 && kb > 0 : ka > 0 && kb < 0;
        if (turns && deeper > 0) {
            double middle = (a + b) / 2;
            double m = moment(middle);
            double k = curvature;
            cell(a, ma, ka, middle, m, k, deeper - 1);
            cell(middle, m, k, b, mb, kb, deeper - 1);
        }
    }

    /** Angle, rad, between a and b at which the moment, of opposite signs there, is 0. */
    private double root(double a, double ma, double b, double mb) {
        double low = a;
        double high = b;
        double at = (a * mb - b * ma) / (mb - ma);
        for (int pass = 0; pass < 100; pass++) {
            if (!(at > low && at < high)) {
                at = (low + high) / 2;
            }
            double m = moment(at);
            if (m * mb > 0) {
                high = at;
            } else {
                low = at;
            }
            double step = slope / curvature;
            if (Math.abs(step) <= 1e-13 || high - low <= 1e-14) {
                return at;
            }
            at -= step;
        }
        return (low + high) / 2;
    }

    /** Adds the attitude at a minimum, with its share of the sphere. */
    private void add(double at, List<Attitude> found) {
        double from = 0;
        double to = Math.PI;
        for (double edge : maxima) {
            if (edge < at) {
                from = Math.max(from, edge);
            } else {
                to = Math.min(to, edge);
            }
        }
        double share = (Math.cos(from) - Math.cos(to)) / 2;
        boolean upright = at == 0 || at == Math.PI;
        moment(at);
        double gm = curvature;
        if (gm < -1e-9 * body.size) {
            throw new IllegalStateException("a minimum at " + at + " rad has the metacentric height " + gm + " m");
        }
        found.add(Attitudes.attitude(body, upright ? gm : 0, gm, !upright, share));
    }
}
