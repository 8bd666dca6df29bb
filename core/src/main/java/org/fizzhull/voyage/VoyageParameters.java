package org.fizzhull.voyage;

import java.io.Serializable;
import org.fizzhull.quantity.check.Given;

/**
 * The uncertain parameters of a piece in the bath, beside those of fizzing ({@link org.fizzhull.fizz.FizzParameters}).
 * Both are assumed, with wide priors: docs/physics/voyage.md, 4 and 5, and uncertainty.md, 2.
 *
 * @param wetSkinDepth depth of wet pores behind the face of the usual mix, m; see {@link org.fizzhull.fizz.WetSkin}
 * @param plumeFactor part of the plume's gas fraction that lightens the water around the piece; negative where the
 *     entrained up-flow wins
 */
public record VoyageParameters(double wetSkinDepth, double plumeFactor) implements Serializable {
    /**
     * Refuses what is no number, and a depth below 0.
     *
     * @param wetSkinDepth depth of wet pores behind the face of the usual mix, m; see {@link org.fizzhull.fizz.WetSkin}
     * @param plumeFactor part of the plume's gas fraction that lightens the water around the piece; negative where the
     *     entrained up-flow wins
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for such
     */
    public VoyageParameters {
        Given.notNegative("wet skin depth", wetSkinDepth);
        Given.finite("plume factor", plumeFactor);
    }

    /** {@return the medians of the priors: 0.15 mm, 0.1} */
    public static VoyageParameters standard() {
        return new VoyageParameters(0.15e-3, 0.1);
    }
}
