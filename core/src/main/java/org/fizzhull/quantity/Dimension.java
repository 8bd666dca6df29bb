package org.fizzhull.quantity;

/** The kinds of quantity a person can write, each with the SI unit in which it is kept. Their units: {@link Unit}. */
public enum Dimension {
    /** Lengths, m. */
    LENGTH("a length", "65 mm"),
    /** Masses, kg. */
    MASS("a mass", "138 g"),
    /** Volumes, m3. */
    VOLUME("a volume", "20 mL"),
    /** Densities, kg/m3. */
    DENSITY("a density", "0.95 g/cm3"),
    /** Pressures, Pa. */
    PRESSURE("a pressure", "30 kPa"),
    /** Temperatures, K; a spread of a temperature is a difference, also in K. */
    TEMPERATURE("a temperature", "38 C"),
    /** Durations, s. */
    DURATION("a duration", "36 h"),
    /** Parts of a whole, written in percent and kept as a fraction of one. */
    FRACTION("a percentage", "45 %"),
    /** What a water holds of charge that acid can take up, mol/m3. */
    ALKALINITY("an alkalinity", "2 mmol/L");

    /** Words for people, with their article. */
    private final String noun;
    /** A quantity as it may be written. */
    private final String example;

    Dimension(String noun, String example) {
        this.noun = noun;
        this.example = example;
    }

    /** {@return the words for people, with their article: {@code a length}} */
    public String noun() {
        return noun;
    }

    /** {@return a quantity as it may be written: {@code 65 mm}} */
    public String example() {
        return example;
    }
}
