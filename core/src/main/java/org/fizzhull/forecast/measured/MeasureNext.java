package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.check.SerialForm;

/**
 * The measurement that would tell most about whether a piece floats: chosen by how much narrower it makes what the
 * forecast is about, over all values it may show. The width is that of the 95 % interval of the critical weight less
 * the weight of the piece. None is named that would neither make it narrower by a quarter nor probably settle the
 * question.
 *
 * <p>Worked out by {@link NextMeasurement}. Immutable.
 *
 * @param kind which measurement
 * @param mass weight of the piece to be measured, kg
 * @param expected what it will probably show: s of a time, kg of a weight, m of a size
 * @param left of a rise: how wide the piece will probably be when it comes up, m
 * @param widthBefore kg
 * @param widthAfter to be expected, kg
 * @param settles chance that after it the chance to float to the end is 9 of 10 or more, or 1 of 10 or less; 0 where it
 *     is so already
 */
public record MeasureNext(
        Kind kind,
        double mass,
        Interval expected,
        OptionalDouble left,
        double widthBefore,
        double widthAfter,
        double settles)
        implements Serializable {
    /** Its worth is that it settles the question where it does so with this chance. */
    public static final double SETTLING = 1.0 / 3;

    /** What to measure. */
    public enum Kind {
        /** Weigh one pressed piece, damp, straight from the mould. */
        WEIGH_PRESSED,
        /** Time until a piece is gone. */
        TIME_FIZZ,
        /** Time until a piece that sinks first comes up. */
        TIME_RISE,
        /** Hold a weighed piece under in a bowl of warm water on the scale. */
        HOLD_UNDER,
        /** Fill the mould with water and weigh that. */
        WEIGH_WATER
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
