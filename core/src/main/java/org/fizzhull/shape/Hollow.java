package org.fizzhull.shape;

/**
 * The hollow of an open shape, open side up in the body frame.
 *
 * @param closed the hull with the hollow closed by the rim plane: what displaces water while the hollow is dry
 * @param rimHeight height of the rim plane, m
 * @param rimRadius outer radius of the rim, m
 * @param volume volume of the hollow below the rim plane, m3
 */
public record Hollow(Hull closed, double rimHeight, double rimRadius, double volume) {}
