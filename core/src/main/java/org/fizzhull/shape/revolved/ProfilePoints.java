package org.fizzhull.shape.revolved;

import java.util.Arrays;
import org.fizzhull.quantity.Refusal;

/**
 * A meridian drawn as points (r, z), joined by straight lines and checked: it runs from the axis to the axis, or back
 * to its first point for a ring, and never meets itself. Either direction will do. The profile made of it is exact:
 * every line away from the axis sweeps a cone, and where the outline folds back, lines that go down with the body on
 * their outer side take away what is not there. Within 1e-12 of the size a point lies on
 * the axis, a line is level, and two points that follow one another are one.
 *
 * <pre>{@code
 * double[] r = {0, 0.030, 0.030, 0};
 * double[] z = {0, 0, 0.040, 0.040};
 * RevolvedShape rod = RevolvedShape.of("rod.csv", ProfilePoints.profile(r, z));
 * }</pre>
 *
 * <p>Range: 3 to 5,000 points, radii from 0 to 10 m, heights within 10 m. Everything else is a {@link Refusal} that
 * names the point: {@code profile-points}, {@code profile-number}, {@code profile-open}, {@code profile-crossing} or
 * {@code profile-flat}. Cost: every line is checked against every other, 12.5 million pairs for the most points.
 * Stateless from outside.
 */
public final class ProfilePoints {
    /** Most points that are accepted: every line is checked against every other. */
    public static final int MOST_POINTS = 5000;

    /** Name under which refusals report the outline. */
    private static final String FIELD = "profile";

    /** Of the size: what a drawing that was computed may be off by; a hundred million times finer than a mould is made. */
    private static final double ROUNDING = 1e-12;

    /** Radius of each point, m. */
    private final double[] r;
    /** Height of each point, m. */
    private final double[] z;

    private ProfilePoints(double[] r, double[] z) {
        this.r = r;
        this.z = z;
    }

    /**
     * {@return the profile through some points, moved along the axis so that the lowest is at height 0}
     *
     * @param radius distance of each point from the axis, m, 0 or more
     * @param height height of each point, m
     * @throws Refusal for an outline that is open, meets itself or encloses nothing, and for numbers out of range
     * @throws IllegalArgumentException for arrays of different length
     */
    public static Profile2D profile(double[] radius, double[] height) {
        if (radius.length != height.length) {
            throw new IllegalArgumentException(radius.length + " radii for " + height.length + " heights");
        }
        refuseNumbers(radius, height);
        ProfilePoints points = settled(radius.clone(), height.clone());
        boolean ring = points.refuseOpen();
        points.refuseMeeting(ring);
        return points.build();
    }

    /** Takes off what is no more than rounding, so that no line is so nearly level that its slope cannot be written. */
    private static ProfilePoints settled(double[] r, double[] z) {
        double size = 0;
        for (int i = 0; i < r.length; i++) {
            size = Math.max(size, Math.max(r[i], Math.abs(z[i] - z[0])));
        }
        double[] levels = z.clone();
        Arrays.sort(levels);
        double[] level = levels.clone();
        for (int k = 1; k < level.length; k++) {
            level[k] = levels[k] - levels[k - 1] <= ROUNDING * size ? level[k - 1] : levels[k];
        }
        int n = 0;
        for (int i = 0; i < r.length; i++) {
            r[n] = r[i] <= ROUNDING * size ? 0 : r[i];
            z[n] = level[Arrays.binarySearch(levels, z[i])];
            boolean again = n > 0 && z[n] == z[n - 1] && Math.abs(r[n] - r[n - 1]) <= ROUNDING * size;
            n += again ? 0 : 1;
        }
        return new ProfilePoints(Arrays.copyOf(r, n), Arrays.copyOf(z, n));
    }

    /** Refuses too few or too many points, negative radii and sizes that no unit explains. */
    private static void refuseNumbers(double[] r, double[] z) {
        if (r.length < 3 || r.length > MOST_POINTS) {
            throw new Refusal(
                    "profile-points",
                    FIELD,
                    r.length + " points",
                    "3 to " + MOST_POINTS + " points",
                    r.length < 3
                            ? "Give the outline from the axis at the bottom to the axis at the top."
                            : "Leave out points: a line of a tenth of a millimetre is fine enough.");
        }
        for (int i = 0; i < r.length; i++) {
            if (!(r[i] >= 0 && r[i] <= 10 && Math.abs(z[i]) <= 10)) {
                throw new Refusal(
                        "profile-number",
                        FIELD,
                        "point " + (i + 1) + " at " + place(r[i], z[i]),
                        "a radius from 0 to 10 m and a height within 10 m",
                        r[i] < 0 ? "Draw one half of the outline only, right of the axis." : "Check the unit.");
            }
        }
    }

    /** Whether the outline returns to its first point; refuses one that ends elsewhere off the axis. */
    private boolean refuseOpen() {
        int last = r.length - 1;
        if (r[0] == r[last] && z[0] == z[last]) {
            return true;
        }
        if (r[0] == 0 && r[last] == 0) {
            return false;
        }
        // the end that is off the axis
        int open = r[0] == 0 ? last : 0;
        throw new Refusal(
                "profile-open",
                FIELD,
                (open == 0 ? "a first point at " : "a last point at ") + place(r[open], z[open]),
                "an outline from the axis to the axis, or one that ends where it began",
                "Add a point on the axis, r = 0, or repeat the first point at the end.");
    }

    /**
     * Refuses an outline two of whose lines touch or cross, but for neighbours, which share a point and must not run
     * back.
     */
    private void refuseMeeting(boolean ring) {
        // lines of the outline, the i-th from point i to point i + 1
        int lines = r.length - 1;
        for (int i = 0; i < lines; i++) {
            for (int j = i + 1; j < lines; j++) {
                boolean next = j == i + 1 || (ring && i == 0 && j == lines - 1);
                if (onAxis(i) || onAxis(j) || !(next ? foldsBack(i, j) : meet(i, j))) {
                    continue;
                }
                throw new Refusal(
                        "profile-crossing",
                        FIELD,
                        "an outline that meets itself near " + place(r[j], z[j]) + ", where the line from point "
                                + (i + 1) + " to " + (i + 2) + " meets that from " + (j + 1) + " to " + (j + 2),
                        "an outline that never meets itself",
                        "Give the points in the order in which they follow one another round the outline.");
            }
        }
    }

    /** Whether a line lies on the axis: it sweeps nothing and may be met. */
    private boolean onAxis(int line) {
        return r[line] == 0 && r[line + 1] == 0;
    }

    /** Whether two lines that share a point run back over each other. */
    private boolean foldsBack(int i, int j) {
        // parallel and against each other
        double ur = r[i + 1] - r[i];
        double uz = z[i + 1] - z[i];
        double wr = r[j + 1] - r[j];
        double wz = z[j + 1] - z[j];
        return ur * wz == uz * wr && ur * wr + uz * wz < 0;
    }

    /** Whether two lines touch or cross: each has the ends of the other on both sides, or one on it. */
    private boolean meet(int i, int j) {
        // apart already by their boxes
        if (Math.max(r[i], r[i + 1]) < Math.min(r[j], r[j + 1])
                || Math.max(r[j], r[j + 1]) < Math.min(r[i], r[i + 1])
                || Math.max(z[i], z[i + 1]) < Math.min(z[j], z[j + 1])
                || Math.max(z[j], z[j + 1]) < Math.min(z[i], z[i + 1])) {
            return false;
        }
        return side(i, j) * side(i, j + 1) <= 0 && side(j, i) * side(j, i + 1) <= 0;
    }

    /** On which side of a line a point lies: 1 left, -1 right, 0 on it. */
    private double side(int line, int point) {
        return Math.signum(
                (r[line + 1] - r[line]) * (z[point] - z[line]) - (z[line + 1] - z[line]) * (r[point] - r[line]));
    }

    /** The profile: every line that is neither level nor on the axis becomes a piece. */
    private Profile2D build() {
        // twice the signed area of the outline: positive where it runs with the body on its left
        double area = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double size = 0;
        for (int i = 0; i < r.length; i++) {
            int j = (i + 1) % r.length;
            area += r[i] * (z[j] - z[0]) - r[j] * (z[i] - z[0]);
            lowest = Math.min(lowest, z[i]);
            size = Math.max(size, Math.max(r[i], Math.abs(z[i] - z[0])));
        }
        if (!(Math.abs(area) > 1e-9 * size * size)) {
            throw new Refusal(
                    "profile-flat",
                    FIELD,
                    "an outline that encloses nothing",
                    "an outline around the section of a body",
                    "Give the outline, not a single line.");
        }
        Profile2D.Builder builder = Profile2D.builder();
        for (int i = 0; i + 1 < r.length; i++) {
            if (z[i] != z[i + 1] && !onAxis(i)) {
                addLine(builder, i, area > 0, lowest);
            }
        }
        return builder.build();
    }

    /** With the body on the left of the way round, a line that goes up bounds it from outside. */
    private void addLine(Profile2D.Builder builder, int line, boolean bodyOnTheLeft, double lowest) {
        // pieces run upward, whichever way the outline does
        boolean up = z[line + 1] > z[line];
        int low = up ? line : line + 1;
        int high = up ? line + 1 : line;
        Profile2D.Builder side = up == bodyOnTheLeft ? builder.outer() : builder.inner();
        side.line(z[low] - lowest, r[low], z[high] - lowest, r[high]);
    }

    /** A point as refusals show it. */
    private static String place(double r, double z) {
        return "r = " + millimetres(r) + " mm, z = " + millimetres(z) + " mm";
    }

    /** A length in mm, to a thousandth. */
    private static double millimetres(double metres) {
        return Math.rint(metres * 1e6) / 1e3;
    }
}
