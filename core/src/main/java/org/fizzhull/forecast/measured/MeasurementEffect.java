package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.check.SerialForm;

/**
 * What measurements did to a forecast: what it would say without them, to stand beside what it says. What was not asked
 * for is empty. Immutable.
 *
 * @param seen what was measured
 * @param effectiveDraws how many independent draws the narrowed ones are worth; empty for central values
 * @param probability chances before
 * @param spareAtDrop spare before, kg
 * @param riseTime rise time before, s
 * @param fizzTime fizz time before, s
 * @param dampMass weight out of the mould before, kg
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

    /**
     * {@return the effect on the voyage of a piece}
     *
     * @param seen what was measured
     * @param effective effective number of draws that agree with what was measured; empty where none were weighted
     * @param probability chances without the measurements; empty without draws
     * @param riseTime 95 % interval of the rise time without them, s; empty where it is not known
     * @param fizzTime 95 % interval of the fizz time without them, s; empty where it is not known
     * @param spare what there is to spare without them, kg
     */
    public static MeasurementEffect bathed(
            Observations seen,
            OptionalDouble effective,
            Optional<Probability> probability,
            Optional<Interval> riseTime,
            Optional<Interval> fizzTime,
            Interval spare) {
        return new MeasurementEffect(
                seen, effective, probability, Optional.of(spare), riseTime, fizzTime, Optional.empty());
    }

    /**
     * {@return the effect on a fizz time alone}
     *
     * @param seen what was measured
     * @param effective effective number of draws that agree with what was measured; empty where none were weighted
     * @param fizzTime before, s
     */
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

    /**
     * {@return the effect on a pressed piece}
     *
     * @param seen what was measured
     * @param effective effective number of draws that agree with what was measured; empty where none were weighted
     * @param dampMass before, kg
     */
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
