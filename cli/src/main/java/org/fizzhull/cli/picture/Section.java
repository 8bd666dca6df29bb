package org.fizzhull.cli.picture;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;

/** The vertical section of a hull with one direction up, scaled to pixels; the lowest point of the body is the reference. */
public final class Section {
    private final List<double[][]> outlines;
    private final double scale;
    private final double lowest;
    private final double tall;
    private final double left;
    private final double right;

    private Section(List<double[][]> outlines, double scale, double lowest, double tall, double left, double right) {
        this.outlines = outlines;
        this.scale = scale;
        this.lowest = lowest;
        this.tall = tall;
        this.left = left;
        this.right = right;
    }

    /** Scaled so that the larger side takes {@code size} pixels. */
    public static Section of(Hull hull, Vec3 up, double size) {
        double[] box = box(hull.section(up));
        return scaled(hull, up, size / Math.max(box[1] - box[0], box[3] - box[2]));
    }

    /** At so many pixels a metre. */
    public static Section scaled(Hull hull, Vec3 up, double pixels) {
        List<double[][]> outlines = hull.section(up);
        double[] box = box(outlines);
        double lowest = -hull.reach(-up.x(), -up.y(), -up.z());
        return new Section(outlines, pixels, lowest, box[3] - box[2], box[0], box[1]);
    }

    private static double[] box(List<double[][]> outlines) {
        double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double[][] outline : outlines) {
            for (double[] point : outline) {
                box[0] = Math.min(box[0], point[0]);
                box[1] = Math.max(box[1], point[0]);
                box[2] = Math.min(box[2], point[1]);
                box[3] = Math.max(box[3], point[1]);
            }
        }
        return box;
    }

    /** The section of another hull of the same piece, at the same scale and place. */
    public Section sibling(Hull other, Vec3 up) {
        return new Section(other.section(up), scale, lowest, tall, left, right);
    }

    /** A length in pixels, from m. */
    public double pixels(double metres) {
        return scale * metres;
    }

    /** Width in pixels. */
    public double width() {
        return scale * (right - left);
    }

    /** Height in pixels. */
    public double height() {
        return scale * tall;
    }

    /** A point of the section, m, in pixels, as {@link #placed} puts it. */
    double[] point(double across, double height, double x, double y) {
        return new double[] {x + scale * (across - (left + right) / 2), y - scale * (height - lowest)};
    }

    /** The outlines in pixels, centred on x, the lowest point at y. */
    public double[][][] placed(double x, double y) {
        return placed(x, y, 1);
    }

    /** The same, shrunk to a share of its size. */
    public double[][][] placed(double x, double y, double share) {
        double at = share * scale;
        double[][][] placed = new double[outlines.size()][][];
        for (int i = 0; i < placed.length; i++) {
            double[][] outline = outlines.get(i);
            placed[i] = new double[outline.length][];
            for (int k = 0; k < outline.length; k++) {
                placed[i][k] =
                        new double[] {x + at * (outline[k][0] - (left + right) / 2), y - at * (outline[k][1] - lowest)};
            }
        }
        return placed;
    }
}
