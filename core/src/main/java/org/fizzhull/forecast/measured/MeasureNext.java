package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.SerialForm;

/**
 * The measurement that would tell most about whether a piece floats: chosen by how much narrower it makes what the
 * forecast is about, over all values it may show. The width is that of the 95 % interval of the critical weight less the
 * weight of the piece.
 *
 * @param kind which measurement
 * @param mass weight of the piece to be measured, kg
 * @param expected what it will probably show: s of a time, kg of a weight, m of a size
 * @param left of a rise: how wide the piece will probably be when it comes up, m
 * @param widthBefore kg
 * @param widthAfter to be expected, kg
 */
public record MeasureNext(
        Kind kind, double mass, Interval expected, OptionalDouble left, double widthBefore, double widthAfter)
        implements Serializable {
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
