package org.fizzhull.forecast;

import java.util.OptionalDouble;

/**
 * What becomes of a piece, as probabilities. Floats at once, rises later and stays down sum to 1; what is not computed
 * is empty.
 *
 * @param floatsAtOnce it is at the surface 20 s after it was let go
 * @param error one standard error of that, from the draws
 * @param risesLater it comes up after that with at least 10 % of its mass left
 * @param staysDown neither
 * @param sinksLater part of floatsAtOnce that goes under again before 1 % of it is left
 */
public record Probability(
        double floatsAtOnce,
        double error,
        OptionalDouble risesLater,
        OptionalDouble staysDown,
        OptionalDouble sinksLater) {}
