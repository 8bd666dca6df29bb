package org.fizzhull.shape;

import java.util.Arrays;

/**
 * Volumes left at a depth by a grid of distances to a polyline: knows nothing of the closed forms. A cell counts in part
 * where the front passes through it, so the error falls with the square of the cell.
 */
final class BruteForce {
    private final double[][] body;
    private final double[][] open;
    private final int cells;

    /**
     * @param body closed outline of the figure, a list of corners; for a body of revolution its half plane r &gt;= 0
     * @param open the part of the boundary that moves, as pairs of successive corners
     */
    BruteForce(double[][] body, double[][] open, int cells) {
        this.body = body;
        this.open = open;
        this.cells = cells;
    }

    /** What is left at each depth of the figure turned about the first axis coordinate 0: integral of 2 pi r. */
    double[] revolved(double... depths) {
        return sum(true, depths);
    }

    /** What is left at each depth of the flat figure. */
    double[] planar(double... depths) {
        return sum(false, depths);
    }

    private double[] sum(boolean revolve, double[] depths) {
        double[] low = {Double.MAX_VALUE, Double.MAX_VALUE};
        double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double[] corner : body) {
            for (int k = 0; k < 2; k++) {
                low[k] = Math.min(low[k], corner[k]);
                high[k] = Math.max(high[k], corner[k]);
            }
        }
        double[] left = new double[depths.length];
        double width = Math.max(high[0] - low[0], high[1] - low[1]) / cells;
        for (double x = low[0] + width / 2; x < high[0] + width; x += width) {
            for (double y = low[1] + width / 2; y < high[1] + width; y += width) {
                boolean in = inside(x, y);
                double out = distance(body, x, y, true);
                double whole = share(in ? out : -out, width);
                if (whole == 0) {
                    continue;
                }
                double to = distance(open, x, y, false);
                // A cell whose middle lies beyond a shut face is still deep below the open ones.
                to = in || to > out ? to : -to;
                double weight = width * width * (revolve ? 2 * Math.PI * x : 1);
                for (int k = 0; k < depths.length; k++) {
                    left[k] += weight * Math.min(whole, share(to - depths[k], width));
                }
            }
        }
        return left;
    }

    private static double share(double distance, double width) {
        return Math.max(0, Math.min(1, 0.5 + distance / width));
    }

    private boolean inside(double x, double y) {
        boolean in = false;
        for (int i = 0, j = body.length - 1; i < body.length; j = i++) {
            double[] a = body[i];
            double[] b = body[j];
            if ((a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
                in = !in;
            }
        }
        return in;
    }

    private static double distance(double[][] line, double x, double y, boolean closed) {
        double least = Double.MAX_VALUE;
        for (int i = closed ? 0 : 1; i < line.length; i++) {
            double[] a = line[(i + line.length - 1) % line.length];
            double[] b = line[i];
            double ux = b[0] - a[0];
            double uy = b[1] - a[1];
            double length = ux * ux + uy * uy;
            double t = length == 0 ? 0 : ((x - a[0]) * ux + (y - a[1]) * uy) / length;
            t = Math.max(0, Math.min(1, t));
            double dx = x - a[0] - t * ux;
            double dy = y - a[1] - t * uy;
            least = Math.min(least, dx * dx + dy * dy);
        }
        return Math.sqrt(least);
    }

    /** Polyline builder: corners and arcs. */
    static final class Path {
        private static final double DEGREES_OF_A_CHORD = 1;

        private double[][] points = new double[0][];

        Path to(double x, double y) {
            points = Arrays.copyOf(points, points.length + 1);
            points[points.length - 1] = new double[] {x, y};
            return this;
        }

        /** Arc of the ellipse with centre (x, y) and half axes p, q, from one angle to the other, degrees. */
        Path arc(double x, double y, double p, double q, double from, double to) {
            int chords = (int) Math.ceil(Math.abs(to - from) / DEGREES_OF_A_CHORD);
            for (int i = 0; i <= chords; i++) {
                double angle = Math.toRadians(from + (to - from) * i / chords);
                to(x + p * Math.cos(angle), y + q * Math.sin(angle));
            }
            return this;
        }

        double[][] points() {
            return points;
        }
    }
}
