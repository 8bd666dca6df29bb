package org.fizzhull.shape.revolved;

import java.util.Arrays;

/**
 * Mean over a body of revolution of u with {@code laplacian u = -1}, u = 0 on its open faces and no flux through the
 * face it rests on, m2: the time constant of diffusion out of it for a diffusivity of 1 m2/s (docs/physics/drying.md,
 * 4).
 * <pre>  u_rr + u_r/r + u_zz = -1,   time = (1/V) INT u dV</pre>
 *
 * <p>Second differences on a square lattice in radius and height, at half steps off the axis; where a lattice line
 * meets a face before the next point they use the distance to the face (G. H. Shortley and R. Weller, J. Appl. Phys. 9
 * (1938) 334 [from memory]): exact for parabolas, so for ball, rod and slab. Solved by successive over-relaxation.
 *
 * <p>Range: any closed outline. Error: about 0.2 %, somewhat more where a rounded edge meets the tray. Cost: 5 to 100
 * ms, by the number of lattice points, at most 16,000 inside the body. One to a solve; {@link #time} is the entry. Used
 * by {@link RevolvedHull#diffusionTime}.
 */
final class MeridianPoisson {
    /** Points across the largest depth: c of bowl, dome, cone and ring are then within 0.04 % of those with 64. */
    private static final double ACROSS = 16;

    /** Lattice points inside the body at most: bounds the time of a solve. */
    private static final double MOST_POINTS = 16_000;

    /** Most lattice points of the box around the body: a thin shell fills little of it. */
    private static final double MOST_IN_BOX = 1e6;

    /**
     * A face nearer to a point than this share of a step counts as that near: its weight would grow beyond all bounds.
     */
    private static final double NEAREST = 1e-4;
    /** The solve ends where no point changed by more than this share of the largest u. */
    private static final double CONVERGED = 1e-7;
    /** Sweeps after which a solve is given up. */
    private static final int MOST_SWEEPS = 5000;
    /** The four ways from a point: away from the axis, towards it, up, down. */
    private static final int OUT = 0;

    private static final int IN = 1;
    private static final int UP = 2;
    private static final int DOWN = 3;

    /** Faces of the body. */
    private final Meridian body;
    /** Step of the lattice, m. */
    private final double h;
    /** Points of a row, from the axis outward. */
    private final int nr;
    /** Rows, from the bottom up. */
    private final int nz;
    /** For each point, p = row * nr + place, whether it lies in the body. */
    private final boolean[] inside;
    /**
     * Distance to the face each way, 4 for each point, in units of the step; 1 where a point or a mirror comes first.
     */
    private final double[] reach;

    /** Weights of the neighbours that are points, 4 for each point; 0 for faces and mirrors. */
    private final double[] weight;

    /** Sum of all weights of a point, faces included. */
    private final double[] own;

    /** Whether a point stands on the shut face. */
    private final boolean[] shut;

    /** The points inside, in order. */
    private final int[] points;

    /** The unknown, m2, one row of zeros before and after. */
    private final double[] u;

    /** Lays the lattice and weighs its points. */
    private MeridianPoisson(Meridian body, double volume, boolean tray, double deepest) {
        this.body = body;
        // where the shut face ends under a rounded edge the error is of first order in the step: with 16 points across
        // a shape factor of 1.24 came out 0.9 % high, so twice as many are taken
        double across = tray && body.rests() ? 2 * ACROSS : ACROSS;
        // the step: fine enough for the largest depth, but no more points than can be solved quickly
        double box = Math.sqrt(body.widest() * body.height() / MOST_IN_BOX);
        double step =
                Math.max(box, Math.max(deepest / across, Math.sqrt(volume / (Math.PI * body.widest()) / MOST_POINTS)));
        nz = (int) Math.ceil(body.height() / step);
        h = body.height() / nz;
        nr = (int) Math.ceil(body.widest() / h);
        inside = new boolean[nr * nz];
        reach = new double[4 * nr * nz];
        weight = new double[4 * nr * nz];
        own = new double[nr * nz];
        shut = new boolean[nr * nz];
        // a row of nothing before and after, so that every point has four neighbours
        u = new double[nr * (nz + 2)];
        Arrays.fill(reach, 1);
        for (int j = 0; j < nz; j++) {
            fill(j * nr);
        }
        // the points inside, in the order in which they are swept
        int count = 0;
        int[] within = new int[inside.length];
        for (int p = 0; p < inside.length; p++) {
            if (inside[p]) {
                weigh(p, tray);
                within[count++] = p;
            }
        }
        points = Arrays.copyOf(within, count);
    }

    /**
     * {@return the time constant for a diffusivity of 1 m2/s, s}
     *
     * @param body faces of the body
     * @param volume exact volume of the body, m3, over which the mean is taken
     * @param tray whether the lowest flat face is closed, as for a piece on a tray
     */
    public static double time(Meridian body, double volume, boolean tray) {
        double deepest = body.deepest(tray);
        MeridianPoisson solve = new MeridianPoisson(body, volume, tray, deepest);
        solve.relax(deepest);
        return solve.integral() / volume;
    }

    /** Distance of a point from the axis, m. */
    private double r(int p) {
        return (p % nr + 0.5) * h;
    }

    /** Height of a point, m. */
    private double z(int p) {
        int j = p / nr;
        return (j + 0.5) * h;
    }

    /** Marks the points of a row inside: those with an odd number of edges further out. */
    private void fill(int row) {
        for (int e = 0; e < body.count(); e++) {
            double below = body.z0(e) - z(row);
            double above = body.z1(e) - z(row);
            if ((below > 0) != (above > 0)) {
                double edge = body.r0(e) + below / (below - above) * (body.r1(e) - body.r0(e));
                for (int p = row; p < row + nr && r(p) < edge; p++) {
                    inside[p] = !inside[p];
                }
            }
        }
    }

    /** Whether the neighbour one way is a point inside. */
    private boolean point(int p, int way) {
        int i = p % nr;
        int j = p / nr;
        return switch (way) {
            case OUT -> i + 1 < nr && inside[p + 1];
            case IN -> i > 0 && inside[p - 1];
            case UP -> j + 1 < nz && inside[p + nr];
            default -> j > 0 && inside[p - nr];
        };
    }

    /** Whether the way leads to the axis or the shut face: a mirror half a step away. */
    private boolean mirror(int p, int way, boolean tray) {
        if (way == IN) {
            return p % nr == 0;
        }
        return way == DOWN && tray && p / nr == 0 && rests(r(p));
    }

    /** Whether the shut face lies under a radius, m. */
    private boolean rests(double r) {
        for (int e = 0; e < body.count(); e++) {
            if (body.resting(e) && r >= body.r0(e) && r <= body.r1(e)) {
                return true;
            }
        }
        return false;
    }

    /** Sets the weights of a point: second differences over unequal distances, with the term u_r/r. */
    private void weigh(int p, boolean tray) {
        int at = 4 * p;
        for (int way = 0; way < 4; way++) {
            if (!point(p, way) && !mirror(p, way, tray)) {
                reach[at + way] = Math.max(NEAREST, Math.min(1, face(p, way) / h));
            }
        }
        // over h^2: u_rr + u_r/r along the row, u_zz along the column
        double out = reach[at + OUT];
        double in = reach[at + IN];
        double radius = r(p) / h;
        weight[at + OUT] = (2 + in / radius) / (out * (out + in));
        weight[at + IN] = (2 - out / radius) / (in * (out + in));
        weight[at + UP] = 2 / (reach[at + UP] * (reach[at + UP] + reach[at + DOWN]));
        weight[at + DOWN] = 2 / (reach[at + DOWN] * (reach[at + UP] + reach[at + DOWN]));
        for (int way = 0; way < 4; way++) {
            boolean mirror = mirror(p, way, tray);
            own[p] += mirror ? 0 : weight[at + way];
            weight[at + way] = point(p, way) ? weight[at + way] : 0;
            shut[p] |= mirror && way == DOWN;
        }
    }

    /** Distance along the lattice line to the nearest edge, m. */
    private double face(int p, int way) {
        // the lattice line is level, at a height, or upright, at a radius; the edges that it meets, on the side of the
        // way
        boolean level = way == OUT || way == IN;
        double sign = way == OUT || way == UP ? 1 : -1;
        double here = level ? r(p) : z(p);
        double line = level ? z(p) : r(p);
        double least = h;
        for (int e = 0; e < body.count(); e++) {
            double a = (level ? body.z0(e) : body.r0(e)) - line;
            double b = (level ? body.z1(e) : body.r1(e)) - line;
            if ((a > 0) != (b > 0)) {
                double from = level ? body.r0(e) : body.z0(e);
                double to = level ? body.r1(e) : body.z1(e);
                double d = sign * (from + a / (a - b) * (to - from) - here);
                least = d >= 0 ? Math.min(least, d) : least;
            }
        }
        return least;
    }

    /**
     * Sweeps until the largest change is small against the largest u; the order of the points is fixed, so the bits are
     * too.
     */
    private void relax(double deepest) {
        // the best factor of a slab as deep as the body, whose slowest mode is the slowest of all bodies
        double omega = 2 / (1 + Math.sin(Math.PI * h / (Math.sqrt(8) * deepest + h)));
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = 0;
            double largest = 0;
            for (int p : points) {
                int at = 4 * p;
                int here = p + nr;
                // Gauss-Seidel step of laplacian u = -1, over-relaxed
                double sum = h * h
                        + weight[at + OUT] * u[here + 1]
                        + weight[at + IN] * u[here - 1]
                        + weight[at + UP] * u[here + nr]
                        + weight[at + DOWN] * u[here - nr];
                double step = omega * (sum / own[p] - u[here]);
                u[here] += step;
                change = Math.max(change, Math.abs(step));
                largest = Math.max(largest, u[here]);
            }
            if (change <= CONVERGED * largest) {
                return;
            }
        }
        throw new IllegalStateException("diffusion out of the body was not solved in " + MOST_SWEEPS + " sweeps");
    }

    /** Sums along vertical lines, each exact for parabolas in height; radii as rings about the points. */
    private double integral() {
        double sum = 0;
        for (int p : points) {
            int at = 4 * p;
            int here = p + nr;
            double up = 2 / (reach[at + UP] * (reach[at + UP] + reach[at + DOWN]));
            double down = shut[p] ? 0 : 2 / (reach[at + DOWN] * (reach[at + UP] + reach[at + DOWN]));
            // h^2 times the second difference in height
            double curve = weight[at + UP] * u[here + nr] + weight[at + DOWN] * u[here - nr] - (up + down) * u[here];
            double line = 0;
            for (int way = UP; way <= DOWN; way++) {
                double far = reach[at + way];
                boolean face = weight[at + way] == 0 && !(way == DOWN && shut[p]);
                // half of the stretch to the next point, or to the mirror, or the whole stretch to the face
                line += face ? far * u[here] / 2 - curve * far * far * far / 12 : u[here] / 2 - curve / 24;
            }
            sum += 2 * Math.PI * r(p) * line;
        }
        return sum * h * h;
    }
}
