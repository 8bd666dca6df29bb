package org.fizzhull.piece;

import java.io.Serializable;
import org.fizzhull.quantity.Given;
import org.fizzhull.recipe.Additives;

/**
 * What a piece is made of, as far as the bath asks: density, gas, and what acts on its surface. Where no recipe is known it
 * is {@link #usual()}. Per kg of piece as it goes into the bath, not of dry powder. Immutable.
 *
 * @param trueDensity density of the solids without pores, kg/m3
 * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
 * @param additives oil, foaming powder and starch, which act on its fizzing surface
 * @param fizzLeft share of the carbon dioxide of its fresh powders that it can still give, 0 to 1; 1 where what it lost
 *     is not known
 */
public record Makeup(double trueDensity, double gasCapacity, Additives additives, double fizzLeft)
        implements Serializable {
    /**
     * True density assumed where no recipe is given, kg/m3: two parts bicarbonate, one part citric acid, some starch.
     * Assumed; one standard deviation 3 %.
     */
    public static final double USUAL_TRUE_DENSITY = 1900;

    /**
     * Gas capacity assumed where no recipe is given, mol/kg, for the same mix. Assumed; one standard deviation 12 %.
     */
    public static final double USUAL_GAS_CAPACITY = 4.6;

    /**
     * Checks the values.
     *
     * @param trueDensity density of the solids without pores, kg/m3, above 0
     * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece, 0 or more
     * @param additives oil, foaming powder and starch, which act on its fizzing surface
     * @param fizzLeft share of the carbon dioxide of its fresh powders that it can still give, 0 to 1; 1 where what it
     *     lost is not known
     * @throws IllegalArgumentException for a value outside its range, infinity or NaN
     */
    public Makeup {
        Given.all("additives", additives);
        boolean sound = trueDensity > 0
                && trueDensity < Double.POSITIVE_INFINITY
                && gasCapacity >= 0
                && gasCapacity < Double.POSITIVE_INFINITY
                && fizzLeft >= 0
                && fizzLeft <= 1;
        if (!sound) {
            throw new IllegalArgumentException("true density " + trueDensity + " kg/m3, gas capacity " + gasCapacity
                    + " mol/kg, share of the fizz left " + fizzLeft);
        }
    }

    /**
     * The makeup of a piece whose loss of fizz is not known.
     *
     * @param trueDensity density of the solids without pores, kg/m3
     * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
     * @param additives oil, foaming powder and starch, which act on its fizzing surface
     */
    public Makeup(double trueDensity, double gasCapacity, Additives additives) {
        this(trueDensity, gasCapacity, additives, 1);
    }

    /**
     * The makeup of acid and bicarbonate alone, or of a recipe that is not known.
     *
     * @param trueDensity density of the solids without pores, kg/m3
     * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
     */
    public Makeup(double trueDensity, double gasCapacity) {
        this(trueDensity, gasCapacity, Additives.NONE);
    }

    /**
     * {@return the same makeup with other additives}
     *
     * @param others additives of the mix, kg per kg of dry powder
     */
    public Makeup with(Additives others) {
        return new Makeup(trueDensity, gasCapacity, others, fizzLeft);
    }

    /**
     * {@return the same makeup with another share of its fizz left; the capacity is that of now and stays}
     *
     * @param share share of the carbon dioxide of the fresh powders that is left, 0 to 1
     */
    public Makeup withFizzLeft(double share) {
        return new Makeup(trueDensity, gasCapacity, additives, share);
    }

    /** {@return the mix assumed where no recipe is given} */
    public static Makeup usual() {
        return new Makeup(USUAL_TRUE_DENSITY, USUAL_GAS_CAPACITY);
    }
}
