package org.fizzhull.geometry;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What is left of a shape at inward depth d from its open faces: volume V(d), m3, and the area A(d) = -dV/dd, m2, of
 * the face that has moved in to d. The face moves along its own normal (the inward offset of the body). Fizzing is a
 * front that moves along d, drying is diffusion along d, gas clings to A: all three read this one table, whatever the
 * shape.
 *
 * <p>Between the nodes V is a cubic Hermite polynomial with the values {@code volume} and the slopes {@code -area}; A
 * is its exact derivative, so that A = -dV/dd holds everywhere and a volume integrated from A comes back to V:
 * <pre>{@code
 * DepthProfile left = Shapes.sphere(millimetres(65)).depthProfile(Exposure.ALL);
 * double half = left.volume(millimetres(6.7)) / left.volume(0);   // about a half is left
 * }</pre>
 *
 * <p>Range: d from 0 to {@link #deepest}; beyond it nothing is left; a negative depth or NaN is refused. Error: {@link
 * #relativeError}. Cost of a value: one binary search and one cubic. Made by {@link
 * org.fizzhull.shape.Shape#depthProfile}. Immutable, safe for use by several threads.
 */
public final class DepthProfile implements Serializable {
    private static final long serialVersionUID = 1;

    /** Nodes: inward depth, m, strictly rising from 0. */
    private final double[] depth;
    /** Volume left at each node, m3, falling. */
    private final double[] volume;
    /** Area of the moved face at each node, m2: minus the slope of the volume there. */
    private final double[] area;
    /** Bound on the relative error of V over the first 90 % of the volume. */
    private final double relativeError;

    /**
     * A profile through nodes, which are copied. Areas too large for the volumes around them would make the cubic
     * rise between two nodes: the caller sees to that, or uses {@link #falling}.
     *
     * @param depth nodes from 0 to the deepest point, strictly rising, m
     * @param volume volume left at each node, m3; falls to 0
     * @param area area of the moved face at each node, m2
     * @param relativeError bound on the relative error of V over the first 90 % of the volume; 0 for closed forms at
     *     the nodes
     * @throws IllegalArgumentException for fewer than two nodes, columns of different length, depths that do not rise
     *     from 0, volumes that rise, and values that are negative, NaN or infinite
     */
    public DepthProfile(double[] depth, double[] volume, double[] area, double relativeError) {
        if (depth.length < 2 || volume.length != depth.length || area.length != depth.length || depth[0] != 0) {
            throw new IllegalArgumentException("a depth profile needs equal columns that start at depth 0");
        }
        for (int i = 0; i < depth.length; i++) {
            boolean rising = i == 0 || (depth[i] > depth[i - 1] && volume[i] <= volume[i - 1]);
            boolean number = volume[i] >= 0 && area[i] >= 0 && Double.isFinite(volume[i]) && Double.isFinite(area[i]);
            if (!(rising && number)) {
                throw new IllegalArgumentException("a depth profile falls from node to node; node " + i + " does not");
            }
        }
        this.depth = depth.clone();
        this.volume = volume.clone();
        this.area = area.clone();
        this.relativeError = relativeError;
    }

    /**
     * {@return a profile through nodes whose areas are only estimated: they are bounded so that no cubic between two nodes
     * rises (Fritsch and Carlson 1980, from memory), and the last one is chosen as near to a straight line as it can be}
     *
     * @param depth nodes from 0 to the deepest point, strictly rising, m
     * @param volume volume left at each node, m3; falls to 0
     * @param area estimated area of the moved face at each node, m2
     * @param relativeError bound on the relative error of V over the first 90 % of the volume
     * @throws IllegalArgumentException as the constructor
     */
    public static DepthProfile falling(double[] depth, double[] volume, double[] area, double relativeError) {
        int nodes = depth.length - 1;
        double[] bounded = area.clone();
        for (int q = 0; q < nodes; q++) {
            double most = 3 * (volume[q] - volume[q + 1]) / (depth[q + 1] - depth[q]);
            bounded[q] = Math.min(Math.max(0, bounded[q]), most);
            bounded[q + 1] = Math.min(Math.max(0, bounded[q + 1]), most);
        }
        double mean = volume[nodes - 1] / (depth[nodes] - depth[nodes - 1]);
        bounded[nodes] = Math.max(0, Math.min(3 * mean, 2 * mean - bounded[nodes - 1]));
        return new DepthProfile(depth, volume, bounded, relativeError);
    }

    /** {@return the largest inward depth, m} */
    public double deepest() {
        return depth[depth.length - 1];
    }

    /**
     * {@return the volume left at depth d, m3; the whole volume at d = 0, nothing at and beyond the deepest point}
     *
     * @param d inward depth from the open faces, m, 0 or more
     * @throws IllegalArgumentException for a negative depth or NaN
     */
    public double volume(double d) {
        if (d >= deepest()) {
            return 0;
        }
        int i = cell(d);
        double h = depth[i + 1] - depth[i];
        double t = (d - depth[i]) / h;
        double s = 1 - t;
        double left = volume[i] * (1 + 2 * t) * s * s
                + volume[i + 1] * (1 + 2 * s) * t * t
                - h * (area[i] * t * s * s - area[i + 1] * t * t * s);
        return Math.max(0, left); // rounding can make the last of it negative
    }

    /**
     * {@return the area of the face at depth d, m2: the exact derivative of {@link #volume}; 0 at and beyond the
     * deepest point}
     *
     * @param d inward depth from the open faces, m, 0 or more
     * @throws IllegalArgumentException for a negative depth or NaN
     */
    public double area(double d) {
        if (d >= deepest()) {
            return 0;
        }
        int i = cell(d);
        double h = depth[i + 1] - depth[i];
        double t = (d - depth[i]) / h;
        double s = 1 - t;
        double face =
                6 * t * s * (volume[i] - volume[i + 1]) / h + area[i] * s * (1 - 3 * t) + area[i + 1] * t * (3 * t - 2);
        return Math.max(0, face);
    }

    /**
     * {@return this profile down to the depth at which only {@code core} (m3) is left, which is taken away from every
     * volume} For a body with something inert in its middle: the front moves as before and stops where it meets the
     * core.
     *
     * @param core volume that does not fizz and stays to the end, m3, from 0 up to less than the whole volume
     * @throws IllegalArgumentException for any other core, NaN included
     */
    public DepthProfile without(double core) {
        if (!(core >= 0 && core < volume[0])) {
            throw new IllegalArgumentException("a core of " + core + " m3 is not from 0 up to the whole volume");
        }
        // depth at which just the core is left, by bisection down to neighbouring doubles
        double low = 0;
        double high = deepest();
        for (double middle = high / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (volume(middle) > core) {
                low = middle;
            } else {
                high = middle;
            }
        }
        // the nodes before that depth stay; that depth becomes the last node
        int n = cell(low) + 1;
        double[] d = Arrays.copyOf(depth, n + 1);
        double[] v = new double[n + 1];
        double[] a = Arrays.copyOf(area, n + 1);
        for (int i = 0; i < n; i++) {
            v[i] = Math.max(0, volume[i] - core);
        }
        d[n] = high;
        a[n] = Math.max(0, area(Math.min(low, high)));
        return new DepthProfile(d, v, a, relativeError);
    }

    /**
     * {@return this profile with more volume that stays until the front comes to the deepest point}
     *
     * @param more volume, m3, 0 or more
     * @throws IllegalArgumentException for a negative volume or NaN
     */
    public DepthProfile with(double more) {
        if (!(more >= 0)) {
            throw new IllegalArgumentException("a volume of " + more + " m3 is not 0 or more");
        }
        double[] v = volume.clone();
        for (int i = 0; i + 1 < v.length; i++) {
            v[i] += more;
        }
        return new DepthProfile(depth, v, area, relativeError);
    }

    /** {@return the bound on the relative error of V over the first 90 % of the volume} */
    public double relativeError() {
        return relativeError;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DepthProfile that
                && relativeError == that.relativeError
                && Arrays.equals(depth, that.depth)
                && Arrays.equals(volume, that.volume)
                && Arrays.equals(area, that.area);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(volume);
    }

    @Override
    public String toString() {
        return "depth profile of " + volume[0] + " m3 to " + deepest() + " m";
    }

    /** Index of the node at or before a depth; the cubic of the cell runs to the node after it. */
    private int cell(double d) {
        if (!(d >= 0)) {
            throw new IllegalArgumentException("depth " + d + " m is not 0 or more");
        }
        int low = 0;
        int high = depth.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (depth[middle] <= d) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Which faces of a piece are open to the air or the water, and so lose vapour or material: a drying piece on a rack
     * shows every face, one on a tray all but its base, a floating bowl only its outside. Chooses one of the depth profiles
     * of a {@link org.fizzhull.shape.Shape}.
     */
    public enum Exposure {
        /** Every face. */
        ALL,
        /** Every face but the flat one it rests on; the same as ALL for a shape without a flat resting face. */
        TRAY,
        /** Every face but the hollow (and, for an open shape, its rim): what is wet of a boat. */
        OUTSIDE
    }
}
