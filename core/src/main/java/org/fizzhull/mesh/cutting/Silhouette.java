package org.fizzhull.mesh.cutting;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Area of the shadow a closed mesh throws straight down. Where no vertical line passes through material twice it is the
 * sum of the facets that face up, to rounding; else the lines of sight are joined on rows across the mesh.
 */
public final class Silhouette {
    private static final int ROWS = 512;

    /** Rows on which a shadow without overlap is told first. */
    private static final int FEW = 128;

    private static final double SAME = 1e-9;

    private final TriangleMesh mesh;
    private final int rows;
    private final int[] first;
    private double[] from = {};
    private double[] to = {};
    private final double low;
    private final double width;
    private double joined;

    private Silhouette(TriangleMesh mesh, int rows) {
        this.mesh = mesh;
        this.rows = rows;
        first = new int[rows + 1];
        double[] box = mesh.box();
        low = box[1];
        width = (box[4] - box[1]) / rows;
    }

    /**
     * {@return the area, m2; on rows to about 2e-5 of itself}
     *
     * @param mesh the mesh
     */
    public static double area(TriangleMesh mesh) {
        double facing = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            facing += Math.max(0, FaceSets.shadow(mesh, f));
        }
        Silhouette few = new Silhouette(mesh, FEW);
        if (few.overlap() <= SAME) {
            return facing;
        }
        Silhouette many = new Silhouette(mesh, ROWS);
        return many.overlap() <= SAME ? facing : many.joined;
    }

    /** Joins the stretches of all rows; the share of their length that lies over others. */
    private double overlap() {
        fill(true);
        for (int row = 0; row < rows; row++) {
            first[row + 1] += first[row];
        }
        from = new double[first[rows]];
        to = new double[first[rows]];
        fill(false);
        double single = 0;
        for (int row = 0; row < rows; row++) {
            for (int i = first[row]; i < first[row + 1]; i++) {
                single += (to[i] - from[i]) * width;
            }
            joined += joined(row) * width;
        }
        return (single - joined) / single;
    }

    private void fill(boolean count) {
        int[] used = new int[rows];
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (!(FaceSets.shadow(mesh, f) > 0)) {
                continue;
            }
            double a = Double.POSITIVE_INFINITY;
            double b = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 3; k++) {
                a = Math.min(a, mesh.at(mesh.corner(f, k), 1));
                b = Math.max(b, mesh.at(mesh.corner(f, k), 1));
            }
            int last = Math.min(rows - 1, (int) Math.floor((b - low) / width - 0.5));
            for (int row = Math.max(0, (int) Math.ceil((a - low) / width - 0.5)); row <= last; row++) {
                if (count) {
                    first[row + 1]++;
                } else {
                    enter(f, low + (row + 0.5) * width, first[row] + used[row]++);
                }
            }
        }
    }

    /** Stretch of a row over a facet. */
    private void enter(int f, double y, int at) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            int a = mesh.corner(f, k);
            int b = mesh.corner(f, (k + 1) % 3);
            // from the lower index, so that neighbours end at the same number
            int i = Math.min(a, b);
            int j = Math.max(a, b);
            double yi = mesh.at(i, 1);
            double yj = mesh.at(j, 1);
            if ((yi <= y) != (yj <= y)) {
                double x = mesh.at(i, 0) + (y - yi) / (yj - yi) * (mesh.at(j, 0) - mesh.at(i, 0));
                left = Math.min(left, x);
                right = Math.max(right, x);
            }
        }
        from[at] = left <= right ? left : 0;
        to[at] = left <= right ? right : 0;
    }

    private double joined(int row) {
        int n = first[row + 1] - first[row];
        double[] start = Arrays.copyOfRange(from, first[row], first[row + 1]);
        double[] end = Arrays.copyOfRange(to, first[row], first[row + 1]);
        Arrays.sort(start);
        Arrays.sort(end);
        // the shadow goes on while more stretches have begun than ended
        double length = 0;
        int begun = 0;
        double since = 0;
        for (int ended = 0; ended < n; ended++) {
            while (begun < n && start[begun] <= end[ended]) {
                since = begun == ended ? start[begun] : since;
                begun++;
            }
            if (begun == ended + 1) {
                length += end[ended] - since;
            }
        }
        return length;
    }
}
