package org.fizzhull.geometry;

/**
 * The line over which water gets into a hollow, in the body frame, m. Water enters when the lowest point of the rim,
 * seen along the vertical, meets the water plane: {@link org.fizzhull.hydrostatics.Boat} compares {@link #lowest} with
 * the level. Immutable.
 */
public sealed interface Rim {
    /**
     * {@return the smallest value of {@code n . x} along the rim, m, for a unit vector n}
     *
     * @param nx x component of the unit vector n
     * @param ny y component of n
     * @param nz z component of n
     */
    double lowest(double nx, double ny, double nz);

    /** {@return whether leaning is the same to every side} */
    boolean round();

    /**
     * A level circle around the z axis.
     *
     * @param height of it, m
     * @param radius of its outer edge, m
     */
    record Circle(double height, double radius) implements Rim {
        @Override
        public double lowest(double nx, double ny, double nz) {
            return height * nz - radius * Math.sqrt(nx * nx + ny * ny);
        }

        @Override
        public boolean round() {
            return true;
        }
    }

    /**
     * A line of any form, by points along it: the rim of a hollow of a mesh. The lowest of the points stands for the
     * lowest of the line, which is exact where the line is straight between them.
     */
    final class Corners implements Rim {
        /** Coordinates x, y, z of one point after another, m. */
        private final double[] xyz;

        /**
         * Of points x, y, z one after another, m; at least one.
         *
         * @param xyz coordinates in the body frame, m; their number is a multiple of three
         */
        public Corners(double[] xyz) {
            if (xyz.length == 0 || xyz.length % 3 != 0) {
                throw new IllegalArgumentException("a rim needs whole points, and at least one");
            }
            for (double at : xyz) {
                if (!Double.isFinite(at)) {
                    throw new IllegalArgumentException("a point of a rim lies at " + at);
                }
            }
            this.xyz = xyz.clone();
        }

        @Override
        public double lowest(double nx, double ny, double nz) {
            double lowest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < xyz.length; i += 3) {
                lowest = Math.min(lowest, nx * xyz[i] + ny * xyz[i + 1] + nz * xyz[i + 2]);
            }
            return lowest;
        }

        @Override
        public boolean round() {
            return false;
        }
    }
}
