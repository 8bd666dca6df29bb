package org.fizzhull.forecast.prior;

import org.fizzhull.quantity.Refusal;

/**
 * Which values of an uncertain input are physically possible, SI: wide on purpose, so that a prior in the wrong unit or
 * NaN is refused by name, and no plausible draw is.
 *
 * <p>Looked at twice: when a prior enters a table ({@link Factor}), and for every value of every draw
 * ({@link Factor#checked}). Errors may have either sign, factors are above 0, shares reach
 * from 0 to 1. Stateless.
 */
final class InputRange {
    /** Probabilities at which a prior is looked at when it enters a table. */
    static final double[] LOOKED_AT = {1e-6, 0.5, 1 - 1e-6};

    private InputRange() {}

    /**
     * {@return the value itself} Refuses one that is outside, NaN included.
     *
     * @param input the input
     * @param value value, SI
     * @throws Refusal {@code out-of-range}, naming the input
     */
    public static double checked(Input input, double value) {
        if (holds(input, value)) {
            return value;
        }
        String unit = input.unit().isEmpty() ? "" : ' ' + input.unit();
        throw new Refusal(
                "out-of-range",
                input.label(),
                value + " in SI, that is " + input.inUnit(value) + unit,
                "between " + lowest(input) + " and " + highest(input) + " in SI",
                "Values of uncertain inputs are SI: kg, m, s, K, Pa; check the unit of its prior.");
    }

    /**
     * {@return whether an input can have a value; false for NaN}
     *
     * @param input the input
     * @param value value, SI
     */
    static boolean holds(Input input, double value) {
        return value >= lowest(input) && value <= highest(input);
    }

    /** Least value of an input, SI. */
    private static double lowest(Input input) {
        return switch (input) {
            case SCALE, SCALE_OFFSET -> -100;
            case HAND -> -1e4;
            case MOULD_SIZE -> -0.1;
            case BATH_TEMPERATURE, ROOM_TEMPERATURE -> -20;
            case ROOM_HUMIDITY -> -1;
            case PACKING_MODEL, PLUME -> -1;
            case TRUE_DENSITY -> 500;
            case RECESSION, BUBBLE_SIZE -> 1e-7;
            case SURFACE,
                    DEPTH_PROFILE,
                    PRESS,
                    PRESS_REPEAT,
                    PRESS_SCALE,
                    BULKING_PRESSURE,
                    PORE_DIFFUSIVITY,
                    SKIN_TRANSFER,
                    GAS_LAYER,
                    OIL,
                    SURFACTANT,
                    STARCH -> Double.MIN_NORMAL;
            case BULKING,
                    BRIDGE_EFFICIENCY,
                    PENDULAR_LIMIT,
                    WALL_FRICTION,
                    FILM_ACTIVITY,
                    HYDRATE_SHARE,
                    ACID_HYDRATION,
                    PROMPT_YIELD,
                    FILM_RATE,
                    GAS_CAPACITY,
                    GAS_SHARE,
                    UNDERSIDE,
                    WET_SKIN_DEPTH,
                    ACTIVATION_ENERGY -> 0;
            default -> -1e3;
        };
    }

    /** Largest value of an input, SI. */
    private static double highest(Input input) {
        return switch (input) {
            case SCALE, SCALE_OFFSET -> 100;
            case HAND -> 1e4;
            case MOULD_SIZE -> 0.1;
            case BATH_TEMPERATURE, ROOM_TEMPERATURE -> 20;
            case ROOM_HUMIDITY,
                    PACKING_MODEL,
                    PLUME,
                    BULKING,
                    PENDULAR_LIMIT,
                    FILM_ACTIVITY,
                    HYDRATE_SHARE,
                    ACID_HYDRATION,
                    GAS_SHARE -> 1;
            case UNDERSIDE -> 4;
            case WET_SKIN_DEPTH -> 0.1;
            case SURFACE, DEPTH_PROFILE, OIL, SURFACTANT, STARCH -> 100;
            case PRESS, PRESS_REPEAT, PORE_DIFFUSIVITY, GAS_LAYER, BRIDGE_EFFICIENCY -> 1e4;
            case PRESS_SCALE, BULKING_PRESSURE -> 1e10;
            case TRUE_DENSITY -> 2e4;
            case GAS_CAPACITY -> 50;
            case RECESSION -> 0.1;
            case BUBBLE_SIZE -> 0.1;
            case SKIN_TRANSFER -> 10;
            case ACTIVATION_ENERGY -> 1e6;
            case PROMPT_YIELD -> 1e4;
            case FILM_RATE -> 1e2;
            default -> 1e3;
        };
    }
}
