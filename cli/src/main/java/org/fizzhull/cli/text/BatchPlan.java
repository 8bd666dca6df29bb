package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.pressing.Feel;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Batch;
import org.fizzhull.recipe.MixingStep;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * Everything {@code batch} answers.
 *
 * @param recipe with its changes
 * @param shape of the mould
 * @param pieces wanted
 * @param piece by the central values
 * @param workingTime s until 2 % of the fizz is gone
 * @param batch the mixes
 * @param steps order of mixing
 * @param dried what a piece becomes by drying; empty where no drying was asked for
 * @param sampling the draws of the drying
 */
public record BatchPlan(
        Recipe recipe,
        Shape shape,
        int pieces,
        Pressed piece,
        double workingTime,
        Batch batch,
        List<MixingStep> steps,
        Optional<DryForecast> dried,
        Sampling sampling) {

    /** Copies the list. */
    public BatchPlan {
        steps = List.copyOf(steps);
    }

    /** Rack for all pieces, m2. */
    public double rackArea() {
        return batch.rackArea(shape.extents().length(), shape.extents().width());
    }

    /** What the reader must know. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(recipe.notices());
        notices.addAll(piece.notices());
        if (piece.feel() != Feel.HOLDS) {
            notices.add(new Notice(
                    piece.feel() == Feel.CRUMBLES ? "crumbles" : "too-wet",
                    piece.feel() == Feel.CRUMBLES
                            ? "Pressed so, a piece will more likely crumble: fizzhull press says how much liquid holds."
                            : "This mix is more likely too wet: fizzhull press says how much liquid holds."));
        }
        notices.addAll(batch.notices());
        dried.ifPresent(forecast -> DriedText.addNotices(notices, forecast));
        return notices;
    }
}
