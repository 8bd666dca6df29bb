package org.fizzhull.voyage;

/**
 * Water that enters the pores: {@code s = s0 + (0.9 - s0) (1 - exp(-t/tau)) / (1 + (xi/xi_c)^3)}. A piece that fizzes
 * keeps water out by its own gas; one that has lost its fizz fills within a minute. Assumed.
 */
final class Soaking {
    /** Share of the pores that fills at last. */
    private static final double FULL = 0.9;

    private Soaking() {}

    /** How much the share grows from the first moment to the end, for a gas capacity in mol/kg. */
    static double growth(VoyageParameters p, double capacity) {
        double ratio = capacity / p.soakCapacity();
        return Math.max(0, FULL - p.wettedShare()) / (1 + ratio * ratio * ratio);
    }

    /** Share of the pores filled at a time, s, for a growth. */
    static double share(VoyageParameters p, double growth, double time) {
        return p.wettedShare() + growth * (1 - Math.exp(-time / p.soakTime()));
    }
}
