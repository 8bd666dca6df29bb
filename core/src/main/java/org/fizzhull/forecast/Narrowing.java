package org.fizzhull.forecast;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;

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
public record Narrowing(
        Observations seen,
        OptionalDouble effectiveDraws,
        Optional<Probability> probability,
        Optional<Interval> spareAtDrop,
        Optional<Interval> riseTime,
        Optional<Interval> fizzTime,
        Optional<Interval> dampMass) {

    /** Of the voyage of a piece. */
    static Narrowing bathed(Observations seen, OptionalDouble effective, Fates before, Interval spare) {
        return new Narrowing(
                seen,
                effective,
                before.probability(),
                Optional.of(spare),
                before.riseTime(),
                before.fizzTime(),
                Optional.empty());
    }

    /** Of a fizz time alone. */
    static Narrowing fizzed(Observations seen, OptionalDouble effective, Interval fizzTime) {
        return new Narrowing(
                seen,
                effective,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(fizzTime),
                Optional.empty());
    }

    /** Of a pressed piece. */
    static Narrowing pressed(Observations seen, OptionalDouble effective, Interval dampMass) {
        return new Narrowing(
                seen,
                effective,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(dampMass));
    }
}
