package org.fizzhull.forecast.measured;

import java.io.Serializable;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;

/**
 * A drying log of other pieces: weighings of pieces of a mould while they dried, with how they were made and in what air they
 * lay. Of the weighings only the differences count ({@link org.fizzhull.forecast.result.DryLogFit}). Immutable.
 *
 * @param shape form of those pieces
 * @param making how they were filled or pressed, with the air they dried in, until the last weighing or longer
 * @param log the weighings
 */
public record LoggedPieces(Shape shape, Making making, DryLog log) implements Serializable {
    /**
     * Refuses pieces that were not dried, or not for so long.
     *
     * @param shape form of those pieces
     * @param making how they were filled or pressed, with the air they dried in, until the last weighing or longer
     * @param log the weighings
     * @throws Refusal {@code conflict}
     */
    public LoggedPieces {
        double end = making.plan().duration();
        if (!(log.end() <= end)) {
            throw new Refusal(
                    "conflict",
                    "drying log",
                    "a weighing after " + log.end() / 3600 + " h of a piece that dried for " + end / 3600 + " h",
                    "weighings while the piece dries",
                    "Tell how it was made and dried, until the last weighing.");
        }
    }

    /** {@return what they went through} */
    public DryingPlan plan() {
        return making.plan();
    }
}
