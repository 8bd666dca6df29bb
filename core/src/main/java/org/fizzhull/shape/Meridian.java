package org.fizzhull.shape;

import java.util.Arrays;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.quantity.Refusal;

/**
 * Outline of a body of revolution in the half plane of its axis: a polygon of radii and heights, which either begins and
 * ends on the axis or comes back to its first point. Anticlockwise, lowest point at height 0, material to the left.
 * Immutable.
 */
public final class Meridian {
    private static final String FIELD = "shape: file";
    private static final int FEWEST = 3;
    private static final int MOST = 2000;

    /** Points closer to the axis than this share of the body lie on it. */
    private static final double ON_AXIS = 1e-9;

    private final double[] r;
    private final double[] z;
    private final double height;
    private final boolean[] resting;

    private Meridian(double[] r, double[] z) {
        this.r = r;
        this.z = z;
        this.height = most(z);
        this.resting = new boolean[r.length];
        for (int i = 0; i < r.length; i++) {
            double flat = ON_AXIS * height;
            resting[i] = z(i) <= flat && z(i + 1) <= flat && r(i + 1) > r(i);
        }
    }

    /**
     * The outline through some points, refused where it is open, crosses itself or encloses nothing.
     *
     * @param radius distance of each point from the axis, m
     * @param height of each point, m, from any level
     */
    public static Meridian of(double[] radius, double[] height) {
        if (radius.length != height.length) {
            throw new IllegalArgumentException("as many radii as heights");
        }
        MeridianCheck.numbers(radius, height, FEWEST, MOST);
        int n = radius.length;
        double size = size(radius, height);
        boolean back = near(radius[0], radius[n - 1], size) && near(height[0], height[n - 1], size);
        boolean fromAxis = radius[0] <= ON_AXIS * size && radius[n - 1] <= ON_AXIS * size;
        if (!back && !fromAxis) {
            throw new Refusal(
                    "open-profile",
                    FIELD,
                    "from " + MeridianCheck.point(radius[0], height[0]) + " to "
                            + MeridianCheck.point(radius[n - 1], height[n - 1]),
                    "an outline that begins and ends on the axis (radius 0), or ends where it begins",
                    "Add the points on the axis: radius 0 at the lowest and at the highest height.");
        }
        return checked(radius, height, back ? n - 1 : n, size);
    }

    private static Meridian checked(double[] radius, double[] height, int count, double size) {
        double[] r = new double[count];
        double[] z = new double[count];
        double low = Double.POSITIVE_INFINITY;
        int kept = 0;
        for (int i = 0; i < count; i++) {
            boolean same = kept > 0 && near(radius[i], r[kept - 1], size) && near(height[i], z[kept - 1], size);
            if (!same) {
                r[kept] = radius[i] <= ON_AXIS * size ? 0 : radius[i];
                z[kept++] = height[i];
                low = Math.min(low, height[i]);
            }
        }
        r = Arrays.copyOf(r, kept);
        z = Arrays.copyOf(z, kept);
        for (int i = 0; i < kept; i++) {
            z[i] -= low;
        }
        MeridianCheck.simple(r, z);
        double area = 0;
        for (int i = 0, j = kept - 1; i < kept; j = i++) {
            area += (r[j] * z[i] - r[i] * z[j]) / 2;
        }
        if (!(Math.abs(area) > ON_AXIS * size * size)) {
            throw new Refusal(
                    "empty-profile", FIELD, kept + " points in a line", "an outline that encloses a face", "");
        }
        if (area < 0) {
            turn(r);
            turn(z);
        }
        return new Meridian(r, z);
    }

    /** The right half of a vertical section, arcs as chords. */
    static Meridian of(Profile2D profile) {
        double[][] outline = ProfileOutline.of(profile, Vec3.UP).get(0);
        double right = 0;
        for (double[] point : outline) {
            right = Math.max(right, point[0]);
        }
        // from axis to axis the mirror image follows, which the first and the last point are not part of
        int n = right > ON_AXIS ? outline.length / 2 + 1 : outline.length;
        double[] r = new double[right > ON_AXIS ? n : n + 1];
        double[] z = new double[r.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = Math.max(0, -outline[i % outline.length][0]);
            z[i] = outline[i % outline.length][1];
        }
        return of(r, z);
    }

    /** Number of corners, and of edges. */
    int count() {
        return r.length;
    }

    /** Radius of corner i, counted round, m. */
    double r(int i) {
        return r[i % r.length];
    }

    /** Height of corner i, counted round, m. */
    double z(int i) {
        return z[i % z.length];
    }

    /** Whether edge i, from corner i to the next, is the axis and no face. */
    boolean axis(int i) {
        return r(i) == 0 && r(i + 1) == 0;
    }

    /** Whether edge i is a level face at the lowest height that looks down. */
    boolean resting(int i) {
        return resting[i];
    }

    /** Area of the face edge i turns into, m2. */
    double face(int i) {
        return Math.PI * (r(i) + r(i + 1)) * Math.hypot(r(i + 1) - r(i), z(i + 1) - z(i));
    }

    /** Largest radius, m. */
    double widest() {
        return most(r);
    }

    /** Smallest radius, m: above 0 for a ring. */
    double narrowest() {
        double least = r[0];
        for (double value : r) {
            least = Math.min(least, value);
        }
        return least;
    }

    /** Height of the highest point, m; the lowest is at 0. */
    double height() {
        return height;
    }

    /** Exact sections: edges that go up hold material between them and the axis, edges that go down take it away. */
    public Profile2D profile() {
        Profile2D.Builder build = Profile2D.builder();
        for (int i = 0; i < count(); i++) {
            if (z(i + 1) > z(i) && r(i) + r(i + 1) > 0) {
                build.outer().line(z(i), r(i), z(i + 1), r(i + 1));
            } else if (z(i + 1) < z(i) && r(i) + r(i + 1) > 0) {
                build.inner().line(z(i + 1), r(i + 1), z(i), r(i));
            }
        }
        return build.build();
    }

    private static double size(double[] radius, double[] height) {
        double size = 0;
        for (int i = 0; i < radius.length; i++) {
            size = Math.max(size, Math.max(radius[i], Math.abs(height[i] - height[0])));
        }
        return size;
    }

    private static double most(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }

    private static boolean near(double a, double b, double size) {
        return Math.abs(a - b) <= ON_AXIS * size;
    }

    private static void turn(double[] values) {
        for (int i = 0, j = values.length - 1; i < j; i++, j--) {
            double kept = values[i];
            values[i] = values[j];
            values[j] = kept;
        }
    }
}
