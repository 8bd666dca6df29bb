package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.check.Given;
import org.jspecify.annotations.Nullable;

/**
 * The numbers that the table can hold of an ingredient: for each the name and the unit that people and the data file use,
 * the range that is accepted, and the factor to SI. An {@link Ingredient} stores SI.
 *
 * <p>Which of them a model needs stands in its own documentation; docs/physics/packing.md, 1 and 2 (densities, grains, oil
 * absorption, uptake), fizz.md, 1 (groups), drying.md, 2 (isotherm, hydrates, deliquescence) and 8 (alcohol). The ranges
 * are wide enough for any powder or liquid of a piece and narrow enough to catch a wrong unit.
 */
public enum Property {
    /** Density of the solid itself, without pores between or inside grains. */
    TRUE_DENSITY("true density", "g/cm3", 1e3, 0.1, 6),
    /** Mass over volume of the powder poured loosely. */
    LOOSE_DENSITY("loose density", "g/cm3", 1e3, 0.01, 3),
    /** Mass over volume of the powder after tapping until it settles no more. */
    TAPPED_DENSITY("tapped density", "g/cm3", 1e3, 0.01, 3),
    /** Median grain diameter. */
    GRAIN_SIZE("grain size", "um", 1e-6, 0.05, 20_000),
    /** Linseed oil taken up at the end point of the rub-out (ISO 787-5). */
    OIL_ABSORPTION("oil absorption", "g/100 g", 1e-2, 1, 400),
    /** Water soaked up by the grains themselves, which builds no bridges between them. */
    UPTAKE("liquid uptake", "g/g", 1, 0, 5),
    /** Molar mass, water of crystallisation included. */
    MOLAR_MASS("molar mass", "g/mol", 1e-3, 10, 2000),
    /** Acid groups that free gas in a bath, per molecule. */
    ACID_GROUPS("acid groups", "", 1, 0, 6),
    /** Bicarbonate ions per formula unit. */
    BICARBONATE_GROUPS("bicarbonate groups", "", 1, 0, 2),
    /** Carbonate ions per formula unit. */
    CARBONATE_GROUPS("carbonate groups", "", 1, 0, 2),
    /** Magnesium ions per formula unit, of salts that dissolve; they bind citrate in the bath (docs/physics/fizz.md, 3). */
    MAGNESIUM_IONS("magnesium ions", "", 1, 0, 2),
    /** Free water, share of a liquid's mass. */
    WATER_SHARE("water share", "share", 1, 0, 1),
    /** What leaves as vapour besides water (alcohols), share of a liquid's mass. */
    VOLATILE_SHARE("volatile share", "share", 1, 0, 1),
    /** Density as a liquid at the time of pressing. */
    LIQUID_DENSITY("liquid density", "g/cm3", 1e3, 0.5, 2),
    /** Surface tension of the liquid. */
    SURFACE_TENSION("surface tension", "mN/m", 1e-3, 10, 100),
    /** GAB monolayer water, per dry mass of the ingredient. */
    GAB_MONOLAYER("GAB monolayer", "g/g", 1, 0, 1),
    /** GAB constant C. */
    GAB_C("GAB C", "", 1, 0.1, 500),
    /** GAB constant K. */
    GAB_K("GAB K", "", 1, 0.1, 1),
    /** Water of crystallisation given up again in dry air, share of the mass. */
    HYDRATE_RELEASE("hydrate release", "share", 1, 0, 0.6),
    /** Water of crystallisation taken up in damp air, share of the mass. */
    HYDRATE_UPTAKE("hydrate uptake", "share", 1, 0, 0.6),
    /** Relative humidity above which the crystal turns liquid. */
    DELIQUESCENCE("deliquescence", "share", 1, 0.05, 1);

    /** Name in recipes, data files and messages. */
    private final String key;
    /** Unit in recipes, data files and messages; empty for counts and constants without unit. */
    private final String unit;
    /** Factor from that unit to SI. */
    private final double si;
    /** Smallest value accepted, in that unit. */
    private final double low;
    /** Largest value accepted, in that unit. */
    private final double high;

    Property(String key, String unit, double si, double low, double high) {
        this.key = key;
        this.unit = unit;
        this.si = si;
        this.low = low;
        this.high = high;
    }

    /** {@return the name people and the data file use} */
    public String key() {
        return key;
    }

    /** {@return the unit people and the data file use; empty for counts} */
    public String unit() {
        return unit;
    }

    /** {@return the factor from that unit to SI} */
    public double toSi() {
        return si;
    }

    /** {@return the smallest value allowed, in {@link #unit()}} */
    public double low() {
        return low;
    }

    /** {@return the largest value allowed, in {@link #unit()}} */
    public double high() {
        return high;
    }

    /** Properties by their name, filled once. */
    private static final Map<String, Property> BY_KEY = new HashMap<>();

    static {
        for (Property p : values()) {
            BY_KEY.put(p.key, p);
        }
    }

    /**
     * {@return the property of this name, or null where there is none}
     *
     * @param key name as it stands in a recipe, {@code true density} for example; case and blanks matter
     */
    public static @Nullable Property named(String key) {
        Given.all("key", key);
        return BY_KEY.get(key);
    }

    /**
     * One number known of an ingredient: value, spread and source. The unit is the SI unit of the {@link Property} it belongs
     * to; the spread becomes the prior of that number in a forecast.
     *
     * @param value the value, SI
     * @param sigma one standard deviation, same unit; 0 where the value is a definition
     * @param source where value and spread are from
     */
    public record Datum(double value, double sigma, Source source) implements Serializable {
        /**
         * Checks value and spread.
         *
         * @param value the value, SI, finite
         * @param sigma one standard deviation, same unit, finite, 0 or more
         * @param source where value and spread are from
         * @throws IllegalArgumentException for NaN, infinity or a negative spread
         */
        public Datum {
            Given.all("source", source);
            if (!(Double.isFinite(value) && sigma >= 0 && Double.isFinite(sigma))) {
                throw new IllegalArgumentException(
                        "a datum needs a number and a spread of 0 or more: " + value + ", " + sigma);
            }
        }

        /** {@return the standard deviation as a share of the value; 0 where the value is 0} */
        public double relativeSigma() {
            return value == 0 ? 0 : sigma / Math.abs(value);
        }
    }
}
