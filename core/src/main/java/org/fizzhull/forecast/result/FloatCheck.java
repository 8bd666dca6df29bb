package org.fizzhull.forecast.result;

import java.io.Serializable;
import org.fizzhull.forecast.question.Question;

/**
 * The cheap question, for shops and planners that ask it of thousands of pieces: does a piece of this shape and mix
 * float in this bath, by the central values? What depends on the shape alone (its depth profile, the attitude it takes,
 * how much of it is wet at each draft) is worked out once, then each weight costs one voyage.
 *
 * <p>Left out, and so much cheaper than a forecast: chances and intervals (no draws), what decides the answer, the ways
 * it floats, which measurement would tell most. What both tell is the same to the last bit: {@link Floats#spareAtDrop},
 * {@link Floats#toTheEnd} and {@link #heaviest} are the spare, the verdict and the critical weight of a forecast
 * without draws.
 *
 * <p>Immutable; safe to share between threads, but for one made for a single voyage, which its maker keeps to itself.
 * Cost: of a ball some 20 us to prepare and 5 us a weight, of an egg 600 us and 5 us; core/docs/embedding.md has the
 * measured ratios. A made piece is pressed and dried anew for each weight, about a millisecond.
 */
public interface FloatCheck {
    /** {@return what was asked; an open shape that tips is judged as dropped} */
    Question question();

    /** {@return whether the piece of the question floats} */
    Floats floats();

    /**
     * {@return whether a piece of another weight floats: on the scale as it goes into the bath, of a fill the damp
     * weight that goes into the mould, kg}
     *
     * @param mass weight, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a weight that no pressed piece of this shape has
     */
    Floats floats(double mass);

    /**
     * {@return the critical weight by the central values: the heaviest piece of this shape and mix, as it goes into the
     * bath, that floats to the end, kg} To 0.03 % of the weight. Costs about ten voyages.
     */
    double heaviest();

    /**
     * Whether a piece floats by the central values of everything uncertain: no chance, which needs draws. Near the border
     * ({@link #spareAtDrop} within some ten grams of 0) the central values say little; ask for the chance there.
     *
     * @param mass of the piece as it goes into the bath, kg
     * @param atOnce whether it is at the surface 20 s after it was let go
     * @param toTheEnd whether it then stays up until a tenth of its dissolving body is left; toppings and crystals do not
     *     count as dissolving
     * @param spareAtDrop what the piece could carry at the drop before it sinks, clinging gas and wetting included, kg;
     *     negative for one that goes down
     */
    record Floats(double mass, boolean atOnce, boolean toTheEnd, double spareAtDrop) implements Serializable {}
}
