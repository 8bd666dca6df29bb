package org.fizzhull.pressing.powder;

import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.check.Given;

/**
 * The {@link Pressed.LiquidWindow} of one mix, without draws: scanned in steps of 0.5 % of the powder, both ends then bisected to
 * 1e-6. Cost: some 150 presses. Stateless.
 */
public final class WindowScan {
    /** Largest amount of the scan, kg per kg of dry powder: what a recipe may hold at most. */
    private static final double MOST = 0.5;
    /** Steps of the scan. */
    private static final int SCAN = 100;

    private WindowScan() {}

    /**
     * {@return the window of one mix under one pressure}
     *
     * @param press mix under a press
     * @param topPressure pressure at the top of the mould, Pa, 0 to 2 MPa
     * @param mould mould that is filled
     */
    public static Pressed.LiquidWindow of(Press press, double topPressure, MouldDimensions mould) {
        Given.all("press, mould", press, mould);
        double low = Double.NaN;
        Pressed.Feel before = press.withLiquid(0).press(topPressure, mould).feel();
        for (int i = 1; i <= SCAN; i++) {
            double ratio = MOST * i / SCAN;
            Pressed.Feel now = press.withLiquid(ratio).press(topPressure, mould).feel();
            if (Double.isNaN(low) && now == Pressed.Feel.HOLDS) {
                low = edge(press, topPressure, mould, ratio - MOST / SCAN, ratio, Pressed.Feel.HOLDS);
            }
            if (now == Pressed.Feel.TOO_WET) {
                double high = before == Pressed.Feel.TOO_WET
                        ? 0
                        : edge(press, topPressure, mould, ratio - MOST / SCAN, ratio, Pressed.Feel.TOO_WET);
                return certain(Double.isNaN(low) ? high : low, high);
            }
            before = now;
        }
        return certain(Double.isNaN(low) ? MOST : low, MOST);
    }

    /** A window between two amounts, whose middle holds for sure; empty where they are out of order. */
    private static Pressed.LiquidWindow certain(double low, double high) {
        return new Pressed.LiquidWindow(low, high, 0.5 * (low + high), low < high ? 1 : 0);
    }

    /** The amount at which the feel becomes the wanted one, kg/kg, to 1e-6. */
    private static double edge(
            Press press, double pressure, MouldDimensions mould, double from, double to, Pressed.Feel wanted) {
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
