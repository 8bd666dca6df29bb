package org.fizzhull.shape;

import org.fizzhull.quantity.Refusal;

/** What an outline must be before it is turned into a body: finite, on one side of the axis, and free of crossings. */
final class MeridianCheck {
    private static final String FIELD = "shape: file";

    private MeridianCheck() {}

    static void numbers(double[] radius, double[] height, int fewest, int most) {
        if (radius.length < fewest || radius.length > most) {
            throw new Refusal(
                    "profile-points",
                    FIELD,
                    radius.length + " points",
                    fewest + " to " + most + " points",
                    radius.length > most ? "Every tenth point will do: a chord of 1 mm is within 0.01 mm of an arc." : "");
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        for (int i = 0; i < radius.length; i++) {
            if (!(radius[i] >= 0 && radius[i] < Double.POSITIVE_INFINITY && Math.abs(height[i]) < 1e6)) {
                throw new Refusal(
                        "profile-point",
                        FIELD,
                        "point " + (i + 1) + ": " + point(radius[i], height[i]),
                        "a radius of 0 or more and a height, both finite",
                        radius[i] < 0 ? "Give one side of the axis only; radii are half of what is measured across." : "");
            }
            low = Math.min(low, height[i]);
            high = Math.max(high, height[i]);
            widest = Math.max(widest, radius[i]);
        }
        SizeCheck.size("diameter", 2 * widest);
        SizeCheck.height(high - low);
    }

    /** Refuses edges that cross or touch others than their neighbours; corners on the axis may lie on one another. */
    static void simple(double[] r, double[] z) {
        int n = r.length;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean neighbours = j == i + 1 || (i == 0 && j == n - 1);
                if (!neighbours && meet(r, z, i, (i + 1) % n, j, (j + 1) % n)) {
                    throw new Refusal(
                            "crossing-profile",
                            FIELD,
                            "the line from " + point(r[i], z[i]) + " meets the one from " + point(r[j], z[j]),
                            "an outline that neither crosses nor touches itself",
                            "List the points in order along the outline.");
                }
            }
        }
    }

    private static boolean meet(double[] r, double[] z, int a, int b, int c, int d) {
        double abc = side(r, z, a, b, c);
        double abd = side(r, z, a, b, d);
        double cda = side(r, z, c, d, a);
        double cdb = side(r, z, c, d, b);
        if (abc == 0 && abd == 0) {
            return within(r, z, a, b, c) || within(r, z, a, b, d) || within(r, z, c, d, a);
        }
        return abc * abd <= 0 && cda * cdb <= 0;
    }

    private static double side(double[] r, double[] z, int a, int b, int p) {
        return (r[b] - r[a]) * (z[p] - z[a]) - (r[p] - r[a]) * (z[b] - z[a]);
    }

    private static boolean within(double[] r, double[] z, int a, int b, int p) {
        return r[p] >= Math.min(r[a], r[b])
                && r[p] <= Math.max(r[a], r[b])
                && z[p] >= Math.min(z[a], z[b])
                && z[p] <= Math.max(z[a], z[b]);
    }

    static String point(double r, double z) {
        return "radius " + SizeText.mm(r) + ", height " + SizeText.mm(z);
    }
}
