package org.fizzhull.forecast.model;

import java.util.List;
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

    /** Of columns that are filled and no longer written to. */
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

    /** Mass as pressed. */
    public Interval damp() {
        return damp;
    }

    /** Mass at the end of the plan, as it goes into the bath. */
    public Interval last() {
        return last;
    }

    /** Mass once all that can still leave in the drying room has left. */
    public Interval label() {
        return label;
    }

    /** When 95 % of the removable water is gone. */
    public ReadyTimes ready() {
        return ready;
    }

    /** Share of the fizz lost at the end of the plan. */
    public Interval fizzLost() {
        return fizzLost;
    }

    /** Water that has left by the end of the drying, kg; below 0 where it came in. */
    public Interval waterGone() {
        return waterGone;
    }

    /** Share of the draws whose film wrap swells with gas. */
    public double swollenFilms() {
        return swollenFilms;
    }

    /** Times of the band, s from pressing, ascending from 0 to the end of the plan. */
    public List<Double> times() {
        return columns.times();
    }

    /** Mass and fizz left over time; sorts all draws at each time and call. */
    public DryBand band() {
        return columns.band();
    }
}
