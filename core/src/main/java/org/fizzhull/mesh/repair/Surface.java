package org.fizzhull.mesh.repair;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * One closed surface of a mesh: a body, or a cavity in one, with its box and its volume by three fluxes, those of x, y and
 * z through it, which on a closed surface are one. With corners a, b, c, u = b - a, w = c - a and n = u x w the flux of x
 * through a facet is {@code (3 a_x + u_x + w_x) n_x / 6}.
 */
final class Surface {
    /** Thickness of a flat body as a part of its largest side; float32 coordinates hold seven digits. */
    private static final double FLAT = 1e-9;

    /** Largest difference between the volumes by x, y and z, as a part of the volume. */
    private static final double FLUX_TOLERANCE = 1e-6;

    private int facets;
    private final double[] flux = new double[3];
    private final double[] low = new double[3];
    private final double[] high = new double[3];
    private double area;

    /** What rounding may have added to a flux, m3: of a needle more than its volume. */
    private double rounding;

    /** Of no facet yet. */
    Surface() {
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
    }

    /**
     * Adds a facet.
     *
     * @param origin a point near the body, m, so that large offsets cost no digits
     */
    void add(TriangleMesh mesh, int f, double[] origin) {
        facets++;
        double square = 0;
        double first = 0;
        double second = 0;
        double reach = 0;
        for (int k = 0; k < 3; k++) {
            double a = mesh.at(mesh.corner(f, 0), k);
            double b = mesh.at(mesh.corner(f, 1), k);
            double c = mesh.at(mesh.corner(f, 2), k);
            double n = FaceSets.doubled(mesh, f, (k + 1) % 3, (k + 2) % 3);
            square += n * n;
            flux[k] += (3 * (a - origin[k]) + (b - a) + (c - a)) * n / 6;
            first += (b - a) * (b - a);
            second += (c - a) * (c - a);
            reach += Math.abs(a - origin[k]);
            low[k] = Math.min(low[k], Math.min(a, Math.min(b, c)));
            high[k] = Math.max(high[k], Math.max(a, Math.max(b, c)));
        }
        area += Math.sqrt(square) / 2;
        rounding += Math.ulp(Math.sqrt(first * second) * reach);
    }

    /** Number of facets. */
    int facets() {
        return facets;
    }

    /** Signed volume, m3; below 0 for a cavity. */
    double volume() {
        return (flux[0] + flux[1] + flux[2]) / 3;
    }

    /** Whether it encloses no more than a volume, m3, than a flat body, or than rounding makes. */
    boolean slight(double volume) {
        double side = Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
        return !(Math.abs(volume()) > Math.max(volume, Math.max(FLAT * area * side, rounding)));
    }

    /** Whether the fluxes of x, y and z are one but for rounding, as those of every closed surface are. */
    boolean closed() {
        double most = Math.max(flux[0], Math.max(flux[1], flux[2]));
        double least = Math.min(flux[0], Math.min(flux[1], flux[2]));
        return most - least <= FLUX_TOLERANCE * Math.abs(volume()) + rounding;
    }

    /** Whether its box lies inside the box of another. */
    boolean boxInside(Surface outer) {
        for (int k = 0; k < 3; k++) {
            if (!(low[k] >= outer.low[k] && high[k] <= outer.high[k])) {
                return false;
            }
        }
        return true;
    }

    /** Middle of the box, in words. */
    String middle() {
        return PlaceWords.point((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    }

    /** Counts it as turned to face the other way. */
    void turn() {
        Arrays.setAll(flux, k -> -flux[k]);
    }
}
