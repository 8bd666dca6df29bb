package org.fizzhull.forecast.joint;

import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.jspecify.annotations.Nullable;

/**
 * Makes the piece of each draw once, however many baths it goes into, and keeps what is asked of its making: what it
 * weighed damp and when it is dry. The piece is that of {@link Making#maker}. Cost: one pressing and one coarse course
 * of drying a draw, which runs on until the piece is ready. Serves one thread, draw by draw.
 */
final class TimedMaker implements Maker {
    /** Form of the pieces, as entered. */
    private final Shape shape;
    /** What makes the pieces of the question; it alone makes those on the scale. */
    private final Maker plain;

    /** How a mix gets into its mould and dry; null for a piece on the scale. */
    private final @Nullable Step step;

    /** The piece of the present draw; null until it is asked for. */
    private @Nullable Piece held;

    /**
     * When the last piece is ready, s from pressing; infinite where it is not within 60 days, NaN where it is not
     * dried.
     */
    private double ready = Double.NaN;

    /** What the last piece weighed out of the mould, kg; NaN for a piece on the scale. */
    private double damp = Double.NaN;

    /** For the pieces of a question. */
    TimedMaker(Question question) {
        shape = question.shape();
        Making making = question.making();
        plain = Maker.of(making, shape);
        if (making instanceof Making.Weighed) {
            step = null;
        } else {
            Moulded made = Moulded.of(making);
            step = new Step(made.plan(), Packing.of(made, shape), new PlannedDrying(shape, made.plan()));
        }
    }

    /** The next piece is that of a new draw. */
    void nextDraw() {
        held = null;
    }

    /**
     * When the last piece is ready, s from pressing; infinite where it is not within 60 days, NaN where it is not
     * dried.
     */
    double ready() {
        return ready;
    }

    /** What the last piece weighed out of the mould, kg; NaN for a piece on the scale. */
    double damp() {
        return damp;
    }

    @Override
    public Piece make(Draw draw, double volumeRatio) {
        Piece known = held;
        if (known != null) {
            return known;
        }
        Piece made = step == null ? plain.make(draw, volumeRatio) : made(step, draw, volumeRatio);
        held = made;
        return made;
    }

    /** The piece of a draw, its damp weight and its ready time noted. */
    private Piece made(Step how, Draw draw, double volumeRatio) {
        Packing.Packed packed = how.packing.of(draw, volumeRatio);
        double rhoDry = packed.solidFraction() * packed.trueDensity();
        // out of the mould: dry mix with all its liquid, in the true volume, and what is in it
        damp = rhoDry * (1 + packed.blend().liquid().ratio()) * shape.volume() * volumeRatio + shape.insetMass();
        if (how.plan.phases().isEmpty()) {
            return plain.make(draw, volumeRatio);
        }
        DryingCourse course =
                how.off.course(how.off.input(packed), how.plan.phases(), ReadyTimes.LONGEST, packed.making());
        ready = course.readyAfter().orElse(Double.POSITIVE_INFINITY);
        return course.piece(shape, course.end()).scaled(volumeRatio);
    }

    /**
     * How a mix gets into its mould and dry.
     *
     * @param plan what happens between press and bath
     * @param packing presses or fills the mould of a draw
     * @param off takes the damp piece through the plan
     */
    private record Step(DryingPlan plan, Packing packing, PlannedDrying off) {}
}
