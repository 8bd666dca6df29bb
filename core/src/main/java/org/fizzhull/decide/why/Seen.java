package org.fizzhull.decide.why;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.fizzhull.quantity.check.Given;

/**
 * What was measured on the batch that went wrong: by a ruler, a scale, a clock, a hygrometer. Immutable.
 *
 * @param readings readings by their check, SI, above 0: kg, m, s, or a share of 1 for a humidity
 */
public record Seen(Map<Why.Check, Double> readings) {
    /**
     * Checks the readings and copies them.
     *
     * @param readings readings by their check, SI, above 0
     * @throws IllegalArgumentException for a reading of 0 or less, infinity or NaN
     */
    public Seen {
        Given.all("readings", readings);
        Map<Why.Check, Double> copy = new EnumMap<>(Why.Check.class);
        copy.putAll(readings);
        for (Map.Entry<Why.Check, Double> reading : copy.entrySet()) {
            if (!(reading.getValue() > 0 && reading.getValue() < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(reading.getKey() + " reads " + reading.getValue() + ": above 0");
            }
        }
        readings = Collections.unmodifiableMap(copy);
    }

    /** {@return no readings: only the symptom is known} */
    public static Seen nothing() {
        return new Seen(Map.of());
    }

    /**
     * {@return these readings and one more, which replaces an earlier one of the same check}
     *
     * @param check what is read
     * @param reading its value, SI, above 0
     */
    public Seen with(Why.Check check, double reading) {
        Map<Why.Check, Double> more = new EnumMap<>(Why.Check.class);
        more.putAll(readings);
        more.put(check, reading);
        return new Seen(more);
    }

    /**
     * {@return a reading, SI; empty where it was not taken}
     *
     * @param check what is read
     */
    public OptionalDouble reading(Why.Check check) {
        Given.all("check", check);
        Double value = readings.get(check);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** {@return the weight of a piece as it went into the bath, kg; empty where it was not read} */
    public OptionalDouble mass() {
        return reading(Why.Check.WEIGH_A_PIECE);
    }
}
