package org.fizzhull.piece;

import org.fizzhull.recipe.Additives;

/**
 * What a piece is made of, as far as the bath asks.
 *
 * @param trueDensity density of the solids without pores, kg/m3
 * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
 * @param additives what else acts on its fizzing surface
 */
public record Makeup(double trueDensity, double gasCapacity, Additives additives) {
    /**
     * True density assumed where no recipe is given, kg/m3: two parts bicarbonate, one part citric acid, some starch.
     * Assumed; one standard deviation 3 %.
     */
    public static final double USUAL_TRUE_DENSITY = 1900;

    /** Gas capacity assumed where no recipe is given, mol/kg, for the same mix. Assumed; one standard deviation 12 %. */
    public static final double USUAL_GAS_CAPACITY = 4.6;

    /** Refuses NaN, a density of 0 and a negative capacity. */
    public Makeup {
        if (!(trueDensity > 0 && gasCapacity >= 0)) {
            throw new IllegalArgumentException("true density " + trueDensity + ", gas capacity " + gasCapacity);
        }
    }

    /** Of acid and bicarbonate alone, or of a recipe that is not known. */
    public Makeup(double trueDensity, double gasCapacity) {
        this(trueDensity, gasCapacity, Additives.NONE);
    }

    /** The same with what else acts on its surface. */
    public Makeup with(Additives others) {
        return new Makeup(trueDensity, gasCapacity, others);
    }

    /** The mix assumed where no recipe is given. */
    public static Makeup usual() {
        return new Makeup(USUAL_TRUE_DENSITY, USUAL_GAS_CAPACITY);
    }
}
