package org.fizzhull.quantity;

import java.util.List;
import java.util.Objects;

/**
 * The units a person may write. Each is a ratio of two whole numbers to SI, so a decimal text times a factor can be
 * rounded once: {@code 6.5 cm}, {@code 65 mm} and {@code 0.065 m} are the same double.
 *
 * <p>Sources. Exact factors of inch, foot, pound, ounce, US fluid ounce, bar and psi: NIST SP 811 (2008), appendix B
 * (from memory; the six-digit values were met second-hand). Minute, hour, day, litre, degree Celsius: SI Brochure, 9th
 * edition, table 8 and 2.3.1 (from memory). Alkalinity as ISO 9963-1 counts it, and as chalk or quicklime by IUPAC 2021
 * atomic weights (from memory). Names are distinguished by case, since mg and Mg, or C and c, are not the
 * same; the first name is the one written back.
 */
public enum Unit {
    /** 1e-3 m. */
    MILLIMETRE(Dimension.LENGTH, 1, 1_000, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    /** 1e-2 m. */
    CENTIMETRE(Dimension.LENGTH, 1, 100, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    /** The SI unit. */
    METRE(Dimension.LENGTH, 1, 1, "m", "metre", "metres", "meter", "meters"),
    /** 0.0254 m, exact. */
    INCH(Dimension.LENGTH, 254, 10_000, "in", "inch", "inches"),
    /** 0.3048 m, exact. */
    FOOT(Dimension.LENGTH, 3_048, 10_000, "ft", "foot", "feet"),
    /** 1e-6 m: some programs write files of bodies in it. */
    MICROMETRE(Dimension.LENGTH, 1, 1_000_000, "um", "micrometre", "micrometres", "micrometer", "micrometers"),

    /** 1e-3 kg. */
    GRAM(Dimension.MASS, 1, 1_000, "g", "gram", "grams", "gramme", "grammes"),
    /** The SI unit. */
    KILOGRAM(Dimension.MASS, 1, 1, "kg", "kilogram", "kilograms", "kilo", "kilos"),
    /** 1e-6 kg. */
    MILLIGRAM(Dimension.MASS, 1, 1_000_000, "mg", "milligram", "milligrams"),
    /** 0.028349523125 kg, exact: a sixteenth of the pound. */
    OUNCE(Dimension.MASS, 45_359_237, 1_600_000_000, "oz", "ounce", "ounces"),
    /** 0.45359237 kg, exact. */
    POUND(Dimension.MASS, 45_359_237, 100_000_000, "lb", "lbs", "pound", "pounds"),

    /** 1e-6 m3. */
    MILLILITRE(
            Dimension.VOLUME, 1, 1_000_000, "mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"),
    /** 1e-5 m3. */
    CENTILITRE(Dimension.VOLUME, 1, 100_000, "cL", "cl", "centilitre", "centilitres", "centiliter", "centiliters"),
    /** 1e-3 m3. */
    LITRE(Dimension.VOLUME, 1, 1_000, "L", "l", "litre", "litres", "liter", "liters"),
    /** 1e-6 m3. */
    CUBIC_CENTIMETRE(Dimension.VOLUME, 1, 1_000_000, "cm3", "cm^3"),
    /** The SI unit. */
    CUBIC_METRE(Dimension.VOLUME, 1, 1, "m3", "m^3"),
    /** 0.028316846592 m3, exact: the cube of the foot; the volume of rooms is given in it. */
    CUBIC_FOOT(
            Dimension.VOLUME, 28_316_846_592L, 1_000_000_000_000L, "ft3", "ft^3", "cu ft", "cubic feet", "cubic foot"),
    /** Held by the chosen {@link Measures}. */
    TEASPOON(Dimension.VOLUME, 5_000, 1_000_000_000, "tsp", "teaspoon", "teaspoons"),
    /** Held by the chosen {@link Measures}. */
    TABLESPOON(Dimension.VOLUME, 15_000, 1_000_000_000, "tbsp", "tablespoon", "tablespoons"),
    /** Held by the chosen {@link Measures}. */
    CUP(Dimension.VOLUME, 240_000, 1_000_000_000, "cup", "cups"),
    /**
     * US fluid ounce, 29.5735295625 mL: 231 cubic inches over 128, exact. The 30 mL of food labels and the imperial
     * ounce of 28.41 mL are not meant.
     */
    FLUID_OUNCE(
            Dimension.VOLUME,
            295_735_295_625L,
            10_000_000_000_000_000L,
            "fl oz",
            "floz",
            "fl. oz",
            "fl. oz.",
            "fluid ounce",
            "fluid ounces"),
    /** 0.05 mL: twenty drops of water to the millilitre, the count of pharmacies (common practice, no source). */
    DROP(Dimension.VOLUME, 5, 100_000_000, "drops", "drop"),

    /** 1000 kg/m3. */
    GRAM_PER_CUBIC_CENTIMETRE(Dimension.DENSITY, 1_000, 1, "g/cm3", "g/cm^3", "g/mL", "g/ml", "g/cc", "kg/L", "kg/l"),
    /** The SI unit. */
    KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, 1, 1, "kg/m3", "kg/m^3", "g/L", "g/l"),

    /** 1000 Pa. */
    KILOPASCAL(Dimension.PRESSURE, 1_000, 1, "kPa", "kilopascal", "kilopascals"),
    /** The SI unit. */
    PASCAL(Dimension.PRESSURE, 1, 1, "Pa", "pascal", "pascals"),
    /** 1e6 Pa. */
    MEGAPASCAL(Dimension.PRESSURE, 1_000_000, 1, "MPa", "megapascal", "megapascals"),
    /** 1e5 Pa, exact. */
    BAR(Dimension.PRESSURE, 100_000, 1, "bar", "bars"),
    /** 6894.757 Pa: 0.45359237 kg times 9.80665 m/s2 over the square of 0.0254 m, each exact. */
    PSI(Dimension.PRESSURE, 44_482_216_152_605L, 6_451_600_000L, "psi"),

    /** The zero lies at 273.15 K. */
    CELSIUS(Dimension.TEMPERATURE, 1, 1, 0, Units.ZERO_CELSIUS_K, "C", "°C", "degC", "celsius", "Celsius"),
    /** 5/9 K a degree; 32 F is 273.15 K. */
    FAHRENHEIT(Dimension.TEMPERATURE, 5, 9, 32, Units.ZERO_CELSIUS_K, "F", "°F", "degF", "fahrenheit", "Fahrenheit"),
    /** The SI unit. */
    KELVIN(Dimension.TEMPERATURE, 1, 1, "K", "kelvin"),

    /** 3600 s. */
    HOUR(Dimension.DURATION, 3_600, 1, "h", "hr", "hrs", "hour", "hours"),
    /** 86 400 s. */
    DAY(Dimension.DURATION, 86_400, 1, "d", "day", "days"),
    /** 60 s. */
    MINUTE(Dimension.DURATION, 60, 1, "min", "mins", "minute", "minutes"),
    /** The SI unit. */
    SECOND(Dimension.DURATION, 1, 1, "s", "sec", "secs", "second", "seconds"),
    /** Seven days. */
    WEEK(Dimension.DURATION, 604_800, 1, "weeks", "week"),

    /** One hundredth. */
    PERCENT(Dimension.FRACTION, 1, 100, "%", "percent"),

    /** 1 mol/m3 of charge; the same number as mEq/L and mval/L. */
    MILLIMOLE_PER_LITRE(Dimension.ALKALINITY, 1, 1, "mmol/L", "mmol/l", "mEq/L", "meq/L", "mval/L", "mval/l", "mol/m3"),
    /** Chalk that would take up as much acid, half of 100.0869 g/mol a charge. */
    MILLIGRAM_PER_LITRE_AS_CHALK(
            Dimension.ALKALINITY,
            2_000_000,
            100_086_900,
            "mg/L as CaCO3",
            "mg/l as CaCO3",
            "mg/L CaCO3",
            "mg/l CaCO3",
            "ppm as CaCO3",
            "ppm CaCO3"),
    /** German degree of carbonate hardness: 10 mg/L of quicklime, half of 56.0774 g/mol a charge. */
    DEGREE_OF_CARBONATE_HARDNESS(Dimension.ALKALINITY, 20_000_000, 56_077_400, "dKH", "°dKH");

    /** What it measures. */
    private final Dimension dimension;
    /** One of it in SI is numerator over denominator. */
    private final long numerator;
    /** See {@link #numerator}. */
    private final long denominator;
    /** Number of it at {@link #zero}: 32 for degrees Fahrenheit, else 0. */
    private final double shift;
    /** SI value at that number: 273.15 K for degrees Celsius and Fahrenheit, else 0. */
    private final double zero;
    /** Names it is read by, the symbol first. */
    private final String[] names;

    Unit(Dimension dimension, long numerator, long denominator, String... names) {
        this(dimension, numerator, denominator, 0, 0, names);
    }

    Unit(Dimension dimension, long numerator, long denominator, double shift, double zero, String... names) {
        this.dimension = dimension;
        this.numerator = numerator;
        this.denominator = denominator;
        this.shift = shift;
        this.zero = zero;
        this.names = names;
    }

    /** {@return what it measures} */
    public Dimension dimension() {
        return dimension;
    }

    /** {@return the name that is written back} */
    public String symbol() {
        return names[0];
    }

    /** {@return every name it is read by, the symbol first} */
    public List<String> names() {
        return List.of(names);
    }

    /**
     * {@return the SI value of a number of this unit, with US legal cups and spoons}
     *
     * @param number number of this unit
     */
    public double toSi(double number) {
        return toSi(number, Measures.US_LEGAL);
    }

    /**
     * {@return the SI value of a number of this unit}
     *
     * @param number number of this unit
     * @param measures what a cup and the spoons hold
     */
    public double toSi(double number, Measures measures) {
        Objects.requireNonNull(measures, "measures is null");
        return (number - shift) * numerator(measures) / denominator + zero;
    }

    /**
     * {@return the number of this unit in an SI value, with US legal cups and spoons}
     *
     * @param si value, SI
     */
    public double fromSi(double si) {
        return fromSi(si, Measures.US_LEGAL);
    }

    /**
     * {@return the number of this unit in an SI value}
     *
     * @param si value, SI
     * @param measures what a cup and the spoons hold
     */
    public double fromSi(double si, Measures measures) {
        Objects.requireNonNull(measures, "measures is null");
        return (si - zero) * denominator / numerator(measures) + shift;
    }

    /** Whether its zero is another than that of SI, so that a difference converts otherwise than a value. */
    boolean hasOffset() {
        return zero != 0;
    }

    /** The numerator, which for cups and spoons depends on the measures. */
    long numerator(Measures measures) {
        if (this == CUP) {
            return measures.cupMicrolitres();
        }
        if (this == TABLESPOON) {
            return measures.tablespoonMicrolitres();
        }
        if (this == TEASPOON) {
            return measures.teaspoonMicrolitres();
        }
        return numerator;
    }

    /** The denominator. */
    long denominator() {
        return denominator;
    }

    /** Without the defensive copy of {@link #names()}: for the scanner only. */
    String[] rawNames() {
        return names;
    }
}
