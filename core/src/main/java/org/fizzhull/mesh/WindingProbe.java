package org.fizzhull.mesh;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * Looks for places that a surface encloses twice, or inside out. Lines parallel to z stand on a grid over the body; going
 * up a line, the number of surfaces around must be 0 or 1 everywhere. So nested bodies, bodies that run into each other
 * and a surface that runs into itself are found by one rule, with a place.
 *
 * <p>An overlap whose shadow falls between the lines is missed: with 64 by 64 lines that is one smaller than about a
 * 4000th of the body's shadow. An overlap of at most a thousandth of the volume is told and kept, a larger one refused.
 */
final class WindingProbe {
    /** Overlap kept with a notice, as a part of the volume. */
    static final double KEPT = 1e-3;

    private static final int MOST_LINES = 64;
    private static final int FEWEST_LINES = 8;

    /** Line and facet pairs looked at before the grid is made coarser: bounds time and memory on meshes of slivers. */
    private static final int MOST_TESTS = 4_000_000;

    /** Lines stand off round numbers, where edges of drawn bodies are. */
    private static final double OFF_X = 0.4142135623730951;

    private static final double OFF_Y = 0.5773502691896258;
    private static final int BLOCK = 64;

    private final double[] xyz;
    private final int[] corners;
    private final double lowX;
    private final double lowY;
    private final double stepX;
    private final double stepY;
    private final double tolerance;
    private final double volume;
    private int lines;
    private double scaleX;
    private double scaleY;
    private int tests;
    private int[] line = new int[256];
    private long[] crossing = new long[256];
    private int used;
    private double length;
    private String where = "";

    /** A probe over the box of all surfaces of a mesh. */
    WindingProbe(double[] xyz, int[] corners, List<MeshBody> bodies) {
        this.xyz = xyz;
        this.corners = corners;
        MeshBody box = MeshBody.around(bodies);
        volume = box.volume();
        lowX = box.lowX();
        lowY = box.lowY();
        stepX = box.highX() - lowX;
        stepY = box.highY() - lowY;
        tolerance = 1e-5 * Math.max(box.highZ() - box.lowZ(), Math.max(stepX, stepY));
    }

    /** Refuses or tells overlaps. */
    void check(MeshRefusals refusals, List<Notice> notices) {
        probe();
        if (length > 0) {
            double part = length / scaleX / scaleY / volume;
            String amount = "about " + Math.max(0.01, Math.rint(part * 1e4) / 1e2) + " %";
            if (!(part <= KEPT)) {
                throw refusals.overlap(where, amount);
            }
            notices.add(new Notice(
                    "mesh-overlap", "The surface runs into itself " + where + ", by " + amount + " of the volume."));
        }
    }

    /** Whether no line meets an overlap. */
    boolean clean() {
        probe();
        return length == 0;
    }

    private void probe() {
        lines = 2 * MOST_LINES;
        do {
            lines /= 2;
            used = 0;
            tests = 0;
            scaleX = lines / stepX;
            scaleY = lines / stepY;
        } while (!gather() && lines > FEWEST_LINES);
        judge();
    }

    private boolean gather() {
        int[] column = new int[xyz.length / 3];
        for (int v = 0; v < column.length; v += BLOCK) {
            columns(column, v, Math.min(column.length, v + BLOCK));
        }
        int n = corners.length / 3;
        for (int f = 0; f < n; f += BLOCK) {
            gather(column, f, Math.min(n, f + BLOCK));
            if (tests > MOST_TESTS && lines > FEWEST_LINES) {
                return false;
            }
        }
        return true;
    }

    /** Number of lines left of each vertex: a facet whose vertices agree meets none, and in a fine mesh most do. */
    private void columns(int[] column, int from, int to) {
        for (int v = from; v < to; v++) {
            column[v] = (int) ((xyz[3 * v] - lowX) * scaleX + (1 - OFF_X));
        }
    }

    private void gather(int[] column, int from, int to) {
        for (int h = 3 * from; h < 3 * to; h += 3) {
            int a = column[corners[h]];
            int b = column[corners[h + 1]];
            int c = column[corners[h + 2]];
            if (a != b || b != c) {
                gatherRows(h, Math.min(a, Math.min(b, c)), Math.max(a, Math.max(b, c)) - 1);
            }
        }
    }

    private void gatherRows(int h, int firstX, int lastX) {
        int a = corners[h];
        int b = corners[h + 1];
        int c = corners[h + 2];
        int firstY = Math.min(row(a), Math.min(row(b), row(c)));
        int lastY = Math.max(row(a), Math.max(row(b), row(c))) - 1;
        for (int j = firstY; j <= lastY; j++) {
            for (int i = firstX; i <= lastX; i++) {
                tests++;
                int sign = VerticalRay.sign(xyz, a, b, c, x(i), y(j));
                if (sign != 0) {
                    keep(j * lines + i, sign, VerticalRay.height(xyz, a, b, c, x(i), y(j)));
                }
            }
        }
    }

    private int row(int v) {
        return (int) ((xyz[3 * v + 1] - lowY) * scaleY + (1 - OFF_Y));
    }

    private double x(int i) {
        return lowX + (i + OFF_X) / scaleX;
    }

    private double y(int j) {
        return lowY + (j + OFF_Y) / scaleY;
    }

    /** Files a crossing so that the natural order of longs is the order of heights; the lowest bit holds the sign. */
    private void keep(int onLine, int sign, double z) {
        if (used == line.length) {
            line = Arrays.copyOf(line, 2 * used);
            crossing = Arrays.copyOf(crossing, 2 * used);
        }
        long bits = Double.doubleToRawLongBits(z);
        bits ^= bits >> 63 & Long.MAX_VALUE;
        line[used] = onLine;
        crossing[used++] = bits & -2L | (sign > 0 ? 1 : 0);
    }

    private static double height(long code) {
        long bits = code & -2L;
        return Double.longBitsToDouble(bits ^ bits >> 63 & Long.MAX_VALUE);
    }

    private void judge() {
        int[] start = new int[lines * lines + 1];
        for (int i = 0; i < used; i++) {
            start[line[i] + 1]++;
        }
        for (int i = 0; i < lines * lines; i++) {
            start[i + 1] += start[i];
        }
        long[] sorted = new long[used];
        int[] next = start.clone();
        for (int i = 0; i < used; i++) {
            sorted[next[line[i]]++] = crossing[i];
        }
        for (int l = 0; l < lines * lines; l++) {
            Arrays.sort(sorted, start[l], start[l + 1]);
            double wrong = wrongLength(sorted, start[l], start[l + 1]);
            if (wrong > 0 && where.isEmpty()) {
                where = "at " + place(sorted, start[l], start[l + 1], l);
            }
            length += wrong;
        }
    }

    /** Length of a line, m, that is enclosed twice or inside out; 0 for a line whose crossings do not add up. */
    private double wrongLength(long[] sorted, int from, int to) {
        int winding = 0;
        double length = 0;
        for (int i = from; i < to; i++) {
            winding += (sorted[i] & 1) != 0 ? 1 : -1;
            if ((winding < 0 || winding > 1) && i + 1 < to) {
                double gap = height(sorted[i + 1]) - height(sorted[i]);
                length += gap > tolerance ? gap : 0;
            }
        }
        return winding == 0 ? length : 0;
    }

    private String place(long[] sorted, int from, int to, int onLine) {
        int winding = 0;
        for (int i = from; i + 1 < to; i++) {
            winding += (sorted[i] & 1) != 0 ? 1 : -1;
            double z = height(sorted[i]);
            double above = height(sorted[i + 1]);
            if ((winding < 0 || winding > 1) && above - z > tolerance) {
                return Where.point(x(onLine % lines), y(onLine / lines), (z + above) / 2);
            }
        }
        throw new IllegalStateException("no overlap on a line that has one");
    }
}
