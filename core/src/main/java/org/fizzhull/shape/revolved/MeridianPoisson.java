package org.fizzhull.shape.revolved;

import java.util.Arrays;

/**
 * Mean over a body of revolution of u with {@code laplacian u = -1}, u = 0 on its open faces and no flux through the
 * face it rests on, m2: the time constant of diffusion out of it (docs/physics/drying.md, 4). Second differences in
 * radius and height that use the distance to the face where a lattice line meets one (Shortley and Weller, 1938 [from
 * memory]): exact for parabolas, so for ball, rod and slab.
 */
final class MeridianPoisson {
    /** Points across the largest depth: c of bowl, dome, cone and ring are then within 0.04 % of those with 64. */
    private static final double ACROSS = 16;

    private static final double MOST_POINTS = 16_000;

    /** Most lattice points of the box around the body: a thin shell fills little of it. */
    private static final double MOST_IN_BOX = 1e6;

    private static final double NEAREST = 1e-4;
    private static final double CONVERGED = 1e-7;
    private static final int MOST_SWEEPS = 5000;
    private static final int OUT = 0;
    private static final int IN = 1;
    private static final int UP = 2;
    private static final int DOWN = 3;

    private final Meridian body;
    private final double h;
    private final int nr;
    private final int nz;
    private final boolean[] inside;
    /** Distance to the face each way, in units of the step, 1 where a point or a mirror comes first. */
    private final double[] reach;

    /** Weights of the neighbours that are points; 0 for faces and mirrors. */
    private final double[] weight;

    /** Sum of all weights of a point, faces included. */
    private final double[] own;

    /** Whether a point stands on the shut face. */
    private final boolean[] shut;

    /** The points inside, in order. */
    private final int[] points;

    private final double[] u;

    private MeridianPoisson(Meridian body, double volume, boolean tray, double deepest) {
        this.body = body;
        // where the shut face ends under a rounded edge the error is of first order: 1.24 there, 0.9 % high with 16
        // points
        double across = tray && body.rests() ? 2 * ACROSS : ACROSS;
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

    private double r(int p) {
        return (p % nr + 0.5) * h;
    }

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

    private boolean rests(double r) {
        for (int e = 0; e < body.count(); e++) {
            if (body.resting(e) && r >= body.r0(e) && r <= body.r1(e)) {
                return true;
            }
        }
        return false;
    }

    private void weigh(int p, boolean tray) {
        int at = 4 * p;
        for (int way = 0; way < 4; way++) {
            if (!point(p, way) && !mirror(p, way, tray)) {
                reach[at + way] = Math.max(NEAREST, Math.min(1, face(p, way) / h));
            }
        }
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

    private void relax(double deepest) {
        // the best factor of a slab as deep as the body, whose slowest mode is the slowest of all bodies
        double omega = 2 / (1 + Math.sin(Math.PI * h / (Math.sqrt(8) * deepest + h)));
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = 0;
            double largest = 0;
            for (int p : points) {
                int at = 4 * p;
                int here = p + nr;
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
