package org.fizzhull.shape.body;

/**
 * Time constants of diffusion in closed form, m2: the mean over the body of u with {@code laplacian u = -1}, u = 0 on
 * the open faces (divide by the diffusivity for seconds).
 * <pre>
 *   block, sides a, b, c with c the longest and a the shortest, m and n odd:
 *     (8/pi^2)^2 SUM_mn (1 - tanh(x)/x)/(k^2 m^2 n^2),   k = pi sqrt((m/b)^2 + (n/a)^2),   x = k c/2
 *   cylinder, radius R and height H, J0(j_n) = 0:
 *     4 R^2 SUM_n (1 - tanh(y)/y)/j_n^4,                 y = j_n H/(2R)
 * </pre>
 *
 * <p>Source of both series: separation of variables (J. Crank, The Mathematics of Diffusion, 1975, chapters 4 to 6, as
 * cited in docs/physics/drying.md, 4); checked against a solution on a lattice. Range: every face open; a shut base is
 * that of a body of twice the height. Error: below 1e-4 of itself. Cost: some tens of terms, more for thin plates and
 * long rods. Stateless. Everything else is solved on a lattice: {@link org.fizzhull.geometry.Hull#diffusionTime}.
 */
public final class DryingSeries {
    /** First zero of the Bessel function J0 (Abramowitz and Stegun, table 9.5; from memory). */
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
        // the sum along the longest side is closed: tanh; more terms across a flat one
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
