package org.fizzhull.validation.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.BesselJ;

/**
 * Fractions done of diffusion with a constant coefficient and a skin at once dry, by series: products for cylinder and
 * block (Newman's rule, in Crank 1975), spherical waves of odd order for the half ball with all faces open, which vanish on
 * its flat face. Lengths in units of the one whose square the Fourier number carries.
 */
final class DiffusionSeries {
    private static final int TERMS = 60;
    private static final int ORDERS = 25;
    private static final double HIGHEST = 45;

    private static final double[] RODS = rods();

    /** Decay k2 and share of each wave of the half ball. */
    private static final List<double[]> WAVES = waves();

    private DiffusionSeries() {}

    /** Part left in a slab of a half thickness. */
    static double slab(double half, double fo) {
        double sum = 0;
        for (int n = 0; n < TERMS; n++) {
            double odd = (2 * n + 1) * Math.PI;
            sum += 8 / (odd * odd) * Math.exp(-odd * odd * fo / (4 * half * half));
        }
        return sum;
    }

    /** Part left in a long rod of a radius. */
    static double rod(double radius, double fo) {
        double sum = 0;
        for (double a : RODS) {
            sum += 4 / (a * a) * Math.exp(-a * a * fo / (radius * radius));
        }
        return sum;
    }

    private static double[] rods() {
        double[] zeros = new double[TERMS];
        for (int n = 1; n <= TERMS; n++) {
            zeros[n - 1] = zero(0, (n - 0.25) * Math.PI - 0.6, (n - 0.25) * Math.PI + 0.6);
        }
        return zeros;
    }

    /** Part left in half a ball of radius 1, all faces open. */
    static double halfBall(double fo) {
        double sum = 0;
        for (double[] wave : WAVES) {
            sum += wave[1] * Math.exp(-wave[0] * fo);
        }
        return sum;
    }

    private static List<double[]> waves() {
        List<double[]> waves = new ArrayList<>();
        for (int l = 1; l <= ORDERS; l += 2) {
            double angle = (2 * l + 1) * square(legendre(l));
            double step = 0.2;
            for (double x = l + 0.5; x < HIGHEST; x += step) {
                if (wave(l, x) * wave(l, x + step) < 0) {
                    double k = zero(l + 0.5, x, x + step);
                    double norm = square(wave(l + 1, k)) / 2;
                    waves.add(new double[] {k * k, 3 * angle * square(mean(l, k)) / norm});
                }
            }
        }
        return waves;
    }

    /** Fo at which the part {@code done} is gone. */
    static double time(DoubleUnaryOperator left, double done) {
        double low = 1e-4;
        double high = 2;
        for (int i = 0; i < 60; i++) {
            double middle = Math.sqrt(low * high);
            if (1 - left.applyAsDouble(middle) < done) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double square(double x) {
        return x * x;
    }

    /** Spherical Bessel function j. */
    private static double wave(int l, double x) {
        return Math.sqrt(Math.PI / (2 * x)) * BesselJ.value(l + 0.5, x);
    }

    /** Integral of r2 j(k r) from 0 to 1, Simpson's rule. */
    private static double mean(int l, double k) {
        int n = 200;
        double sum = wave(l, k);
        for (int i = 1; i < n; i++) {
            double r = (double) i / n;
            sum += (i % 2 == 1 ? 4 : 2) * r * r * wave(l, k * r);
        }
        return sum / (3 * n);
    }

    /** Integral of the Legendre polynomial of odd order from 0 to 1: (P(l-1) at 0 less P(l+1) at 0)/(2 l + 1). */
    private static double legendre(int l) {
        return (atZero(l - 1) - atZero(l + 1)) / (2 * l + 1);
    }

    private static double atZero(int even) {
        double p = 1;
        for (int n = 2; n <= even; n += 2) {
            p *= -(n - 1.0) / n;
        }
        return p;
    }

    /** Zero of the Bessel function of an order between two places of unlike sign. */
    private static double zero(double order, double from, double to) {
        double low = from;
        double high = to;
        double sign = Math.signum(BesselJ.value(order, low));
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            if (Math.signum(BesselJ.value(order, middle)) == sign) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
