package org.fizzhull.forecast;

import java.util.OptionalDouble;

/**
 * What becomes of a piece, as probabilities. The first three sum to 1 once the voyage is known; what is not computed is
 * empty.
 *
 * @param floatsAtOnce it floats at the drop
 * @param error one standard error of that, from the draws
 * @param risesLater it sinks and comes up again
 * @param staysDown it never floats
 * @param sinksLater part of floatsAtOnce that sinks again before the end
 */
public record Probability(
        double floatsAtOnce,
        double error,
        OptionalDouble risesLater,
        OptionalDouble staysDown,
        OptionalDouble sinksLater) {}
