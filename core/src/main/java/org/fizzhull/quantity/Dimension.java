package org.fizzhull.quantity;

/** The kinds of quantity a person can write, each with the SI unit in which it is kept. */
public enum Dimension {
    /** Lengths, m. */
    LENGTH("a length"),
    /** Masses, kg. */
    MASS("a mass"),
    /** Volumes, m3. */
    VOLUME("a volume"),
    /** Densities, kg/m3. */
    DENSITY("a density"),
    /** Pressures, Pa. */
    PRESSURE("a pressure"),
    /** Temperatures, K; a spread of a temperature is a difference, also in K. */
    TEMPERATURE("a temperature"),
    /** Durations, s. */
    DURATION("a duration"),
    /** Parts of a whole, written in percent and kept as a fraction of one. */
    FRACTION("a percentage");

    private final String noun;

    Dimension(String noun) {
        this.noun = noun;
    }

    /** The words for people, with their article: {@code a length}. */
    public String noun() {
        return noun;
    }
}
