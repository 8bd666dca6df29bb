package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.quantity.SerialForm;

/**
 * What measurements did to a forecast: what it would say without them. What was not asked for is empty.
 *
 * @param seen what was measured
 * @param effectiveDraws how many independent draws the narrowed ones are worth; empty for central values
 * @param probability before
 * @param spareAtDrop before, kg
 * @param riseTime before, s
 * @param fizzTime before, s
 * @param dampMass before, kg
 */
public record MeasurementEffect(
        Observations seen,
        OptionalDouble effectiveDraws,
        Optional<Probability> probability,
        Optional<Interval> spareAtDrop,
        Optional<Interval> riseTime,
        Optional<Interval> fizzTime,
        Optional<Interval> dampMass)
        implements Serializable {

    /** Of the voyage of a piece. */
    public static MeasurementEffect bathed(
            Observations seen, OptionalDouble effective, OutcomeStatistics before, Interval spare) {
        return new MeasurementEffect(
                seen,
                effective,
                before.probability(),
                Optional.of(spare),
                before.riseTime(),
                before.fizzTime(),
                Optional.empty());
    }

    /** Of a fizz time alone. */
    public static MeasurementEffect fizzed(Observations seen, OptionalDouble effective, Interval fizzTime) {
        return new MeasurementEffect(
                seen,
                effective,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(fizzTime),
                Optional.empty());
    }

    /** Of a pressed piece. */
    public static MeasurementEffect pressed(Observations seen, OptionalDouble effective, Interval dampMass) {
        return new MeasurementEffect(
                seen,
                effective,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(dampMass));
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
