package org.fizzhull.shape.kind;

/**
 * What is left of a shape at inward depth d, as formulas; {@link ProfileTable} turns them into a table. Each class
 * states on which stretches of d its formulas are smooth: the table has a node at every end of one.
 */
interface Erosion {
    /** Volume left at depth d, m3. */
    double volume(double d);

    /** Area of the face that has moved in to d, {@code -dV/dd}, m2. */
    double front(double d);

    /** {@return volume, m3, and face, m2, at a depth, m: both in one where they share most of their cost} */
    default double[] left(double d) {
        return new double[] {volume(d), front(d)};
    }
}
