package org.fizzhull.cli.picture;

/**
 * One axis: a range of values on a range of pixels, with ticks at 1, 2 or 5 times a power of ten.
 *
 * @param low value at the start
 * @param high value at the end
 * @param from pixel of the start
 * @param to pixel of the end
 * @param step from tick to tick
 */
public record Axis(double low, double high, double from, double to, double step) {
    /** An axis whose ends are ticks and that holds both values with about so many steps. */
    public static Axis of(double least, double most, double from, double to, int steps) {
        double raw = (most - least) / steps;
        double ten = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = raw <= ten ? ten : raw <= 2 * ten ? 2 * ten : raw <= 5 * ten ? 5 * ten : 10 * ten;
        return new Axis(Math.floor(least / step) * step, Math.ceil(most / step - 1e-9) * step, from, to, step);
    }

    /** Pixel of a value. */
    public double at(double value) {
        return from + (to - from) * (value - low) / (high - low);
    }

    /** The ticks. */
    public double[] ticks() {
        int count = (int) Math.round((high - low) / step) + 1;
        double[] ticks = new double[count];
        for (int i = 0; i < count; i++) {
            ticks[i] = low + i * step;
        }
        return ticks;
    }
}
