package org.fizzhull.pressing;

import org.fizzhull.quantity.Refusal;

/**
 * A press by word: pressure at the top of the mould (docs/physics/packing.md, 6); the hand's spread is a lognormal
 * factor 1.6.
 */
public enum PressWord {
    /** 10 kPa: a hand of 30 N on a 65 mm half. */
    LIGHT("light", 10e3),
    /** 30 kPa. */
    FIRM("firm", 30e3),
    /** 100 kPa: leaning on it. */
    HARD("hard", 100e3);

    /** As it is typed. */
    private final String word;
    /** At the top of the mould, Pa (assumed). */
    private final double pressure;

    PressWord(String word, double pressure) {
        this.word = word;
        this.pressure = pressure;
    }

    /** {@return the word as it is typed} */
    public String word() {
        return word;
    }

    /** {@return the pressure at the top of the mould, Pa; one standard deviation is a factor 1.6} */
    public double pressure() {
        return pressure;
    }

    /**
     * Reads the word.
     *
     * @param text word as the person wrote it
     * @return the word
     * @throws Refusal {@code unknown-word} for any other text
     */
    public static PressWord named(String text) {
        for (PressWord w : values()) {
            if (w.word.equals(text)) {
                return w;
            }
        }
        throw new Refusal(
                "unknown-word",
                "press",
                text,
                "light, firm, hard or a pressure such as 30 kPa",
                "Firm is what most hands do.");
    }
}
