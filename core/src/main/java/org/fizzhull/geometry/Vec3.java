package org.fizzhull.geometry;

import java.io.Serializable;

/**
 * A point or a direction in space. Components are in the unit the owner names (metres for points of a body).
 *
 * <p>Immutable; the methods allocate a new vector, so inner loops work on plain components instead.
 *
 * @param x first component; of a body level, along its length as listed
 * @param y second component; of a body level, along its width
 * @param z third component; of a body up as listed
 */
public record Vec3(double x, double y, double z) implements Serializable {
    /** The origin. */
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    /** Up in the body frame of a shape. */
    public static final Vec3 UP = new Vec3(0, 0, 1);

    /** Golden angle, rad: the turn from one direction of a lattice to the next. */
    static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

    /**
     * {@return one of some directions spread evenly over the sphere, the Fibonacci lattice: z falls in equal steps while the
     * direction turns about the z axis by the golden angle}
     *
     * @param i which, from 0 to {@code count} - 1
     * @param count number of directions, 1 or more
     */
    public static Vec3 spread(int i, int count) {
        return spread(i, count, 0);
    }

    /**
     * {@return the same direction of the lattice turned about the z axis, so that a search that asks it again and again does
     * not miss a narrow way every time}
     *
     * @param i which, from 0 to {@code count} - 1
     * @param count number of directions, 1 or more
     * @param turn by how many golden angles
     */
    public static Vec3 spread(int i, int count, int turn) {
        double up = 1 - (2 * i + 1.0) / count;
        double round = Math.sqrt(1 - up * up);
        double angle = GOLDEN_ANGLE * (i + turn);
        return new Vec3(round * Math.cos(angle), round * Math.sin(angle), up);
    }

    /**
     * {@return this vector plus another}
     *
     * @param other the vector to add, in the same unit
     */
    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    /**
     * {@return this vector minus another}
     *
     * @param other the vector to take away, in the same unit
     */
    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    /**
     * {@return this vector scaled by a factor}
     *
     * @param factor any number; a negative one turns the vector round
     */
    public Vec3 times(double factor) {
        return new Vec3(factor * x, factor * y, factor * z);
    }

    /**
     * {@return the inner product of this vector and another, in the product of their units}
     *
     * @param other the other vector
     */
    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /**
     * {@return the vector product of this vector and another, right-handed}
     *
     * @param other the right-hand operand
     */
    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** {@return the Euclidean length} */
    public double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** {@return the same direction with length one; a zero vector is a mistake of the caller} */
    public Vec3 unit() {
        double length = norm();
        if (!(length > 0)) {
            throw new IllegalArgumentException("a zero vector has no direction");
        }
        return times(1 / length);
    }
}
