package org.fizzhull.decide.why;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was measured on the batch that went wrong: by a ruler, a scale, a clock, a hygrometer.
 *
 * @param readings SI by what was read: kg, m, s, or a share of 1 for a humidity
 */
public record Seen(Map<Check, Double> readings) {
    /**
     * Refuses readings that are none, and copies them.
     *
     * @param readings SI by what was read: kg, m, s, or a share of 1 for a humidity
     */
    public Seen {
        Map<Check, Double> copy = new EnumMap<>(Check.class);
        copy.putAll(readings);
        for (Map.Entry<Check, Double> reading : copy.entrySet()) {
            if (!(reading.getValue() > 0 && reading.getValue() < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(reading.getKey() + " reads " + reading.getValue() + ": above 0");
            }
        }
        readings = Collections.unmodifiableMap(copy);
    }

    /** {@return no readings} */
    public static Seen nothing() {
        return new Seen(Map.of());
    }

    /**
     * {@return these readings and one more, SI}
     *
     * @param check what is read
     * @param reading its value, SI
     */
    public Seen with(Check check, double reading) {
        Map<Check, Double> more = new EnumMap<>(Check.class);
        more.putAll(readings);
        more.put(check, reading);
        return new Seen(more);
    }

    /**
     * {@return a reading, SI; empty where it was not taken}
     *
     * @param check what is read
     */
    public OptionalDouble reading(Check check) {
        Double value = readings.get(check);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** {@return weight of a piece as it went into the bath, kg} */
    public OptionalDouble mass() {
        return reading(Check.WEIGH_A_PIECE);
    }
}
