package org.fizzhull.mesh.cutting;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Area of the shadow a closed mesh throws straight down. Where no vertical line passes through material twice it is the
 * sum of the facets that face up, to rounding; else the lines of sight are joined on rows across the mesh.
 */
public final class Silhouette {
    private static final int ROWS = 512;

    /** Rows on which it is first decided whether the shadow overlaps itself. */
    private static final int FEW = 128;

    private static final double SAME = 1e-9;

    private final TriangleMesh mesh;
    private final double low;
    private final double width;

    /** Where the stretches of each row over facets that face up begin and end, m. */
    private final DoubleStream.Builder[] from;

    private final DoubleStream.Builder[] to;

    /** Area of all stretches, and of what they cover together, m2. */
    private double single;

    private double joined;

    private Silhouette(TriangleMesh mesh, int rows) {
        this.mesh = mesh;
        double[] box = mesh.box();
        low = box[1];
        width = (box[4] - box[1]) / rows;
        from = new DoubleStream.Builder[rows];
        to = new DoubleStream.Builder[rows];
        Arrays.setAll(from, row -> DoubleStream.builder());
        Arrays.setAll(to, row -> DoubleStream.builder());
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (FaceSets.shadow(mesh, f) > 0) {
                enter(f);
            }
        }
        for (int row = 0; row < rows; row++) {
            joined += joined(from[row].build(), to[row].build()) * width;
        }
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
        if (new Silhouette(mesh, FEW).overlap() <= SAME) {
            return facing;
        }
        Silhouette many = new Silhouette(mesh, ROWS);
        return many.overlap() <= SAME ? facing : many.joined;
    }

    /** Share of the length of all stretches that lies over others. */
    private double overlap() {
        return (single - joined) / single;
    }

    /** Enters a facet on the rows whose middles it crosses. */
    private void enter(int f) {
        double a = mesh.at(mesh.corner(f, 0), 1);
        double b = mesh.at(mesh.corner(f, 1), 1);
        double c = mesh.at(mesh.corner(f, 2), 1);
        double begin = (Math.min(a, Math.min(b, c)) - low) / width - 0.5;
        double end = (Math.max(a, Math.max(b, c)) - low) / width - 0.5;
        int last = Math.min(from.length - 1, (int) Math.floor(end));
        for (int row = Math.max(0, (int) Math.ceil(begin)); row <= last; row++) {
            enter(f, row);
        }
    }

    private void enter(int f, int row) {
        double y = low + (row + 0.5) * width;
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
        if (left <= right) {
            from[row].add(left);
            to[row].add(right);
            single += (right - left) * width;
        }
    }

    /** Length that the stretches of a row cover together, m: it goes on while more have begun than ended. */
    private static double joined(DoubleStream from, DoubleStream to) {
        double[] start = from.sorted().toArray();
        double[] end = to.sorted().toArray();
        double length = 0;
        int begun = 0;
        double since = 0;
        for (int ended = 0; ended < end.length; ended++) {
            while (begun < start.length && start[begun] <= end[ended]) {
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
