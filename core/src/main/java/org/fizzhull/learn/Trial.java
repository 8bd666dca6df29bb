package org.fizzhull.learn;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * One piece that was made, weighed and let go in a bath. SI units. Immutable.
 *
 * @param name by which messages call it, such as "row 3"
 * @param shape of the piece
 * @param blend what it was made of, where it is known
 * @param fill damp mass pressed into the mould, kg
 * @param pressure by which it was pressed, Pa; of a hand the pressure its word stands for
 * @param mass on the scale as it went into the bath, kg; empty where only the fill was weighed
 * @param bath the water
 * @param result what it did
 * @param roseAfter until it was up, s
 * @param fizzedFor until it was gone, s
 * @param lift reading of the tared scale while it was held wholly under, kg
 * @param liftAfter when that was read, s
 */
public record Trial(
        String name,
        Shape shape,
        Optional<Blend> blend,
        OptionalDouble fill,
        OptionalDouble pressure,
        OptionalDouble mass,
        Bath bath,
        Result result,
        OptionalDouble roseAfter,
        OptionalDouble fizzedFor,
        OptionalDouble lift,
        OptionalDouble liftAfter) {
    /** What a piece did. */
    public enum Result {
        /** It was up within 20 s and counts as floating at once. */
        FLOATED("floated"),
        /** It sank first and came up later. */
        ROSE("rose"),
        /** It sank. */
        SANK("sank");

        private final String word;

        Result(String word) {
            this.word = word;
        }

        /** The word on the sheet. */
        public String word() {
            return word;
        }
    }

    /** Refuses a piece without a weight, a fill whose mix is not known, and times that do not fit the result. */
    public Trial {
        if (mass.isEmpty() && (fill.isEmpty() || blend.isEmpty())) {
            throw new Refusal(
                    "missing-value",
                    name,
                    "no weight in the bath",
                    "bath_g, or fill_g and a recipe",
                    "Weigh the piece just before it goes into the bath.");
        }
        if (roseAfter.isPresent() && result != Result.ROSE) {
            throw new Refusal(
                    "conflict",
                    name,
                    "rose_after_s of a piece that " + result.word(),
                    "a time where the result is rose",
                    "A piece that comes up after more than 20 s rose; one that is up sooner floated.");
        }
        if (lift.isPresent() != liftAfter.isPresent()) {
            throw new Refusal(
                    "missing-value",
                    name,
                    "one of lift_g and lift_after_s",
                    "both, or none",
                    "Say when the scale was read.");
        }
    }

    /** A weighed piece and what it did in a bath. */
    public static Trial of(String name, Shape shape, double mass, Bath bath, Result result) {
        OptionalDouble none = OptionalDouble.empty();
        return new Trial(
                name,
                shape,
                Optional.empty(),
                none,
                none,
                OptionalDouble.of(mass),
                bath,
                result,
                none,
                none,
                none,
                none);
    }

    /** With the time until it was gone, s. */
    public Trial fizzing(double seconds) {
        return new Trial(
                name,
                shape,
                blend,
                fill,
                pressure,
                mass,
                bath,
                result,
                roseAfter,
                OptionalDouble.of(seconds),
                lift,
                liftAfter);
    }

    /** With a reading under water, kg, after so many seconds. */
    public Trial lifting(double reading, double seconds) {
        return new Trial(
                name,
                shape,
                blend,
                fill,
                pressure,
                mass,
                bath,
                result,
                roseAfter,
                fizzedFor,
                OptionalDouble.of(reading),
                OptionalDouble.of(seconds));
    }

    /** That came up after so many seconds. */
    public Trial rising(double seconds) {
        return new Trial(
                name,
                shape,
                blend,
                fill,
                pressure,
                mass,
                bath,
                Result.ROSE,
                OptionalDouble.of(seconds),
                fizzedFor,
                lift,
                liftAfter);
    }
}
