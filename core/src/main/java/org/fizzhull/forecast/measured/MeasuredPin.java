package org.fizzhull.forecast.measured;

/** Solves one input for what one piece showed of its lift. One instance serves one thread. */
interface MeasuredPin {
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
     * @param near whether the value in the inputs is known to be near the root
     * @return logarithm of the weight
     */
    double pin(double[] inputs, boolean near);
}
