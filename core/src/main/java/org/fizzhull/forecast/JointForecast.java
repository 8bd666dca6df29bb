package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.piece.Piece;
import org.fizzhull.uncertainty.Statistics;

/** One of several answers of a {@link JointPredictor}. Masses in kg, times in s. Immutable. */
public final class JointForecast {
    private final Question question;
    private final Piece piece;
    private final List<Rest> rests;
    private final Interval mass;
    private final double[] damp;
    private final double[] ready;
    private final List<InBath> baths;
    private final List<Notice> notices;

    JointForecast(
            Question question,
            Piece piece,
            List<Rest> rests,
            double[] mass,
            double[][] making,
            List<InBath> baths,
            List<Notice> notices) {
        this.question = question;
        this.piece = piece;
        this.rests = List.copyOf(rests);
        this.mass = Fates.interval95(Statistics.sorted(mass));
        damp = making[JointModel.DAMP];
        ready = making[JointModel.READY];
        this.baths = List.copyOf(baths);
        this.notices = List.copyOf(notices);
    }

    /** What was asked; the bath is the first. */
    public Question question() {
        return question;
    }

    /** The piece as it goes into the bath, by the central values. */
    public Piece piece() {
        return piece;
    }

    /** The ways it floats as it is, in the first bath. */
    public List<Rest> rests() {
        return rests;
    }

    /** Weight as it goes into the bath. */
    public Interval mass() {
        return mass;
    }

    /** Weight out of the mould; empty for a piece on the scale. */
    public Optional<Interval> damp() {
        return Double.isNaN(damp[0]) ? Optional.empty() : Optional.of(Fates.interval95(Statistics.sorted(damp)));
    }

    /**
     * When it is dry, from pressing; empty where it is not dried, or not within 60 days in half of the draws. An upper
     * point of 60 days stands for any later time.
     */
    public Optional<Interval> ready() {
        return dried() ? DryPredictor.ready(Statistics.sorted(ready)) : Optional.empty();
    }

    /** Whether its making says how it is dried. */
    public boolean dried() {
        return !Double.isNaN(ready[0]);
    }

    /** When it is dry, draw by draw; infinite where it is not within 60 days, NaN where it is not dried. */
    public double[] readyTimes() {
        return ready.clone();
    }

    /** What becomes of it in each bath, in their order. */
    public List<InBath> baths() {
        return baths;
    }

    /** What the reader must know. */
    public List<Notice> notices() {
        return notices;
    }
}
