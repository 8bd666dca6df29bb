package org.fizzhull.evidence;

import java.util.Objects;

/**
 * A constant with all that must be known to trust it.
 *
 * @param value the value in SI
 * @param unit the SI unit as text, {@code "kg/m3"}; {@code "1"} for a pure number
 * @param standardUncertainty one standard uncertainty in the same unit, 0 where the value is exact
 * @param conditions what the value holds for, {@code "38 C, 1 atm"}; may be empty
 * @param source where it is from
 */
public record Sourced(double value, String unit, double standardUncertainty, String conditions, Source source) {
    /**
     * Refuses NaN, an endless value and a negative uncertainty.
     *
     * @param value the value in SI
     * @param unit the SI unit as text, {@code "kg/m3"}; {@code "1"} for a pure number
     * @param standardUncertainty one standard uncertainty in the same unit, 0 where the value is exact
     * @param conditions what the value holds for, {@code "38 C, 1 atm"}; may be empty
     * @param source where it is from
     */
    public Sourced {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a sourced value is a finite number, not " + value);
        }
        if (!(standardUncertainty >= 0 && standardUncertainty <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a standard uncertainty is 0 or more, not " + standardUncertainty);
        }
        Objects.requireNonNull(conditions, "conditions");
        Objects.requireNonNull(source, "source");
        if (unit.isEmpty()) {
            throw new IllegalArgumentException("a sourced value names its unit; write 1 for a pure number");
        }
    }
}
