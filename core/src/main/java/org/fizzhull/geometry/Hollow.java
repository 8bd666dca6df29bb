package org.fizzhull.geometry;

/**
 * The hollow of an open shape, open side up in the body frame: a bowl floats like a boat while this stays dry. The boat
 * displaces with {@code closed}; it takes in water when {@code rim} goes under ({@link
 * org.fizzhull.hydrostatics.Boat}).
 * <pre>
 *   volume of the hollow = closed.volume() - volume of the bare material
 * </pre>
 *
 * <p>Immutable where its hull is, as those of the library are.
 *
 * @param closed the hull with the hollow closed by the rim plane: what displaces water while the hollow is dry
 * @param rimHeight height of the rim plane, m: of the lowest place over which water gets in
 * @param rim where water gets in when the body leans
 * @param volume volume of the hollow below the rim plane, m3
 * @param carried part of the closed hull's volume below the rim plane, m3: what is displaced when the rim goes under;
 *     less than all of it where material stands above the rim
 * @param wall the thinnest wall that keeps the water out, m: how far the outside may recede before the air escapes
 */
public record Hollow(Hull closed, double rimHeight, Rim rim, double volume, double carried, double wall) {
    /**
     * {@return a hollow around the z axis whose rim is its highest point; with the outer radius of the rim, m}
     *
     * @param closed the hull with the hollow closed by the rim plane: what displaces water while the hollow is dry
     * @param rimHeight height of the rim plane, m: of the lowest place over which water gets in
     * @param rimRadius outer radius of the rim, m: where water first runs in when the body leans
     * @param volume volume of the hollow below the rim plane, m3
     * @param wall the thinnest wall that keeps the water out, m: how far the outside may recede before the air escapes
     */
    public static Hollow round(Hull closed, double rimHeight, double rimRadius, double volume, double wall) {
        return new Hollow(closed, rimHeight, new Rim.Circle(rimHeight, rimRadius), volume, closed.volume(), wall);
    }

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
}
