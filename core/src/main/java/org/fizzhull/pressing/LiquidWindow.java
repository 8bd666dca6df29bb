package org.fizzhull.pressing;

/**
 * How much liquid a mix takes: the amounts at which a piece holds rather than crumbles or is too wet. With draws, an
 * amount lies inside where at least as many draws hold as crumble and as are too wet, so that the window and the
 * verdict on the recipe's own amount never disagree. All amounts are kg of the recipe's liquid per kg of dry powder,
 * its proportions kept.
 *
 * @param low least inside; not below {@code high} where no amount is inside
 * @param high most inside
 * @param best amount at which most hold, its middle where several do
 * @param share of the draws that hold at the best, 0 to 1
 */
public record LiquidWindow(double low, double high, double best, double share) {
    /** Largest amount of the scan of one mix, kg per kg of dry powder: what a recipe may hold at most. */
    private static final double MOST = 0.5;
    /** Steps of the scan of one mix. */
    private static final int SCAN = 100;

    /** {@return whether no amount is inside} */
    public boolean isEmpty() {
        return !(low < high);
    }

    /**
     * {@return the window of one mix under one pressure, without draws: scanned in steps of 0.5 % of the powder, both ends then
     * bisected to 1e-6}
     *
     * @param press mix under a press
     * @param topPressure pressure at the top of the mould, Pa, 0 to 2 MPa
     * @param mould mould that is filled
     */
    public static LiquidWindow of(Press press, double topPressure, MouldDimensions mould) {
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
                return certain(Double.isNaN(low) ? high : low, high);
            }
            before = now;
        }
        return certain(Double.isNaN(low) ? MOST : low, MOST);
    }

    /** A window between two amounts, whose middle holds for sure; empty where they are out of order. */
    private static LiquidWindow certain(double low, double high) {
        return new LiquidWindow(low, high, 0.5 * (low + high), low < high ? 1 : 0);
    }

    /** The amount at which the feel becomes the wanted one, kg/kg, to 1e-6. */
    private static double edge(
            Press press, double pressure, MouldDimensions mould, double from, double to, Feel wanted) {
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
