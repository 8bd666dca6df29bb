package org.fizzhull.recipe;

/**
 * What an ingredient does in a piece, and whether it goes in as a powder or as a liquid. Models ask for it where several
 * ingredients act alike ({@link Blend#share}): oils and butters coat grains, foaming powders change the bubbles.
 */
public enum Role {
    /** Gives the gas. */
    BICARBONATE("gas", Form.DRY),
    /** Gives gas, but needs twice the acid for it; caustic. */
    CARBONATE("gas, harsh", Form.DRY),
    /** Sets the gas free. */
    ACID("acid", Form.DRY),
    /** Starches, flours and carriers. */
    STARCH("filler", Form.DRY),
    /** Clays and other fine mineral fillers; most pack by their oil absorption. */
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
    /** Petals and buds, each taken with the air inside as one light grain. */
    BOTANICAL("show", Form.DRY),
    /** Menthol and the like. */
    STEAM_SCENT("steam scent", Form.DRY),
    /** Oils that stay liquid. */
    OIL("binder, skin feel", Form.WET),
    /** Fats that set at room temperature; melted they are pressed as a liquid, grated they are a powder. */
    BUTTER("binder, hardens", Form.EITHER),
    /** Keeps oil and colour in the water. */
    EMULSIFIER("emulsifier", Form.WET),
    /** Water and what is mostly water; starts the reaction. */
    WATER("binder that starts the fizz", Form.WET),
    /** Alcohols with their share of water. */
    ALCOHOL("fast binder", Form.WET),
    /** Takes up water from air and never dries, as glycerin. */
    HUMECTANT("humectant", Form.WET),
    /** Essential and fragrance oils. */
    FRAGRANCE("scent", Form.WET);

    /** What it does, in a maker's words. */
    private final String words;
    /** Powder, liquid or either. */
    private final Form form;

    Role(String words, Form form) {
        this.words = words;
        this.form = form;
    }

    /** {@return what it does in a maker's words, for tables and search} */
    public String words() {
        return words;
    }

    /** {@return whether it may be a powder, under {@code dry}} */
    public boolean mayBeDry() {
        return form != Form.WET;
    }

    /** {@return whether it may be a liquid, under {@code wet}; a butter may be both} */
    public boolean mayBeWet() {
        return form != Form.DRY;
    }

    /** How it goes in. */
    private enum Form {
        DRY,
        WET,
        EITHER
    }
}
