package org.fizzhull.forecast;

/** One uncertain input of a forecast: its name in results and the words a maker reads. */
public enum Input {
    /** Error of the scale, kg. */
    SCALE("scale", "the scale", 0, "g", 1e3),
    /** Spread of the fill across a batch, kg. */
    HAND("hand", "how evenly you fill", 0, "g", 1e3),
    /** Error of a size across, m. */
    MOULD_SIZE("mould size", "the true size of the mould", 0, "mm", 1e3),
    /** True surface over the estimated one. */
    SURFACE("surface", "the surface of this shape, only estimated", 1, "", 1),
    /** Error of the bath's temperature, K. */
    BATH_TEMPERATURE("bath temperature", "the bath's temperature", 0, "K", 1),
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
    /** Shift of the covered share of the surface. */
    COVERAGE("coverage", "how much of the surface bubbles cover", Double.NaN, "", 1),
    /** Thickness of the layer over that of single bubbles. */
    GAS_LAYER("gas layer", "how thick the clinging gas is", Double.NaN, "", 1),
    /** Share of the carbon dioxide that is gas at the surface. */
    GAS_SHARE("gas share", "how much of the fizz is gas at the surface", Double.NaN, "", 1),
    /** Share of the pores filled at once. */
    WETTED_SHARE("wetted share", "how much water soaks in at once", Double.NaN, "", 1),
    /** Part of the plume that lightens the water. */
    PLUME("plume", "what the rising bubbles do to the water around it", Double.NaN, "", 1);

    private final String label;
    private final String words;
    private final double neutral;
    private final String unit;
    private final double perUnit;

    Input(String label, String words, double neutral, String unit, double perUnit) {
        this.label = label;
        this.words = words;
        this.neutral = neutral;
        this.unit = unit;
        this.perUnit = perUnit;
    }

    /** Name in results, stable. */
    public String label() {
        return label;
    }

    /** What a maker reads. */
    public String words() {
        return words;
    }

    /** Unit in which people read it; empty for a pure number. */
    public String unit() {
        return unit;
    }

    /** A value in that unit, from SI. */
    public double inUnit(double si) {
        return si * perUnit;
    }

    /** Value without any error, for inputs that are errors; NaN for those that take the standard parameter. */
    double neutral() {
        return neutral;
    }
}
