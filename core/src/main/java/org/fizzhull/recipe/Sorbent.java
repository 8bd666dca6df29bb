package org.fizzhull.recipe;

/**
 * An ingredient that holds water from the air, as a part of a mix.
 *
 * @param share kg of it, free of water, per kg of dry powder as weighed
 * @param isotherm what it holds
 */
public record Sorbent(double share, Gab isotherm) {}
