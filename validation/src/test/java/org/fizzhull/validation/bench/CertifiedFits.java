package org.fizzhull.validation.bench;

import org.fizzhull.learn.fit.Laplace;
import org.fizzhull.learn.fit.LeastSquaresFit;

/** Data sets of NIST's Statistical Reference Datasets, nonlinear regression, fitted on the path that learns a bench. */
enum CertifiedFits {
    /** y = b1 (1 - exp(-b2 x)), dental research, 14 observations; b2 in units of 1e-4. */
    MISRA_1A(
            new double[] {500, 1},
            new double[] {1, 1e-4},
            new double[] {
                77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
            },
            new double[] {
                10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
            }) {
        @Override
        double at(double[] b, double x) {
            return b[0] * (1 - Math.exp(-b[1] * x));
        }
    },

    /** y = exp(-b1 x)/(b2 + b3 x), ultrasonic calibration, 54 observations; b2 and b3 in units of 1e-2. */
    CHWIRUT_2(
            new double[] {0.1, 1, 2},
            new double[] {1, 1e-2, 1e-2},
            new double[] {
                0.5, 1, 1.75, 3.75, 5.75, 0.875, 2.25, 3.25, 5.25, 0.75, 1.75, 2.75, 4.75, 0.625, 1.25, 2.25, 4.25, 0.5,
                3, 0.75, 3, 1.5, 6, 3, 6, 1.5, 3, 0.5, 2, 4, 0.75, 2, 5, 0.75, 2.25, 3.75, 5.75, 3, 0.75, 2.5, 4, 0.75,
                2.5, 4, 0.75, 2.5, 4, 0.5, 6, 3, 0.5, 2.75, 0.5, 1.75
            },
            new double[] {
                92.9, 57.1, 31.05, 11.5875, 8.025, 63.6, 21.4, 14.25, 8.475, 63.8, 26.8, 16.4625, 7.125, 67.3, 41,
                21.15, 8.175, 81.5, 13.12, 59.9, 14.62, 32.9, 5.44, 12.56, 5.44, 32, 13.95, 75.8, 20, 10.42, 59.5,
                21.67, 8.55, 62, 20.2, 7.76, 3.75, 11.81, 54.7, 23.7, 11.55, 61.3, 17.7, 8.74, 59.2, 16.3, 8.62, 81,
                4.87, 14.62, 81.7, 17.17, 81.3, 28.9
            }) {
        @Override
        double at(double[] b, double x) {
            return Math.exp(-b[0] * x) / (b[1] + b[2] * x);
        }
    };

    /** Step of the differences, share of the start. */
    private static final double STEP = 1e-5;

    private final double[] start;
    private final double[] units;
    private final double[] x;
    private final double[] y;

    CertifiedFits(double[] start, double[] units, double[] x, double[] y) {
        this.start = start;
        this.units = units;
        this.x = x;
        this.y = y;
    }

    abstract double at(double[] b, double x);

    /** What the fit finds: {@code b1}, {@code b2}, ... , {@code deviation of b1}, ... or {@code sum of squares}. */
    double found(String what) {
        double[] steps = new double[start.length];
        for (int k = 0; k < steps.length; k++) {
            steps[k] = STEP * start[k];
        }
        Laplace law = LeastSquaresFit.find(this::residuals, start, steps);
        double squares = 0;
        for (double off : residuals(law.mean())) {
            squares += off * off;
        }
        if (what.equals("sum of squares")) {
            return squares;
        }
        int k = what.charAt(what.length() - 1) - '1';
        return what.startsWith("deviation")
                ? units[k] * Math.sqrt(squares / (y.length - start.length) * law.variance(k))
                : units[k] * law.mean()[k];
    }

    private double[] residuals(double[] scaled) {
        double[] b = new double[scaled.length];
        for (int k = 0; k < b.length; k++) {
            b[k] = units[k] * scaled[k];
        }
        double[] off = new double[y.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = y[i] - at(b, x[i]);
        }
        return off;
    }
}
