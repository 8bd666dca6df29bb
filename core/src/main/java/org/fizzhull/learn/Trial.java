package org.fizzhull.learn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * One piece that was made, weighed and let go in a bath: a row of the trials sheet. SI units. Immutable.
 *
 * <pre>{@code
 * Trial trial = Trial.of("row 3", ball, 0.141, Bath.at(Units.celsius(38)), DroppedPiece.Result.ROSE).rising(45).fizzing(260);
 * }</pre>
 *
 * @param name by which messages call it, such as "row 3"
 * @param shape form of the piece
 * @param mouldWater water that fills its mould, kg at room temperature; empty where the size was measured with calipers
 * @param blend its mix, where that is known
 * @param fill damp mass pressed into the mould, kg
 * @param pressure pressure at the top of the mould, Pa; of a hand the pressure its word stands for
 * @param mass weight on the scale as it went into the bath, kg; empty where only the fill was weighed
 * @param bath the water
 * @param result what it did
 * @param roseAfter time until it was up, s
 * @param left width when it came up, m
 * @param fizzedFor time until it was gone, s
 * @param lift reading of the tared scale while it was held wholly under, kg
 * @param liftAfter time after going in at which that was read, s
 */
public record Trial(
        String name,
        Shape shape,
        OptionalDouble mouldWater,
        Optional<Blend> blend,
        OptionalDouble fill,
        OptionalDouble pressure,
        OptionalDouble mass,
        Bath bath,
        DroppedPiece.Result result,
        OptionalDouble roseAfter,
        OptionalDouble left,
        OptionalDouble fizzedFor,
        OptionalDouble lift,
        OptionalDouble liftAfter) {
    /**
     * Checks that the columns fit one another.
     *
     * @param name by which messages call it, such as "row 3"
     * @param shape form of the piece
     * @param mouldWater water that fills its mould, kg; empty where the size was measured with calipers
     * @param blend its mix, where that is known
     * @param fill damp mass pressed into the mould, kg
     * @param pressure pressure at the top of the mould, Pa
     * @param mass weight on the scale as it went into the bath, kg; empty where only the fill was weighed
     * @param bath the water
     * @param result what it did
     * @param roseAfter time until it was up, s
     * @param left width when it came up, m
     * @param fizzedFor time until it was gone, s
     * @param lift reading of the tared scale while it was held wholly under, kg
     * @param liftAfter time after going in at which that was read, s
     * @throws Refusal {@code missing-value} for a piece without a weight, a width without a time, a reading without its time;
     *     {@code conflict} for a rise time of a piece that did not rise, or water that is not that of the mould
     */
    public Trial {
        Given.all(
                "name, shape, mouldWater, blend, fill, pressure, mass, "
                        + "bath, result, roseAfter, left, fizzedFor, lift, liftAfter",
                name,
                shape,
                mouldWater,
                blend,
                fill,
                pressure,
                mass,
                bath,
                result,
                roseAfter,
                left,
                fizzedFor,
                lift,
                liftAfter);
        for (OptionalDouble number :
                List.of(mouldWater, fill, pressure, mass, roseAfter, left, fizzedFor, lift, liftAfter)) {
            number.ifPresent(value -> Given.finite(name, value));
        }
        if (mass.isEmpty() && (fill.isEmpty() || blend.isEmpty())) {
            throw new Refusal(
                    "missing-value",
                    name,
                    "no weight in the bath",
                    "bath_g, or fill_g and a recipe",
                    "Weigh the piece just before it goes into the bath.");
        }
        if (roseAfter.isPresent() && result != DroppedPiece.Result.ROSE) {
            throw new Refusal(
                    "conflict",
                    name,
                    "rose_after_s of a piece that " + result.word(),
                    "a time where the result is rose",
                    "A piece that comes up after more than 20 s rose; one that is up sooner floated.");
        }
        if (left.isPresent() && roseAfter.isEmpty()) {
            throw new Refusal(
                    "missing-value",
                    name,
                    "left_mm without rose_after_s",
                    "how wide it was when it came up, and when that was",
                    "Fill rose_after_s, or leave out left_mm.");
        }
        if (mouldWater.isPresent()) {
            try {
                new Bench.MouldWater(shape, mouldWater.getAsDouble());
            } catch (Refusal refusal) {
                throw refusal.of(name);
            }
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

    /**
     * {@return a weighed piece of a mould whose size was measured with calipers, and what it did in a bath}
     *
     * @param name by which messages call it, such as "row 3"
     * @param shape form of the piece
     * @param mass weight on the scale as it went into the bath, kg
     * @param bath the water
     * @param result what it did
     */
    public static Trial of(String name, Shape shape, double mass, Bath bath, DroppedPiece.Result result) {
        OptionalDouble none = OptionalDouble.empty();
        return new Trial(
                name,
                shape,
                none,
                Optional.empty(),
                none,
                none,
                OptionalDouble.of(mass),
                bath,
                result,
                none,
                none,
                none,
                none,
                none);
    }

    /**
     * {@return this trial with a fizz time}
     *
     * @param seconds time until it was gone, s
     */
    public Trial fizzing(double seconds) {
        return showing(mouldWater, result, roseAfter, left, OptionalDouble.of(seconds), lift, liftAfter);
    }

    /**
     * {@return this trial with a reading of the scale while the piece was held under water}
     *
     * @param reading what the tared scale read, kg
     * @param seconds time after going in at which it was read, s
     */
    public Trial lifting(double reading, double seconds) {
        return showing(
                mouldWater, result, roseAfter, left, fizzedFor, OptionalDouble.of(reading), OptionalDouble.of(seconds));
    }

    /**
     * {@return this trial of a piece that sank first and came up later}
     *
     * @param seconds time until it was up, s
     */
    public Trial rising(double seconds) {
        return showing(
                mouldWater, DroppedPiece.Result.ROSE, OptionalDouble.of(seconds), left, fizzedFor, lift, liftAfter);
    }

    /**
     * {@return this trial with the width that was left}
     *
     * @param metres width when it came up, m
     */
    public Trial leaving(double metres) {
        return showing(mouldWater, result, roseAfter, OptionalDouble.of(metres), fizzedFor, lift, liftAfter);
    }

    /**
     * {@return this trial, of a mould that was filled with water and weighed}
     *
     * @param water mass of the water that fills the mould, kg
     */
    public Trial holding(double water) {
        return showing(OptionalDouble.of(water), result, roseAfter, left, fizzedFor, lift, liftAfter);
    }

    /** This trial with other observations. */
    private Trial showing(
            OptionalDouble water,
            DroppedPiece.Result did,
            OptionalDouble rose,
            OptionalDouble wide,
            OptionalDouble fizzed,
            OptionalDouble reading,
            OptionalDouble after) {
        return new Trial(
                name, shape, water, blend, fill, pressure, mass, bath, did, rose, wide, fizzed, reading, after);
    }

    /** {@return how the size of the mould is known: by water, else with calipers} */
    Measured measured() {
        return mouldWater.isPresent() ? Measured.WATER : Measured.CALIPERS;
    }

    /** {@return true less stated size of the mould, m across, that the water tells; 0 where none was weighed} */
    double sizeError() {
        return mouldWater.isPresent() ? new Bench.MouldWater(shape, mouldWater.getAsDouble()).sizeError() : 0;
    }
}
