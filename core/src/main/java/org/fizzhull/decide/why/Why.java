package org.fizzhull.decide.why;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.recipe.Blend;

/**
 * Why a batch went wrong: causes with their chances, and the one check that tells the two likeliest apart; made by
 * {@link Diagnoser}. Immutable.
 */
public sealed interface Why permits WhyRecord {
    /** {@return what was seen} */
    Symptom symptom();

    /** {@return what was measured} */
    Seen seen();

    /** {@return the design as it was planned} */
    Design design();

    /** {@return chance of the symptom where all went as planned; empty where it is not computed} */
    OptionalDouble asPlanned();

    /** {@return likeliest first; their chances sum to 1} */
    List<Chance> causes();

    /** {@return the check that tells the two likeliest causes apart best; empty where none does} */
    Optional<BestCheck> best();

    /** {@return what the reader must know of measurements on other pieces} */
    List<Notice> notices();

    /** {@return whether the symptom itself is computed, or causes are ranked from the measurements alone} */
    default boolean computed() {
        return symptom().computed(design());
    }

    /**
     * {@return whether the likeliest is none of the faults, though a piece made as planned hardly shows the symptom, or
     * nobody can tell whether it does: then another plan is no help}
     */
    default boolean unexplained() {
        Chance first = causes().get(0);
        return first.cause() == Cause.SOMETHING_ELSE && (!computed() || first.showsIt() < WhyRecord.PLAN_FAILS);
    }

    /** {@return the notice that comes before all else: that the mix does not fizz, or hardly, as it was planned} */
    default Optional<Notice> fizzless() {
        return design().stillWater()
                ? Optional.empty()
                : design().recipe()
                        .flatMap(recipe ->
                                Effervescence.of(Blend.of(recipe).moles()).notice());
    }

    /** {@return what to do about the likeliest cause, for people, without its full stop} */
    default String mend() {
        if (!unexplained()) {
            return causes().get(0).cause().mend();
        }
        return (computed() ? "change nothing yet, for as planned it hardly happens" : "change nothing yet")
                + ": weigh and measure what was made, and ask again";
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
    record Chance(Cause cause, double probability, double showsIt, Way way, Design made, Optional<Check> check) {}

    /**
     * The likeliest course with a cause at work.
     *
     * @param mass what its pieces weigh on a kitchen scale, kg
     * @param limit the heaviest weight that floats, kg: at once of a symptom of the drop, else to the end; of a symptom
     *     of weight in the draws that show it
     * @param water left in a piece when it goes into the bath, kg; empty where it is not dried
     * @param fizzLost share of its fizz that is gone by then; empty where it is not dried
     */
    record Way(Interval mass, Interval limit, OptionalDouble water, OptionalDouble fizzLost) {}

    /**
     * A check and what it would show.
     *
     * @param check the check
     * @param information expected information on which of the two causes it is, bit: 0 tells nothing, 1 settles it
     * @param ifFirst median and 95 % interval of its reading with the likeliest cause: kg, m, s or a share, by the check
     * @param ifSecond the same with the second cause
     */
    record BestCheck(Check check, double information, Interval ifFirst, Interval ifSecond) {}

    /** A check that tells causes apart, of the kind a kitchen can make. Its reading is in SI: kg, m, s or a share. */
    enum Check {
        /** Weigh a piece of the same batch. */
        WEIGH_A_PIECE("weigh a piece of the same batch"),
        /** Measure a piece across with a ruler or calipers. */
        MEASURE_ACROSS("measure a piece across"),
        /** Time how long a piece of the batch fizzes. */
        TIME_THE_FIZZ("time how long a piece of the batch fizzes"),
        /** Weigh a piece, leave it in a dry room for two days, weigh it again. */
        WEIGH_AFTER_TWO_DAYS("weigh a piece, leave it two days in a dry room, weigh it again: what it loses"),
        /** Read a hygrometer in the drying room. */
        READ_A_HYGROMETER("read a hygrometer in the drying room");

        /** What to do, without its full stop. */
        private final String words;

        Check(String words) {
            this.words = words;
        }

        /** {@return the check for people: what to do, without its full stop} */
        public String words() {
            return words;
        }

        /** {@return whether the spread of its reading is a factor and not an amount: a time that may be a third as long or three times} */
        boolean byFactor() {
            return this == TIME_THE_FIZZ;
        }
    }
}
