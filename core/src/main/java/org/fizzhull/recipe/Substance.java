package org.fizzhull.recipe;

/**
 * What an ingredient is chemically, where a model needs to know: which acid, which alcohol. It is said in the table and
 * in the user's own words ({@code like: citric acid}), never guessed from a molar mass or a name.
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
