package org.fizzhull.forecast.conditioning;

/**
 * Solves one input for what one piece showed of its lift: by the time of its rise ({@link RiseTimeSolver}) or a reading under
 * water ({@link LiftReadingSolver}). Called draw by draw: {@link #measure} once, then {@link #solve} at each value of the other
 * inputs that is tried. One instance serves one thread.
 */
interface LiftSolver {
    /** Place of the input that is solved. */
    int column();

    /**
     * Draws what may truly have been there to be measured.
     *
     * @param error quantile of the error, 0 to 1
     * @param choice 0 to 1, between ways in which it may have been measured
     */
    void measure(double error, double choice);

    /**
     * Puts the solved value into the inputs.
     *
     * @param inputs values of the inputs of the draw, SI; the solved one is changed, and left as it was where nothing
     *     is found
     * @param near whether the value in the inputs is known to be near the root
     * @return logarithm of the weight; minus infinity where no value gives what was measured
     */
    double solve(double[] inputs, boolean near);
}
