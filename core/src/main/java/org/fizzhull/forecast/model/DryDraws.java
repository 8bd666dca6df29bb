package org.fizzhull.forecast.model;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.result.DryBand;

/**
 * What the draws of a drying forecast say: intervals, shares and the band, read from filled {@link DryColumns}. Masses
 * of the whole piece, with any inset, kg. Immutable.
 */
public final class DryDraws {
    /** The filled columns. */
    private final DryColumns columns;
    /** Mass as pressed, kg. */
    private final Interval damp;
    /** Mass at the end of the plan, kg. */
    private final Interval last;
    /** Mass once all that can leave in the drying room has left, kg. */
    private final Interval label;
    /** When the draws are ready. */
    private final ReadyTimes ready;
    /** Share of the fizz lost at the end of the plan. */
    private final Interval fizzLost;
    /** Water gone by the end of the drying, kg. */
    private final Interval waterGone;
    /** Share of the draws whose film wrap swells. */
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
    public double swells(DryingCourse.Swelling least) {
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
