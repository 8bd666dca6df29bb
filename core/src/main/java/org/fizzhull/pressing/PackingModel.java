package org.fizzhull.pressing;

/** How densely a mix of powders packs when each is squeezed by the same share of its press scale. */
public interface PackingModel {
    /**
     * {@return the solid fraction, 0 to 1}
     *
     * @param powders the mix
     * @param squeeze P/Pk, pressure over press scale, 0 poured loosely
     */
    double solidFraction(Powders powders, double squeeze);
}
