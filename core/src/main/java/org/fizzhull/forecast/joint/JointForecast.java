package org.fizzhull.forecast.joint;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.piece.Piece;

/**
 * One of several answers of a {@link JointPredictor}. Masses in kg, times in s. Immutable.
 *
 * <p>What depends on the making alone (piece, weight, when it is dry) stands here, what depends on the water in one
 * {@link OutcomeByDraw} for each bath. Draw i is the same state of the world in all answers of one run.
 */
public final class JointForecast {
    /** What was asked, in the first bath, as it was judged. */
    private final Question question;
    /** The piece by the central values, a made one with the weight of the middle draw. */
    private final Piece piece;
    /** Ways it floats as it is, in the first bath. */
    private final List<FloatingAttitude> attitudes;
    /** Weight as it goes into the bath, kg. */
    private final Interval mass;
    /** Weight out of the mould, kg, draw by draw; NaN for a piece on the scale. */
    private final double[] damp;
    /**
     * When it is dry, s from pressing, draw by draw; infinite where it is not within 60 days, NaN where it is not
     * dried.
     */
    private final double[] ready;
    /** Answers in each bath, in their order. */
    private final List<OutcomeByDraw> baths;
    /** What the reader must know. */
    private final List<Notice> notices;

    /** Counts weights and making of one question; {@code making} has the columns of {@link JointModel}. */
    JointForecast(
            Question question,
            Piece piece,
            List<FloatingAttitude> attitudes,
            double[] mass,
            double[][] making,
            List<OutcomeByDraw> baths,
            List<Notice> notices) {
        this.question = question;
        this.piece = piece;
        this.attitudes = List.copyOf(attitudes);
        this.mass = OutcomeStatistics.intervalOf(mass);
        damp = making[JointModel.DAMP];
        ready = making[JointModel.READY];
        this.baths = List.copyOf(baths);
        this.notices = List.copyOf(notices);
    }

    /** {@return what was asked; the bath is the first} */
    public Question question() {
        return question;
    }

    /** {@return the piece as it goes into the bath, by the central values} */
    public Piece piece() {
        return piece;
    }

    /** {@return the ways it floats as it is, in the first bath} */
    public List<FloatingAttitude> attitudes() {
        return attitudes;
    }

    /** {@return the weight as it goes into the bath} */
    public Interval mass() {
        return mass;
    }

    /** {@return the weight out of the mould; empty for a piece on the scale} */
    public Optional<Interval> damp() {
        return Double.isNaN(damp[0]) ? Optional.empty() : Optional.of(OutcomeStatistics.intervalOf(damp));
    }

    /**
     * {@return the time when it is dry, from pressing; empty where it is not dried, or not within 60 days in half of
     * the draws} An upper point of 60 days stands for any later time.
     */
    public Optional<Interval> ready() {
        return dried() ? ReadyTimes.of(ready).interval() : Optional.empty();
    }

    /** {@return whether its making says how it is dried} */
    public boolean dried() {
        return !Double.isNaN(ready[0]);
    }

    /**
     * {@return the time when it is dry, draw by draw; infinite where it is not within 60 days, NaN where it is not
     * dried}
     */
    public double[] readyTimes() {
        return ready.clone();
    }

    /** {@return what becomes of it in each bath, in their order} */
    public List<OutcomeByDraw> baths() {
        return baths;
    }

    /** {@return what the reader must know} */
    public List<Notice> notices() {
        return notices;
    }
}
