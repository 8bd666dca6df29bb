package org.fizzhull.drying.mix;

import org.fizzhull.quantity.Refusal;

/**
 * An ingredient that holds water from the air, as a part of a mix. The water of a mix is the sum of what its sorbents hold
 * (docs/physics/drying.md, 2).
 *
 * @param share mass of it, free of water, kg per kg of dry powder as weighed, 0 to 1
 * @param isotherm what it holds at a water activity
 * @param powder whether it is a powder, which brings the water it has taken up from air; a liquid brings none with it
 */
public record Sorbent(double share, Gab isotherm, boolean powder) {
    /**
     * Checks the share.
     *
     * @param share mass of it, free of water, kg per kg of dry powder as weighed, 0 to 1
     * @param isotherm what it holds at a water activity
     * @param powder whether it is a powder
     * @throws Refusal {@code out-of-range} for a share above 1
     * @throws IllegalArgumentException for a negative share or NaN
     */
    public Sorbent {
        if (share > 1) {
            throw new Refusal(
                    "out-of-range",
                    "what holds water per dry mix",
                    share + " kg/kg",
                    "0 to 1 kg/kg",
                    "More glycerin than powder is no mix that dries in one piece: check the amounts under wet.");
        }
        if (!(share >= 0)) {
            throw new IllegalArgumentException("a sorbent with a share of " + share);
        }
    }
}
