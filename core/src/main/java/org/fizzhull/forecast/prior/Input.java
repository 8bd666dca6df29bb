package org.fizzhull.forecast.prior;

import org.fizzhull.quantity.check.Given;

/**
 * One uncertain input of a forecast: its name in results and the words a maker reads. Units here are SI and those of
 * the priors; {@link #unit} is what people read. Priors and sources: docs/physics/uncertainty.md, 2.
 *
 * <p>The order of the constants has a meaning ({@link #isOfMaking}): what is settled before the bath stands before the
 * mould's size, and from the true densities to the gas capacity. An input that differs from piece to piece is of the
 * {@link Kind} PIECE, all others are common to a batch.
 */
public enum Input {
    /** Error of one reading of the scale, kg. */
    SCALE("scale", "the reading of the scale", 0, "g", 1e3),
    /** What the scale shows too little, the same for every piece, kg. */
    SCALE_OFFSET("scale offset", "whether the scale shows true", 0, "g", 1e3),
    /** Spread of the fill across a batch, kg. */
    HAND("hand", "how evenly you fill", 0, "g", 1e3),
    /** Error of a size across, m. */
    MOULD_SIZE("mould size", "the true size of the mould", 0, "mm", 1e3),
    /** True surface over the estimated one. */
    SURFACE("surface", "the surface of this shape, only estimated", 1, "", 1),
    /** True surface left at a depth over the tabled one, and depths the other way. */
    DEPTH_PROFILE("depth profile", "how this form shrinks as it fizzes, only measured", 1, "", 1),
    /** Error of the bath's temperature, K. */
    BATH_TEMPERATURE("bath temperature", "the bath's temperature", 0, "K", 1),
    /** Shared error of the powders' true densities, standard deviations. */
    GRAIN_SCORE("true densities", "how heavy the grains are", 0, "sd", 1),
    /** Shared error of the powders' loose densities, standard deviations. */
    LOOSE_SCORE("loose densities", "how loosely the powders lie", 0, "sd", 1),
    /** Shared error of the powders' tapped ratios, standard deviations. */
    TAPPED_SCORE("tapped ratios", "how much the powders settle", 0, "sd", 1),
    /** Each powder's own errors of the three, standard deviations. */
    POWDER_SCORES("each powder", "how each powder differs from the table", 0, "sd", 1),
    /** Where each line of the recipe lies in its own spread, standard deviations. */
    RECIPE_SCORES("recipe amounts", "how much of each goes into the mix", 0, "sd", 1),
    /** Error of the packing model on the solid fraction. */
    PACKING_MODEL("packing model", "how well the packing model holds", Double.NaN, "", 1),
    /** Press scale Pk, Pa. */
    PRESS_SCALE("press scale", "how the mix answers to pressing", Double.NaN, "kPa", 1e-3),
    /** True pressure over the named one. */
    PRESS("press", "how hard you really press", 1, "", 1),
    /** Pressure of one press over that of the same hand's usual press. */
    PRESS_REPEAT("press repeat", "how evenly you press", 1, "", 1),
    /** Share by which damp powder stands looser. */
    BULKING("damp bulking", "how much damp fluffs it up", Double.NaN, "", 1),
    /** Pressure that halves the bulking, Pa. */
    BULKING_PRESSURE("bulking pressure", "how soon pressing undoes the fluff", Double.NaN, "kPa", 1e-3),
    /** Share of the ideal bridge strength. */
    BRIDGE_EFFICIENCY("bridge efficiency", "how well the damp holds grains together", Double.NaN, "", 1),
    /** Saturation at which bridges merge. */
    PENDULAR_LIMIT("pendular limit", "how much liquid is too much", Double.NaN, "", 1),
    /** Friction of the mix on the mould. */
    WALL_FRICTION("wall friction", "how much the mould holds the mix back", Double.NaN, "", 1),
    /** Error of the room's relative humidity. */
    ROOM_HUMIDITY("room humidity", "the damp of the room", 0, "% RH", 100),
    /** Error of the room's temperature, K. */
    ROOM_TEMPERATURE("room temperature", "the warmth of the room", 0, "K", 1),
    /** Factor on the vapour diffusivity of the pores. */
    PORE_DIFFUSIVITY("pore diffusivity", "how easily vapour leaves the pores", Double.NaN, "", 1),
    /** Mass transfer at the skin, m/s. */
    SKIN_TRANSFER("skin transfer", "how still the air is", Double.NaN, "mm/s", 1e3),
    /** Water activity of the films. */
    FILM_ACTIVITY("film activity", "how strongly the mix holds water", Double.NaN, "", 1),
    /** Share of the water hydrated salts can give back that comes. */
    HYDRATE_SHARE("hydrate share", "how much of its own water a salt gives back", Double.NaN, "", 1),
    /** Rate at which the acid binds water as its hydrate, 1/s. */
    ACID_HYDRATION("acid hydration", "how fast the acid binds water of its own", Double.NaN, "1/d", 86400),
    /** Carbon dioxide per water when liquid meets powder, mol/kg. */
    PROMPT_YIELD("prompt yield", "how much fizz the liquid starts at once", Double.NaN, "mol/kg", 1),
    /** Rate of the slow reaction in the films, mol/(kg s). */
    FILM_RATE("film rate", "how much fizz it loses while damp", Double.NaN, "mol/(t s)", 1e3),
    /** Density of the solids, kg/m3. */
    TRUE_DENSITY("true density", "how heavy the grains are", Double.NaN, "g/cm3", 1e-3),
    /** Carbon dioxide still obtainable, mol/kg. */
    GAS_CAPACITY("gas capacity", "how much fizz is in the mix", Double.NaN, "mol/kg", 1),
    /** Recession at 38 C, m/s. */
    RECESSION("recession", "how fast the surface fizzes away", Double.NaN, "mm/min", 6e4),
    /** Growth of the logarithm of recession per unit of porosity. */
    POROSITY_SLOPE("porosity slope", "how much looser packing speeds it up", Double.NaN, "", 1),
    /** Activation energy of recession, J/mol. */
    ACTIVATION_ENERGY("activation energy", "how much warmth speeds it up", Double.NaN, "kJ/mol", 1e-3),
    /** Power of the gas capacity in recession. */
    REACTIVE_EXPONENT("reactive exponent", "how much more fizz speeds it up", Double.NaN, "", 1),
    /** Diameter of a clinging bubble, m. */
    BUBBLE_SIZE("bubble size", "how big the clinging bubbles are", Double.NaN, "mm", 1e3),
    /** Clinging gas per area over the diameter of a bubble. */
    GAS_LAYER("gas layer", "how thick the clinging gas is", Double.NaN, "", 1),
    /** What faces that look down hold beyond the mean. */
    UNDERSIDE("underside", "how much more gas clings to undersides", Double.NaN, "", 1),
    /** Share of the carbon dioxide that is gas at the surface. */
    GAS_SHARE("gas share", "how much of the fizz is gas at the surface", Double.NaN, "", 1),
    /** Recession with 5 % of oil over that without. */
    OIL("oil", "how much the oil slows the fizz", Double.NaN, "", 1),
    /** Recession with 5 % of foaming powder over that without. */
    SURFACTANT("surfactant", "how much the foaming powder slows the fizz", Double.NaN, "", 1),
    /** Recession with 10 % of starch over that without. */
    STARCH("starch", "how much the starch slows the fizz", Double.NaN, "", 1),
    /** Depth of wet pores behind the fizzing face, m. */
    WET_SKIN_DEPTH("wet skin depth", "how deep water stands in the fizzing face", Double.NaN, "mm", 1e3),
    /** Part of the plume that lightens the water. */
    PLUME("plume", "what the rising bubbles do to the water around it", Double.NaN, "", 1);

    /** Whether an input differs from piece to piece of one batch or is the same for all of them. */
    public enum Kind {
        /** Differs from piece to piece: the hand, a reading of the scale, one press against the next. */
        PIECE,
        /** The same for the whole batch, but not known. */
        BATCH
    }

    /** Name in results, stable. */
    private final String label;
    /** What a maker reads, a noun or a clause. */
    private final String words;
    /** Value without any error, 0 or 1; NaN where the standard parameter stands for it. */
    private final double neutral;
    /** Unit in which people read it; empty for a pure number. */
    private final String unit;
    /** Value in that unit over the value in SI. */
    private final double perUnit;

    Input(String label, String words, double neutral, String unit, double perUnit) {
        this.label = label;
        this.words = words;
        this.neutral = neutral;
        this.unit = unit;
        this.perUnit = perUnit;
    }

    /** {@return whether it is settled before the bath: how the piece was made and weighed} */
    public boolean isOfMaking() {
        return compareTo(MOULD_SIZE) < 0 || (compareTo(GRAIN_SCORE) >= 0 && compareTo(GAS_CAPACITY) <= 0);
    }

    /** {@return whether it bears on what happens between press and bath alone} */
    public boolean isOfDrying() {
        return compareTo(ROOM_HUMIDITY) >= 0 && compareTo(FILM_RATE) <= 0;
    }

    /** {@return whether it makes pieces of one batch differ, or is common to them} */
    public Kind kind() {
        return this == SCALE || this == HAND || this == PRESS_REPEAT ? Kind.PIECE : Kind.BATCH;
    }

    /** {@return the name in results, stable} */
    public String label() {
        return label;
    }

    /** {@return what a maker reads} */
    public String words() {
        return words;
    }

    /** {@return the unit in which people read it; empty for a pure number} */
    public String unit() {
        return unit;
    }

    /**
     * {@return a value in that unit, from SI}
     *
     * @param si value, SI
     */
    public double inUnit(double si) {
        return si * perUnit;
    }

    /**
     * {@return whether a value is physically possible: a face that recedes with up to 0.1 m/s, a share of 0 to 1}
     *
     * @param si value, SI
     */
    public boolean isPossible(double si) {
        return InputRange.holds(this, Given.finite("value", si));
    }

    /** Value without any error, for inputs that are errors; NaN for those that take the standard parameter. */
    public double neutral() {
        return neutral;
    }
}
