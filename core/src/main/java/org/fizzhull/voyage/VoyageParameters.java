package org.fizzhull.voyage;

/**
 * The weakly known numbers of a piece in the bath.
 *
 * @param wettedShare share of the pores that fills with water at once
 * @param plumeFactor part of the plume's gas fraction that lightens the water around the piece; negative where the
 *     entrained up-flow wins
 * @param soakCapacity gas capacity below which a piece soaks through, mol/kg
 * @param soakTime time constant of that soaking, s
 */
public record VoyageParameters(double wettedShare, double plumeFactor, double soakCapacity, double soakTime) {
    /**
     * The medians of the priors: 0.3 Beta(1, 9) for the wetted share (mean 0.030), -0.1 to 0.3 for the plume factor,
     * 1 mol/kg and 20 s for soaking.
     */
    public static VoyageParameters standard() {
        return new VoyageParameters(0.3 * (1 - Math.pow(0.5, 1.0 / 9)), 0.1, 1, 20);
    }
}
