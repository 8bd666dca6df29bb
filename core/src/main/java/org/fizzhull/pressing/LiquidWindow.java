package org.fizzhull.pressing;

/**
 * Between how much liquid a mix crumbles and how much makes it too wet, kg of the recipe's liquid per kg of dry powder,
 * its own proportions kept. Empty where no amount holds.
 *
 * @param low least that holds
 * @param high most that is not too wet
 */
public record LiquidWindow(double low, double high) {
    private static final double MOST = 0.5;
    private static final int SCAN = 100;

    /** Whether some amount holds. */
    public boolean isEmpty() {
        return !(low < high);
    }

    /** The window of a mix under a top pressure, Pa: scanned at half-percent steps, both ends bisected to 1e-6. */
    public static LiquidWindow of(Press press, double topPressure, Mould mould) {
        double low = Double.NaN;
        Feel before = press.withLiquid(0).press(topPressure, mould).feel();
        for (int i = 1; i <= SCAN; i++) {
            double ratio = MOST * i / SCAN;
            Feel now = press.withLiquid(ratio).press(topPressure, mould).feel();
            if (Double.isNaN(low) && now == Feel.HOLDS) {
                low = edge(press, topPressure, mould, ratio - MOST / SCAN, ratio, Feel.HOLDS);
            }
            if (now == Feel.TOO_WET) {
                double high = before == Feel.TOO_WET
                        ? 0
                        : edge(press, topPressure, mould, ratio - MOST / SCAN, ratio, Feel.TOO_WET);
                return new LiquidWindow(Double.isNaN(low) ? high : low, high);
            }
            before = now;
        }
        return new LiquidWindow(Double.isNaN(low) ? MOST : low, MOST);
    }

    private static double edge(Press press, double pressure, Mould mould, double from, double to, Feel wanted) {
        double a = from;
        double b = to;
        while (b - a > 1e-6) {
            double middle = 0.5 * (a + b);
            if (press.withLiquid(middle).press(pressure, mould).feel() == wanted) {
                b = middle;
            } else {
                a = middle;
            }
        }
        return b;
    }
}
