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

    /** Columns are kept in bytes. */
    private static final int MOST_LINES = 64;

    private static final int FEWEST_LINES = 8;

    /** Crossings of a line that are sorted by exchanging neighbours. */
    private static final int FEW = 16;

    /** Line and facet pairs looked at before the grid is made coarser: bounds time and memory on meshes of slivers. */
    private static final int MOST_TESTS = 4_000_000;

    private final Vertices vertices;
    private final int[] corners;
    private final MeshBody box;
    private final double tolerance;
    private final Errands errands;
    private LineGrid grid;
    private double length;
    private String where = "";

    /**
     * A probe over the box of all surfaces of a mesh.
     *
     * @param errands looks at half of the facets
     */
    WindingProbe(Vertices vertices, int[] corners, List<MeshBody> bodies, Errands errands) {
        this.vertices = vertices;
        this.corners = corners;
        this.errands = errands;
        box = MeshBody.around(bodies);
        grid = new LineGrid(MOST_LINES, box);
        tolerance =
                1e-5 * Math.max(box.highZ() - box.lowZ(), Math.max(box.highX() - box.lowX(), box.highY() - box.lowY()));
    }

    /** Refuses or tells overlaps. */
    void check(MeshRefusals refusals, List<Notice> notices) {
        probe();
        if (length > 0) {
            double part = length * grid.cell() / box.volume();
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
        int lines = MOST_LINES;
        LineCrossings[] halves = gather(lines);
        while (halves[0].tests() + halves[1].tests() > MOST_TESTS && lines > FEWEST_LINES) {
            lines /= 2;
            halves = gather(lines);
        }
        judge(halves);
    }

    /** The crossings of the first and of the second half of the facets. */
    private LineCrossings[] gather(int lines) {
        grid = new LineGrid(lines, box);
        int count = vertices.count();
        byte[] column = new byte[count];
        share(
                new LineColumns(grid, vertices, column, 0, count / 2),
                new LineColumns(grid, vertices, column, count / 2, count));
        int facets = corners.length / 3;
        int most = lines > FEWEST_LINES ? MOST_TESTS : Integer.MAX_VALUE;
        LineCrossings first = new LineCrossings(grid, vertices, corners, column, 0, facets / 2, most);
        LineCrossings second = new LineCrossings(grid, vertices, corners, column, facets / 2, facets, most);
        share(first, second);
        return new LineCrossings[] {first, second};
    }

    private void share(Runnable first, Runnable second) {
        int other = errands.hand(second);
        first.run();
        errands.await(other);
    }

    private void judge(LineCrossings[] halves) {
        int[] next = new int[grid.count()];
        for (LineCrossings half : halves) {
            half.count(next);
        }
        int[] start = new int[grid.count() + 1];
        for (int i = 0; i < grid.count(); i++) {
            start[i + 1] = start[i] + next[i];
            next[i] = start[i];
        }
        long[] sorted = new long[start[grid.count()]];
        for (LineCrossings half : halves) {
            half.file(sorted, next);
        }
        for (int l = 0; l < grid.count(); l++) {
            if (start[l] < start[l + 1]) {
                judge(sorted, start[l], start[l + 1], l);
            }
        }
    }

    private void judge(long[] crossings, int from, int to, int line) {
        sort(crossings, from, to);
        double wrong = wrongLength(crossings, from, to);
        if (wrong > 0 && where.isEmpty()) {
            where = "at " + place(crossings, from, to, line);
        }
        length += wrong;
    }

    /** Most lines have two crossings or four; the library's way costs a start-up of some milliseconds. */
    private static void sort(long[] crossings, int from, int to) {
        if (to - from > FEW) {
            Arrays.sort(crossings, from, to);
            return;
        }
        for (int i = from + 1; i < to; i++) {
            long crossing = crossings[i];
            int at = i;
            while (at > from && crossings[at - 1] > crossing) {
                crossings[at] = crossings[at - 1];
                at--;
            }
            crossings[at] = crossing;
        }
    }

    /** Length of a line, m, that is enclosed twice or inside out; 0 for a line whose crossings do not add up. */
    private double wrongLength(long[] sorted, int from, int to) {
        int winding = 0;
        double length = 0;
        for (int i = from; i < to; i++) {
            winding += LineCrossings.sign(sorted[i]);
            if ((winding < 0 || winding > 1) && i + 1 < to) {
                double gap = LineCrossings.height(sorted[i + 1]) - LineCrossings.height(sorted[i]);
                length += gap > tolerance ? gap : 0;
            }
        }
        return winding == 0 ? length : 0;
    }

    private String place(long[] sorted, int from, int to, int line) {
        int winding = 0;
        for (int i = from; i + 1 < to; i++) {
            winding += LineCrossings.sign(sorted[i]);
            double z = LineCrossings.height(sorted[i]);
            double above = LineCrossings.height(sorted[i + 1]);
            if ((winding < 0 || winding > 1) && above - z > tolerance) {
                return grid.point(line, (z + above) / 2);
            }
        }
        throw new IllegalStateException("no overlap on a line that has one");
    }
}
