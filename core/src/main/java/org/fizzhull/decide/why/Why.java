package org.fizzhull.decide.why;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;

/**
 * Why a batch went wrong: causes with their chances, and the one check that tells the two likeliest apart; made by
 * {@link Diagnoser}. Immutable.
 *
 * @param symptom what was seen
 * @param seen what was measured
 * @param design the design as it was planned
 * @param asPlanned chance of the symptom where all went as planned; empty where it is not computed
 * @param causes likeliest first; their chances sum to 1
 * @param best the check that tells the two likeliest causes apart best; empty where none does
 */
public record Why(
        Symptom symptom,
        Seen seen,
        Design design,
        OptionalDouble asPlanned,
        List<Chance> causes,
        Optional<BestCheck> best) {
    /**
     * Copies the list.
     *
     * @param symptom what was seen
     * @param seen what was measured
     * @param design the design as it was planned
     * @param asPlanned chance of the symptom where all went as planned; empty where it is not computed
     * @param causes likeliest first; their chances sum to 1
     * @param best the check that tells the two likeliest causes apart best; empty where none does
     */
    public Why {
        causes = List.copyOf(causes);
    }

    /** {@return whether the symptom itself is computed, or causes are ranked from the measurements alone} */
    public boolean computed() {
        return symptom.computed();
    }

    /**
     * One cause.
     *
     * @param cause the cause
     * @param probability chance that it made the difference, 0 to 1
     * @param showsIt chance that a batch with this cause shows the symptom; 1 for all where that is not computed
     * @param way the likeliest course with this cause
     * @param made the design as it then was pressed and dried
     * @param check check that tells it from the likeliest other cause; empty where none does
     */
    public record Chance(
            Cause cause, double probability, double showsIt, Way way, Design made, Optional<Check> check) {}

    /**
     * The likeliest course with a cause at work.
     *
     * @param mass weight of its pieces on a kitchen scale, kg
     * @param limit critical weight: the largest weight that floats to the end, kg
     * @param water water left in a piece when it goes into the bath, kg; empty where it is not dried
     * @param fizzLost share of its fizz that is gone by then, 0 to 1; empty where it is not dried
     */
    public record Way(Interval mass, Interval limit, OptionalDouble water, OptionalDouble fizzLost) {}

    /**
     * A check and what it would show.
     *
     * @param check the check
     * @param information expected information on which of the two causes it is, bit: 0 tells nothing, 1 settles it
     * @param ifFirst median and 95 % interval of its reading with the likeliest cause: kg, m, s or a share, by the check
     * @param ifSecond the same with the second cause
     */
    public record BestCheck(Check check, double information, Interval ifFirst, Interval ifSecond) {}
}
