package org.fizzhull.shape.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.DepthByBruteForceTest;
import org.fizzhull.shape.Shape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rounded blocks on a tray against a grid of distances to their open patches: five flats, twelve quarter cylinders,
 * eight octants; mm. Tolerance as in {@link DepthByBruteForceTest}, with a coarser grid in three dimensions:
 * (1/80)^2 = 1.6e-4 times
 * a few cells of kinks.
 */
class RoundedBlockOnTrayTest {
    private static final int CELLS = 80;
    private static final double TOLERANCE = 1e-3;

    @ParameterizedTest
    @CsvSource({"60, 40, 30, 8", "50, 30, 60, 12", "40, 40, 20, 0"})
    void gridOfDistances(double l, double w, double h, double e) {
        Shape block = Block.ofSidesAndEdge(l / 1e3, w / 1e3, h / 1e3, e / 1e3);
        DepthProfile profile = block.depthProfile(DepthProfile.Exposure.TRAY);
        double deepest = profile.deepest() * 1e3;
        double cell = Math.max(l, Math.max(w, h)) / CELLS;
        double[] left = new double[10];
        for (double x = cell / 2; x < l / 2 + cell; x += cell) {
            for (double y = cell / 2; y < w / 2 + cell; y += cell) {
                for (double z = cell / 2; z < h + cell; z += cell) {
                    double to = distance(x, y, z, l / 2 - e, w / 2 - e, h, e);
                    for (int k = 0; k < left.length; k++) {
                        double d = deepest * (k + 0.5) / left.length;
                        left[k] += 4 * cell * cell * cell * Math.max(0, Math.min(1, 0.5 + (to - d) / cell));
                    }
                }
            }
        }
        for (int k = 0; k < left.length; k++) {
            double d = deepest * (k + 0.5) / left.length;
            assertThat(profile.volume(d / 1e3) * 1e9)
                    .as("at %.2f mm", d)
                    .isCloseTo(left[k], within(TOLERANCE * l * w * h));
        }
    }

    /** Distance of a point of the quarter x, y &gt; 0 to the open faces, negative outside; core half sides a, b. */
    private static double distance(double x, double y, double z, double a, double b, double h, double e) {
        double least = Math.abs(h - z) + 0.0;
        least = Math.hypot(least, over(x, a, y, b));
        least = Math.min(least, Math.hypot(a + e - x, over(y, b, Math.abs(z - h / 2), h / 2 - e)));
        least = Math.min(least, Math.hypot(b + e - y, over(x, a, Math.abs(z - h / 2), h / 2 - e)));
        // Quarter cylinders: two flat rims, and the upright edge.
        for (double end : new double[] {e, h - e}) {
            double out = end == e ? e - z : z - (h - e);
            least = Math.min(least, Math.hypot(arc(x - a, out, e), over(y, b, 0, 0)));
            least = Math.min(least, Math.hypot(arc(y - b, out, e), over(x, a, 0, 0)));
            if (x > a && y > b && out > 0) {
                least = Math.min(least, Math.abs(e - Math.sqrt((x - a) * (x - a) + (y - b) * (y - b) + out * out)));
            }
        }
        double upright = arc(x - a, y - b, e);
        least = Math.min(least, Math.hypot(upright, over(Math.abs(z - h / 2), h / 2 - e, 0, 0)));
        return inside(x, y, z, a, b, h, e) ? least : -least;
    }

    private static boolean inside(double x, double y, double z, double a, double b, double h, double e) {
        double dx = Math.max(0, x - a);
        double dy = Math.max(0, y - b);
        double dz = Math.max(0, Math.abs(z - h / 2) - (h / 2 - e));
        return dx * dx + dy * dy + dz * dz <= e * e && x <= a + e && y <= b + e && z <= h;
    }

    /** How far a point lies beyond a patch of half sides p and q, in its plane. */
    private static double over(double u, double p, double v, double q) {
        return Math.hypot(Math.max(0, u - p), Math.max(0, v - q));
    }

    /** Distance in the plane to the quarter arc of radius e in u, v &gt; 0. */
    private static double arc(double u, double v, double e) {
        if (u >= 0 && v >= 0) {
            return Math.abs(e - Math.hypot(u, v));
        }
        return Math.min(Math.hypot(u - e, v), Math.hypot(u, v - e));
    }
}
