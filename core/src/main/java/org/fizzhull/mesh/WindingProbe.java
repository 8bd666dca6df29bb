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
    private static final int BLOCK = 2048;

    private final double[] xyz;
    private final int[] corners;
    private final double lowX;
    private final double lowY;
    private final double stepX;
    private final double stepY;
    private final double tolerance;
    private int lines;
    private double scaleX;
    private double scaleY;
    private int tests;
    private int[] line = new int[256];
    private long[] crossing = new long[256];
    private int used;

    /** A probe over the box of all surfaces of a mesh. */
    WindingProbe(double[] xyz, int[] corners, List<MeshBody> bodies) {
        this.xyz = xyz;
        this.corners = corners;
        MeshBody box = MeshBody.around(bodies);
        lowX = box.lowX();
        lowY = box.lowY();
        stepX = box.highX() - lowX;
        stepY = box.highY() - lowY;
        tolerance = 1e-5 * Math.max(box.highZ() - box.lowZ(), Math.max(stepX, stepY));
    }

    /** Refuses or tells overlaps. */
    void check(double volume, MeshRefusals refusals, List<Notice> notices) {
        lines = 2 * MOST_LINES;
        do {
            lines /= 2;
            used = 0;
            tests = 0;
            scaleX = lines / stepX;
            scaleY = lines / stepY;
        } while (!gather() && lines > FEWEST_LINES);
        judge(volume, refusals, notices);
    }

    private boolean gather() {
        int n = corners.length / 3;
        for (int f = 0; f < n; f += BLOCK) {
            gather(f, Math.min(n, f + BLOCK));
            if (tests > MOST_TESTS && lines > FEWEST_LINES) {
                return false;
            }
        }
        return true;
    }

    private void gather(int from, int to) {
        for (int h = 3 * from; h < 3 * to; h += 3) {
            double ax = xyz[3 * corners[h]];
            double bx = xyz[3 * corners[h + 1]];
            double cx = xyz[3 * corners[h + 2]];
            double low = ax < bx ? ax : bx;
            double high = ax < bx ? bx : ax;
            low = cx < low ? cx : low;
            high = cx > high ? cx : high;
            int first = first((low - lowX) * scaleX - OFF_X);
            int last = last((high - lowX) * scaleX - OFF_X);
            if (first <= last) {
                gatherRows(h, first, last);
            }
        }
    }

    private void gatherRows(int h, int firstX, int lastX) {
        int a = corners[h];
        int b = corners[h + 1];
        int c = corners[h + 2];
        double ay = xyz[3 * a + 1];
        double by = xyz[3 * b + 1];
        double cy = xyz[3 * c + 1];
        int firstY = first((Math.min(ay, Math.min(by, cy)) - lowY) * scaleY - OFF_Y);
        int lastY = last((Math.max(ay, Math.max(by, cy)) - lowY) * scaleY - OFF_Y);
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

    private double x(int i) {
        return lowX + (i + OFF_X) / scaleX;
    }

    private double y(int j) {
        return lowY + (j + OFF_Y) / scaleY;
    }

    /** First line not left of a place; one line wide of rounding. */
    private int first(double place) {
        return place <= 0 ? 0 : (int) (place + 1 - 1e-9);
    }

    private int last(double place) {
        return place < 0 ? -1 : (int) Math.min(lines - 1, place + 1e-9);
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

    private void judge(double volume, MeshRefusals refusals, List<Notice> notices) {
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
        double length = 0;
        String where = "";
        for (int l = 0; l < lines * lines; l++) {
            Arrays.sort(sorted, start[l], start[l + 1]);
            double wrong = wrongLength(sorted, start[l], start[l + 1]);
            if (wrong > 0 && where.isEmpty()) {
                where = "at " + place(sorted, start[l], start[l + 1], l);
            }
            length += wrong;
        }
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
