package org.fizzhull.cli.picture;

import org.fizzhull.quantity.Decimals;

/** A frame with two linear axes, ticks in steps of 1, 2 or 5 and grid lines; maps values to pixels. */
final class Axes {
    private static final String WORDS = "fill=\"#222\" font-size=\"12\"";
    private static final String GRID = "stroke=\"#e3e3e3\" stroke-width=\"1\"";
    private static final String FRAME = "stroke=\"#444\" stroke-width=\"1\"";

    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private final double xLow;
    private final double xHigh;
    private final double yLow;
    private final double yHigh;

    private Axes(double left, double top, double right, double bottom, double xHigh, double yLow, double yHigh) {
        this.left = left;
        this.top = top;
        this.right = right;
        this.bottom = bottom;
        xLow = 0;
        this.xHigh = xHigh;
        this.yLow = yLow;
        this.yHigh = yHigh;
    }

    /** A frame in pixels for values from 0 to {@code xHigh}, and from {@code yLow} to {@code yHigh} or a tick beyond. */
    static Axes of(
            double left, double top, double right, double bottom, double xHigh, double yLow, double yHigh, int ticks) {
        double step = step(yHigh - yLow, ticks);
        double from = Math.floor(yLow / step + 1e-9) * step;
        double to = Math.ceil(yHigh / step - 1e-9) * step;
        return new Axes(left, top, right, bottom, xHigh, from, to > from ? to : from + step);
    }

    /** The smallest step of 1, 2 or 5 times a power of ten that makes at most so many ticks. */
    static double step(double range, int most) {
        double rough = Math.max(range, 1e-9) / most;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= rough * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    double x(double value) {
        return left + (right - left) * (value - xLow) / (xHigh - xLow);
    }

    double y(double value) {
        return bottom - (bottom - top) * (value - yLow) / (yHigh - yLow);
    }

    double top() {
        return top;
    }

    double bottom() {
        return bottom;
    }

    /** Draws grid, frame and numbers, the axis of y titled above it; numbers of x only where there are words for them. */
    void draw(Svg svg, int xTicks, int yTicks, String xWords, String yWords) {
        double yStep = step(yHigh - yLow, yTicks);
        for (int k = 0; yLow + k * yStep <= yHigh + 1e-6 * yStep; k++) {
            double value = yLow + k * yStep;
            svg.line(left, y(value), right, y(value), GRID);
            svg.text(left - 8, y(value) + 4, WORDS + " text-anchor=\"end\"", Decimals.text(value, 5));
        }
        double xStep = step(xHigh - xLow, xTicks);
        for (int k = 0; xLow + k * xStep <= xHigh + 1e-6 * xStep; k++) {
            double value = xLow + k * xStep;
            svg.line(x(value), bottom, x(value), bottom + 5, FRAME);
            if (!xWords.isEmpty()) {
                svg.text(x(value), bottom + 19, WORDS + " text-anchor=\"middle\"", Decimals.text(value, 5));
            }
        }
        svg.line(left, bottom, right, bottom, FRAME);
        svg.line(left, top, left, bottom, FRAME);
        svg.text(left, top - 9, WORDS, yWords);
        if (!xWords.isEmpty()) {
            svg.text((left + right) / 2, bottom + 38, WORDS + " text-anchor=\"middle\"", xWords);
        }
    }
}
