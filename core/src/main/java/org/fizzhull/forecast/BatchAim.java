package org.fizzhull.forecast;

/**
 * What to aim for where each piece of a batch comes out a little different.
 *
 * @param aimFor mean mass at which nine of ten pieces of this hand float, kg
 * @param neverAbove mass of a single piece that floats nine times of ten, kg
 */
public record BatchAim(double aimFor, double neverAbove) {}
