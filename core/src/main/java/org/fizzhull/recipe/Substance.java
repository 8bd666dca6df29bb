package org.fizzhull.recipe;

/**
 * What an ingredient is chemically, where a model needs to know: the acids have different dissociation constants in the
 * bath (docs/physics/fizz.md, 2). It stands in the table or comes with the user's words ({@code like: citric acid}); it is
 * never read from a name.
 */
public enum Substance {
    /** Not said; most ingredients. */
    UNSPECIFIED,
    /** Citric acid, anhydrous or with its water of crystallisation. */
    CITRIC_ACID,
    /** Tartaric acid. */
    TARTARIC_ACID,
    /** Malic acid. */
    MALIC_ACID,
    /** Cream of tartar, potassium hydrogen tartrate. */
    POTASSIUM_BITARTRATE,
    /** Ascorbic acid. */
    ASCORBIC_ACID,
    /** Lactic acid. */
    LACTIC_ACID,
    /** Fumaric acid. */
    FUMARIC_ACID,
    /** Ethanol, with its share of water. */
    ETHANOL,
    /** Isopropanol, with its share of water. */
    ISOPROPANOL
}
