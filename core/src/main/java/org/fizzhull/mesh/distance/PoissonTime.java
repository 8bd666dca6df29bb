package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * The exact time constant of diffusion out of a mesh for a diffusivity of 1: the mean over the body of u, with
 * {@code laplacian u = -1}, u = 0 on the open facets and no flux through the closed ones (docs/physics/drying.md, 4),
 * m2.
 *
 * <p>Second differences on a cubic lattice of points; where a lattice line leaves the body between two points the distance
 * to the surface itself is used (Shortley and Weller, 1938 [from memory]), so that a parabola along each axis, and with it
 * slab, long cylinder and ball, is exact wherever the surface lies. Successive over-relaxation in a fixed order. A hollow
 * closed to the flux has a wall of whole steps, first order only; a level resting face is exact.
 */
public final class PoissonTime {
    /** Points across the largest depth, and how many points there may be. */
    private static final double ACROSS = 14;

    private static final double MOST_POINTS = 200_000;
    private static final double NEAREST = 1e-4;
    private static final double CONVERGED = 1e-6;
    private static final int MOST_SWEEPS = 2000;

    private final PoissonLattice lattice;
    private final double h;
    private final int count;
    private final int[] neighbour;
    private final double[] reach;
    private final double[] weight;

    /** Whether all six neighbours of a point are points: all its weights are 1. */
    private final boolean[] regular;

    private final double[] u;

    private PoissonTime(PoissonLattice lattice, double step) {
        this.lattice = lattice;
        this.h = step;
        this.count = lattice.points();
        neighbour = lattice.next;
        reach = new double[6 * count];
        weight = new double[6 * count];
        regular = new boolean[count];
        u = new double[count];
        for (int at = 0; at < reach.length; at++) {
            // a closed face is a mirror half way
            reach[at] = neighbour[at] == PoissonLattice.OPEN ? Math.max(NEAREST, lattice.wall[at]) : 1;
        }
        Arrays.fill(regular, true);
        for (int at = 0; at < reach.length; at++) {
            regular[at / 6] &= neighbour[at] >= 0;
            weight[at] = neighbour[at] == PoissonLattice.CLOSED ? 0 : 2 / (reach[at] * (reach[at] + reach[at ^ 1]));
        }
    }

    /**
     * {@return the time constant for a diffusivity of 1 m2/s, s (that is, m2)}
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the faces it rests on are shut
     * @param shutHollows whether the faces of hollows are shut
     * @param deepest largest distance from the open facets, m, of which the lattice takes a share
     */
    public static double of(TriangleMesh mesh, boolean shutResting, boolean shutHollows, double deepest) {
        double volume = MassProperties.of(mesh).volume();
        double step = Math.max(deepest / ACROSS, Math.cbrt(volume / MOST_POINTS));
        return on(mesh, shutResting, shutHollows, deepest, step);
    }

    /** The same on a lattice of a given step, m. */
    static double on(TriangleMesh mesh, boolean shutResting, boolean shutHollows, double deepest, double step) {
        double volume = MassProperties.of(mesh).volume();
        PoissonLattice lattice = new PoissonLattice(mesh, shutResting, shutHollows, step);
        PoissonTime solve = new PoissonTime(lattice, step);
        solve.relax(deepest);
        return solve.integral() / volume;
    }

    private void relax(double deepest) {
        double omega = 2 / (1 + Math.sin(Math.PI * h / (2 * deepest + h)));
        double source = h * h;
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = 0;
            double largest = 0;
            for (int p = 0; p < count; p++) {
                double step = omega * ((regular[p] ? among(p, source) : beside(p, source)) - u[p]);
                u[p] += step;
                change = Math.max(change, Math.abs(step));
                largest = Math.max(largest, u[p]);
            }
            if (change <= CONVERGED * largest) {
                return;
            }
        }
        throw new IllegalStateException("diffusion out of the body was not solved in " + MOST_SWEEPS + " sweeps");
    }

    /** What a point among six others must be. */
    private double among(int p, double source) {
        int at = 6 * p;
        double first = u[neighbour[at]] + u[neighbour[at + 1]];
        double second = u[neighbour[at + 2]] + u[neighbour[at + 3]];
        return (source + first + second + u[neighbour[at + 4]] + u[neighbour[at + 5]]) / 6;
    }

    /** What a point beside a face must be. */
    private double beside(int p, double source) {
        double sum = source;
        double own = 0;
        for (int at = 6 * p; at < 6 * p + 6; at++) {
            own += weight[at];
            if (neighbour[at] >= 0) {
                sum += weight[at] * u[neighbour[at]];
            }
        }
        return sum / own;
    }

    /** Mean of the three sums along lattice lines, each exact for parabolas on every stretch of a line. */
    private double integral() {
        double sum = 0;
        for (int p = 0; p < count; p++) {
            for (int axis = 0; axis < 3; axis++) {
                int down = 6 * p + 2 * axis;
                double curve = weight[down] * value(down)
                        + weight[down + 1] * value(down + 1)
                        - (weight[down] + weight[down + 1]) * u[p];
                sum += side(p, down, curve) + side(p, down + 1, curve);
            }
        }
        return sum / 3 * h * h * h;
    }

    private double value(int at) {
        return neighbour[at] >= 0 ? u[neighbour[at]] : 0;
    }

    /** This point's part of the stretch to one side, in units of the step; {@code curve} is u'' times step squared. */
    private double side(int p, int at, double curve) {
        if (neighbour[at] == PoissonLattice.CLOSED) {
            double wall = lattice.wall[at];
            return wall * u[p] - curve * wall * wall * wall / 3;
        }
        double far = reach[at];
        double parabola = curve * far * far * far / 12;
        return neighbour[at] >= 0 ? u[p] / 2 - parabola / 2 : far * u[p] / 2 - parabola;
    }
}
