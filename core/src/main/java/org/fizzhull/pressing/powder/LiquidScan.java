package org.fizzhull.pressing.powder;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;

/**
 * Collects, draw by draw, how pieces feel with more and less of the recipe's liquid, and reads the {@link Pressed.LiquidWindow}
 * off the shares. The amounts rise by a constant factor from 0.2 % of the powder to twice its mass; the recipe's own
 * amount is one of them, so that the window holds it exactly where the recipe itself is judged to hold. Between two
 * amounts the edge is interpolated: within 2 % of the edge of the true shares for shares that are straight there.
 *
 * <p>Rows may be written by several threads, each its own; {@link #window} is asked afterwards.
 */
public final class LiquidScan {
    /** Smallest amount but none, kg per kg of dry powder. */
    private static final double LEAST = 2e-3;
    /** Largest amount, kg per kg of dry powder: far beyond too wet for any powder. */
    private static final double MOST = 2;
    /** Ratio of one amount to the one before. */
    private static final double STEP = 1.15;

    /** Liquid per dry powder, kg/kg, rising from 0. */
    private final double[] ratios;
    /** Index of the recipe's own amount. */
    private final int own;
    /** By draw and amount: -1 crumbles, 0 holds, 1 too wet. Bytes, since a forecast has thousands of draws. */
    private final byte[][] feels;

    /**
     * Lays out the amounts.
     *
     * @param ownRatio the recipe's liquid per dry powder, kg/kg, 0 or more
     * @param draws number of draws, each a row to be written
     */
    public LiquidScan(double ownRatio, int draws) {
        int steps = (int) Math.ceil(Math.log(MOST / LEAST) / Math.log(STEP));
        DoubleStream scanned = IntStream.rangeClosed(0, steps).mapToDouble(k -> LEAST * Math.pow(STEP, k));
        ratios = DoubleStream.concat(DoubleStream.of(0, ownRatio), scanned)
                .distinct()
                .sorted()
                .toArray();
        own = Arrays.binarySearch(ratios, ownRatio);
        feels = new byte[draws][ratios.length];
    }

    /**
     * Finds how the pieces of one draw feel at every amount and stores it.
     *
     * @param row index of the draw, from 0
     * @param press mix of the draw under its press
     * @param topPressure pressure at the top of the mould in the draw, Pa
     * @param mould mould that is filled
     * @param found how the piece of the recipe itself feels in this draw
     */
    public void write(int row, Press press, double topPressure, MouldDimensions mould, Pressed.Feel found) {
        // a range of the liquid in the recipe: its draw stands for the recipe's own amount
        double drawn = press.blend().liquid().ratio();
        double scale = ratios[own] > 0 ? drawn / ratios[own] : 1;
        double[] amounts = new double[ratios.length];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = ratios[i] * scale;
        }
        Pressed.Feel[] each = new Pressed.Feel[amounts.length];
        press.feels(amounts, topPressure, mould, each);
        each[own] = found;
        for (int i = 0; i < each.length; i++) {
            feels[row][i] = code(each[i]);
        }
    }

    /** The feel as it is stored in a row. */
    private static byte code(Pressed.Feel feel) {
        return switch (feel) {
            case CRUMBLES -> -1;
            case HOLDS -> 0;
            case TOO_WET -> 1;
        };
    }

    /** {@return the window of all draws, once every row is written} */
    public Pressed.LiquidWindow window() {
        int n = ratios.length;
        // share of the draws that hold, and its lead over the larger of the two other shares
        double[] holds = new double[n];
        double[] lead = new double[n];
        for (int i = 0; i < n; i++) {
            double held = 0;
            double dry = 0;
            for (byte[] row : feels) {
                held += row[i] == 0 ? 1 : 0;
                dry += row[i] < 0 ? 1 : 0;
            }
            double wet = feels.length - held - dry;
            holds[i] = held / feels.length;
            lead[i] = (held - Math.max(dry, wet)) / feels.length;
        }
        // start from the recipe's own amount if it is inside, and go out to both sides while the lead lasts
        int best = best(holds);
        int inside = lead[own] >= 0 ? own : best;
        if (lead[inside] < 0) {
            return new Pressed.LiquidWindow(ratios[inside], ratios[inside], ratios[inside], holds[inside]);
        }
        int first = inside;
        while (first > 0 && lead[first - 1] >= 0) {
            first--;
        }
        int last = inside;
        while (last < n - 1 && lead[last + 1] >= 0) {
            last++;
        }
        double low = first == 0 ? 0 : crossing(first, first - 1, lead);
        double high = last == n - 1 ? ratios[last] : crossing(last, last + 1, lead);
        return new Pressed.LiquidWindow(low, high, ratios[best], holds[best]);
    }

    /** Middle of the amounts at which most hold. */
    private static int best(double[] holds) {
        int first = 0;
        for (int i = 1; i < holds.length; i++) {
            first = holds[i] > holds[first] ? i : first;
        }
        int last = first;
        while (last < holds.length - 1 && holds[last + 1] == holds[first]) {
            last++;
        }
        return (first + last) / 2;
    }

    /** The amount at which the lead is 0, between one inside and its neighbour outside, by linear interpolation. */
    private double crossing(int inside, int outside, double[] lead) {
        double share = lead[inside] / (lead[inside] - lead[outside]);
        return ratios[inside] + share * (ratios[outside] - ratios[inside]);
    }
}
