package org.fizzhull.mesh;

/**
 * How much one call of an inner loop takes. A method that is called often is compiled early, a long loop in a method
 * called once stays in the interpreter for tens of thousands of rounds: so the first calls take little, later ones more.
 */
final class Chunks {
    /** The most it takes. */
    static final int MOST = 64;

    private Chunks() {}

    /** The end of the next piece of a loop that stands at {@code done} and runs up to {@code end}. */
    static int end(int done, int end) {
        return Math.min(end, done + Math.min(MOST, 1 + (done >> 8)));
    }
}
