package org.fizzhull.recipe;

/**
 * An ingredient that holds water from the air, as a part of a mix.
 *
 * @param share kg of it, free of water, per kg of dry powder as weighed
 * @param isotherm what it holds
 * @param powder whether it came dry, with the water it had taken up from air; else it is a liquid, which brings none
 */
public record Sorbent(double share, Gab isotherm, boolean powder) {}
