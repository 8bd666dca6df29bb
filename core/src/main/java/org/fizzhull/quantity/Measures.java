package org.fizzhull.quantity;

/**
 * How much a cup, a tablespoon and a teaspoon hold; the three words differ between countries and between a label and a
 * kitchen. A fluid ounce is a legal unit of its own ({@link Unit#FLUID_OUNCE}) and does not change with the choice.
 */
public enum Measures {
    /** 240, 15 and 5 mL: 21 CFR 101.9(b)(5)(viii) (second-hand: quoted word for word in a unit catalogue's list). */
    US_LEGAL("us-legal", 240_000, 15_000, 5_000),
    /** 250, 15 and 5 mL (common practice, no source). */
    METRIC("metric", 250_000, 15_000, 5_000),
    /**
     * 236.588, 14.787 and 4.929 mL: 1/16, 1/256 and 1/768 of the gallon of 231 cubic inches, rounded to a microlitre
     * as the command line contract prints them (computed; off by at most 1.6e-5 of the value).
     */
    US_CUSTOMARY("us-customary", 236_588, 14_787, 4_929);

    /** Name by which a person chooses. */
    private final String text;
    /** What a cup holds, microlitres. */
    private final long cup;
    /** What a tablespoon holds, microlitres. */
    private final long tablespoon;
    /** What a teaspoon holds, microlitres. */
    private final long teaspoon;

    Measures(String text, long cup, long tablespoon, long teaspoon) {
        this.text = text;
        this.cup = cup;
        this.tablespoon = tablespoon;
        this.teaspoon = teaspoon;
    }

    /** {@return the name a person chooses it by} */
    public String text() {
        return text;
    }

    /**
     * {@return the measures of that name}
     *
     * @param field option or key that was read, for the refusal
     * @param text name as the person wrote it
     * @throws Refusal {@code unknown-measures} for any other text
     */
    public static Measures named(String field, String text) {
        for (Measures each : values()) {
            if (each.text.equals(text)) {
                return each;
            }
        }
        throw new Refusal(
                "unknown-measures",
                field,
                RefusalWords.shown(text),
                "us-legal (cup 240 mL), metric (cup 250 mL) or us-customary (cup 236.588 mL)",
                "Write one of these; us-legal is what holds without it.");
    }

    /** {@return what a cup holds, mL} */
    public double cupMillilitres() {
        return cup / 1e3;
    }

    /** What a cup holds, microlitres. */
    long cupMicrolitres() {
        return cup;
    }

    /** What a tablespoon holds, microlitres. */
    long tablespoonMicrolitres() {
        return tablespoon;
    }

    /** What a teaspoon holds, microlitres. */
    long teaspoonMicrolitres() {
        return teaspoon;
    }
}
