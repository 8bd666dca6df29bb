package org.fizzhull.forecast.model;

import java.util.List;
import org.fizzhull.drying.Swelling;
import org.fizzhull.evidence.Interval;

/** What the draws of a drying forecast say. Masses of the whole piece, with any inset, kg. Immutable. */
public final class DryDraws {
    private final DryColumns columns;
    private final Interval damp;
    private final Interval last;
    private final Interval label;
    private final ReadyTimes ready;
    private final Interval fizzLost;
    private final Interval waterGone;
    private final double swollenFilms;

    /**
     * Of columns that are filled and no longer written to.
     *
     * @param columns the filled columns
     */
    public DryDraws(DryColumns columns) {
        this.columns = columns;
        damp = columns.damp();
        last = columns.last();
        label = columns.label();
        ready = columns.ready();
        fizzLost = columns.fizzLost();
        waterGone = columns.waterGone();
        swollenFilms = columns.swollenFilms();
    }

    /** {@return the mass as pressed} */
    public Interval damp() {
        return damp;
    }

    /** {@return the mass at the end of the plan, as it goes into the bath} */
    public Interval last() {
        return last;
    }

    /** {@return the mass once all that can still leave in the drying room has left} */
    public Interval label() {
        return label;
    }

    /** {@return the time when 95 % of the removable water is gone} */
    public ReadyTimes ready() {
        return ready;
    }

    /** {@return the share of the fizz lost at the end of the plan} */
    public Interval fizzLost() {
        return fizzLost;
    }

    /** {@return the water that has left by the end of the drying, kg; below 0 where it came in} */
    public Interval waterGone() {
        return waterGone;
    }

    /** {@return the share of the draws whose film wrap swells with gas} */
    public double swollenFilms() {
        return swollenFilms;
    }

    /**
     * {@return the share of the draws that lose more of their fizz than that by the end of the plan}
     *
     * @param share part of the fizz, 0 to 1
     */
    public double losesMoreThan(double share) {
        return columns.losesMoreThan(share);
    }

    /**
     * {@return the share of the draws that swell so much or more by the end of the plan}
     *
     * @param least class of swelling
     */
    public double swells(Swelling least) {
        return columns.swells(least);
    }

    /** {@return the times of the band, s from pressing, ascending from 0 to the end of the plan} */
    public List<Double> times() {
        return columns.times();
    }

    /** {@return the mass and fizz left over time; sorts all draws at each time and call} */
    public DryBand band() {
        return columns.band();
    }
}
