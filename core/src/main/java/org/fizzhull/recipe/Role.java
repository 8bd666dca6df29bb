package org.fizzhull.recipe;

/** What an ingredient does in a piece, and whether it is poured in dry or wet. */
public enum Role {
    /** Gives the gas. */
    BICARBONATE("gas", Form.DRY),
    /** Gives gas with twice the acid; caustic. */
    CARBONATE("gas, harsh", Form.DRY),
    /** Sets the gas free. */
    ACID("acid", Form.DRY),
    /** Starches, flours and carriers. */
    STARCH("filler", Form.DRY),
    /** Clays and other fine mineral fillers. */
    CLAY("clay", Form.DRY),
    /** Crystals that dissolve without gas. */
    SALT("salt", Form.DRY),
    /** Milks, oats, cocoa, sugar: food-like powders. */
    FOOD_POWDER("feel", Form.DRY),
    /** Foaming powders. */
    SURFACTANT("foam", Form.DRY),
    /** Foaming liquids, mostly water. */
    LIQUID_SURFACTANT("foam", Form.WET),
    /** Dyes, micas, pigments. */
    COLOUR("colour", Form.DRY),
    /** Petals and buds. */
    BOTANICAL("show", Form.DRY),
    /** Menthol and the like. */
    STEAM_SCENT("steam scent", Form.DRY),
    /** Oils that stay liquid. */
    OIL("binder, skin feel", Form.WET),
    /** Fats that set at room temperature: warm they press as liquid. */
    BUTTER("binder, hardens", Form.EITHER),
    /** Keeps oil and colour in the water. */
    EMULSIFIER("emulsifier", Form.WET),
    /** Water and what is mostly water. */
    WATER("binder that starts the fizz", Form.WET),
    /** Alcohols with their share of water. */
    ALCOHOL("fast binder", Form.WET),
    /** Draws water and never dries. */
    HUMECTANT("humectant", Form.WET),
    /** Essential and fragrance oils. */
    FRAGRANCE("scent", Form.WET);

    private final String words;
    private final Form form;

    Role(String words, Form form) {
        this.words = words;
        this.form = form;
    }

    /** {@return the role in a maker's words} */
    public String words() {
        return words;
    }

    /** {@return whether it may stand under {@code dry}} */
    public boolean mayBeDry() {
        return form != Form.WET;
    }

    /** {@return whether it may stand under {@code wet}} */
    public boolean mayBeWet() {
        return form != Form.DRY;
    }

    private enum Form {
        DRY,
        WET,
        EITHER
    }
}
