package org.fizzhull.drying.mix;

/**
 * An ingredient that holds water from the air, as a part of a mix. The water of a mix is the sum of what its sorbents hold
 * (docs/physics/drying.md, 2).
 *
 * @param share mass of it, free of water, kg per kg of dry powder as weighed
 * @param isotherm what it holds at a water activity
 * @param powder whether it is a powder, which brings the water it has taken up from air; a liquid brings none with it
 */
public record Sorbent(double share, Gab isotherm, boolean powder) {}
