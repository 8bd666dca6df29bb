package org.fizzhull.shape.kind;

/**
 * Time constants of diffusion in closed form, m2: the mean over the body of u with {@code laplacian u = -1}, u = 0 on
 * the open faces (divide by the diffusivity for seconds).
 *
 * <p>Source of both series: separation of variables, docs/physics/drying.md, 4; checked against a solution on a
 * lattice. Cost: some tens of terms, more for thin plates and long rods.
 */
public final class DryingSeries {
    private static final double FIRST_ZERO = 2.404825557695773;

    private DryingSeries() {}

    /**
     * {@return the time constant of a block of sides a, b, c, m, all faces open, m2: Fourier series, the sum along the
     * longest side in closed form}
     *
     * @param a one side, m, above 0
     * @param b another side, m, above 0
     * @param c the third side, m, above 0
     */
    public static double block(double a, double b, double c) {
        double longest = Math.max(a, Math.max(b, c));
        double shortest = Math.min(a, Math.min(b, c));
        double middle = a + b + c - longest - shortest;
        double unit = 8 / (Math.PI * Math.PI);
        double most = 60 * middle / shortest;
        double sum = 0;
        for (int m = 1; m < most; m += 2) {
            for (int n = 1; n < 60; n += 2) {
                double k = Math.PI * Math.hypot(m / middle, n / shortest);
                double x = k * longest / 2;
                sum += (1 - Math.tanh(x) / x) / (k * k * m * m * n * n);
            }
        }
        return unit * unit * sum;
    }

    /**
     * {@return the time constant of a cylinder, all faces open, m2: Bessel series, the axial sum in closed form} m.
     *
     * @param diameter diameter, m, above 0
     * @param height height, m, above 0
     */
    public static double cylinder(double diameter, double height) {
        double r = diameter / 2;
        double sum = 0;
        double term = 1;
        // terms fall as n^-2 up to n of diameter/height, a thin plate needs them all, then as n^-4
        for (int n = 1; n <= 20 || (term > 1e-10 * sum && n < 100000); n++) {
            double j = besselZero(n);
            double x = j * height / diameter;
            term = 4 / (j * j * j * j) * (1 - Math.tanh(x) / x);
            sum += term;
        }
        return sum * r * r;
    }

    /** Zero n of J0: McMahon's expansion (Abramowitz and Stegun 9.5.12 [from memory]), 1e-6 from n = 2. */
    private static double besselZero(int n) {
        if (n == 1) {
            return FIRST_ZERO;
        }
        double b = 8 * (n - 0.25) * Math.PI;
        double b3 = b * b * b;
        return b / 8 + 1 / b - 124 / (3 * b3) + 120928 / (15 * b3 * b * b);
    }
}
