package org.fizzhull.recipe;

import org.fizzhull.quantity.Refusal;

/**
 * Grain sizes by comparison with what stands in a kitchen, for a powder whose size no sheet gives. Median diameters,
 * assumed, a factor 1.5 either way.
 */
enum GrainWord {
    /** 25 um. */
    ICING_SUGAR("icing-sugar", 25e-6),
    /** 250 um. */
    CASTER("caster", 250e-6),
    /** 400 um. */
    TABLE_SALT("table-salt", 400e-6),
    /** 1.5 mm. */
    COARSE("coarse", 1.5e-3);

    /** The word as it is written in a recipe. */
    private final String word;
    /** Median grain size, m. */
    private final double size;

    GrainWord(String word, double size) {
        this.word = word;
        this.size = size;
    }

    /** {@return the median grain size, m} */
    public double size() {
        return size;
    }

    /**
     * {@return the grain size that the word stands for}
     *
     * @param text word as the person wrote it; capitals, hyphens and blanks do not matter
     * @throws Refusal {@code unknown-word} for any other word
     */
    public static GrainWord named(String text) {
        for (GrainWord g : values()) {
            if (Names.plain(g.word).equals(Names.plain(text))) {
                return g;
            }
        }
        throw new Refusal(
                "unknown-word",
                "grain",
                text,
                "icing-sugar, caster, table-salt or coarse",
                "Take the one whose grains look most like it.");
    }
}
