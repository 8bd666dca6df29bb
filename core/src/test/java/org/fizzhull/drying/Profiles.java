package org.fizzhull.drying;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.geometry.DepthProfile;

/** Depth profiles of closed forms, tabulated for tests; the area is entered exactly. */
public final class Profiles {
    private Profiles() {}

    static DepthProfile of(double deepest, int nodes, DoubleUnaryOperator volume, DoubleUnaryOperator area) {
        double[] d = new double[nodes + 1];
        double[] v = new double[nodes + 1];
        double[] a = new double[nodes + 1];
        for (int i = 0; i <= nodes; i++) {
            d[i] = deepest * i / nodes;
            v[i] = i == nodes ? 0 : volume.applyAsDouble(d[i]);
            a[i] = area.applyAsDouble(d[i]);
        }
        return new DepthProfile(d, v, a, 0);
    }

    public static DepthProfile ball(double radius) {
        return of(
                radius,
                200,
                d -> 4 * Math.PI / 3 * Math.pow(radius - d, 3),
                d -> 4 * Math.PI * (radius - d) * (radius - d));
    }

    /** Both faces open, 1 m2 each. */
    static DepthProfile slab(double half) {
        return of(half, 2, d -> 2 * (half - d), d -> 2);
    }

    /** Unit length of a long cylinder, ends closed. */
    public static DepthProfile longCylinder(double radius) {
        return of(radius, 200, d -> Math.PI * (radius - d) * (radius - d), d -> 2 * Math.PI * (radius - d));
    }

    /** Half ball resting on an impermeable tray. */
    static DepthProfile domeOnTray(double radius) {
        return of(
                radius,
                200,
                d -> 2 * Math.PI / 3 * Math.pow(radius - d, 3),
                d -> 2 * Math.PI * (radius - d) * (radius - d));
    }

    /** Half ball, all faces open: at depth d a spherical cap of radius R - d above the plane z = d. */
    static DepthProfile domeOnRack(double radius) {
        return of(
                radius / 2,
                400,
                d -> {
                    double r = radius - d;
                    double h = Math.max(0, r - d);
                    return Math.PI * h * h * (3 * r - h) / 3;
                },
                d -> {
                    double r = radius - d;
                    double h = Math.max(0, r - d);
                    return 2 * Math.PI * r * h + Math.PI * Math.max(0, r * r - d * d);
                });
    }

    /** Cylinder, all faces open. */
    static DepthProfile cylinder(double diameter, double height) {
        double deepest = Math.min(diameter, height) / 2;
        return of(
                deepest,
                400,
                d -> Math.PI / 4 * Math.pow(diameter - 2 * d, 2) * (height - 2 * d),
                d -> Math.PI / 2 * Math.pow(diameter - 2 * d, 2) + Math.PI * (diameter - 2 * d) * (height - 2 * d));
    }

    /** Block, all faces open. */
    static DepthProfile block(double a, double b, double c) {
        double deepest = Math.min(a, Math.min(b, c)) / 2;
        return of(
                deepest,
                400,
                d -> (a - 2 * d) * (b - 2 * d) * (c - 2 * d),
                d -> 2 * ((a - 2 * d) * (b - 2 * d) + (b - 2 * d) * (c - 2 * d) + (a - 2 * d) * (c - 2 * d)));
    }
}
