package org.fizzhull.decide.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Units;

/**
 * What a change does besides floating: one number before and after, in a unit for people (g, s, h, own money; none for a
 * chance). The answer tells all that move, a sentence those that are {@link #worthSaying}.
 *
 * @param what what is moved
 * @param before value of the design as it is, in {@code unit}; empty where it is not known
 * @param after value of the changed design, in {@code unit}; empty where it is not known
 * @param unit unit of both; empty for a chance
 */
public record Effect(What what, OptionalDouble before, OptionalDouble after, String unit) {
    /** Seconds in an hour. */
    private static final double SECONDS_AN_HOUR = 3600;

    /** What a change moves. */
    public enum What {
        /** Weight into the bath. */
        WEIGHT("weight into the bath"),
        /** How long it fizzes. */
        FIZZ("fizz time"),
        /** When it is dry. */
        READY("ready after"),
        /** Chance that it holds as it comes out of the mould. */
        HOLDS("holds"),
        /** Cost of what is in it. */
        COST("cost of a piece");

        /** Label in results. */
        private final String label;

        What(String label) {
            this.label = label;
        }

        /** {@return the label in results} */
        public String label() {
            return label;
        }
    }

    /**
     * {@return everything that differs, by however little}
     *
     * @param before appraisal of the design as it is
     * @param after appraisal of the changed design
     */
    public static List<Effect> of(Advice.Appraisal before, Advice.Appraisal after) {
        List<Effect> all = List.of(
                new Effect(
                        What.WEIGHT,
                        OptionalDouble.of(Units.inGrams(before.mass())),
                        OptionalDouble.of(Units.inGrams(after.mass())),
                        "g"),
                new Effect(What.FIZZ, median(before.fizzTime(), 1), median(after.fizzTime(), 1), "s"),
                new Effect(
                        What.READY,
                        median(before.ready(), SECONDS_AN_HOUR),
                        median(after.ready(), SECONDS_AN_HOUR),
                        "h"),
                new Effect(What.HOLDS, before.holds(), after.holds(), ""),
                new Effect(What.COST, before.cost(), after.cost(), "own money"));
        List<Effect> moved = new ArrayList<>();
        for (Effect effect : all) {
            if (!effect.before.equals(effect.after)) {
                moved.add(effect);
            }
        }
        return moved;
    }

    /** Median in a unit of so many seconds; empty where there is none. */
    private static OptionalDouble median(Optional<Interval> interval, double per) {
        return interval.isPresent() ? OptionalDouble.of(interval.get().median() / per) : OptionalDouble.empty();
    }

    /** {@return after less before, in the unit; what is not known counts as 0} */
    public double gain() {
        return after.orElse(0) - before.orElse(0);
    }

    /**
     * {@return whether it moves by more than a maker would notice (assumed): a twentieth of a time, half a second of fizz or half an
     * hour of drying at least, 0.05 of a chance, 0.005 of the user's own money; where a value is not known, only drying counts}
     */
    public boolean worthSaying() {
        if (before.isEmpty() || after.isEmpty()) {
            return what == What.READY;
        }
        double least = switch (what) {
            case WEIGHT -> Double.POSITIVE_INFINITY; // the step says it
            case FIZZ, READY -> Math.max(0.5, 0.05 * before.getAsDouble());
            case HOLDS -> 0.05;
            case COST -> 0.005;
        };
        return Math.abs(gain()) >= least;
    }
}
