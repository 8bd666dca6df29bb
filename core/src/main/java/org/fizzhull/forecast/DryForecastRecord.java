package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.drying.run.SafeHumidity;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.model.DryDraws;
import org.fizzhull.forecast.result.DryBand;
import org.fizzhull.forecast.result.DryLog;

/** The parts of a {@link DryForecast}, which its own package alone puts together. */
record DryForecastRecord(
        Asked asked,
        DryingCourse course,
        DryDraws drawn,
        Optional<DryLog.Fit> log,
        List<Notice> measured,
        OptionalDouble needsHumidity,
        SafeHumidity safe,
        JarPressure jar)
        implements DryForecast {
    DryForecastRecord {
        measured = List.copyOf(measured);
    }

    @Override
    public Interval damp() {
        return drawn.damp();
    }

    @Override
    public Interval last() {
        return drawn.last();
    }

    @Override
    public Interval label() {
        return drawn.label();
    }

    @Override
    public Optional<Interval> ready() {
        return drawn.ready().interval();
    }

    @Override
    public double late() {
        return drawn.ready().late();
    }

    @Override
    public Interval fizzLost() {
        return drawn.fizzLost();
    }

    @Override
    public DryBand band() {
        return drawn.band();
    }

    @Override
    public Interval waterGone() {
        return drawn.waterGone();
    }

    @Override
    public double swollenFilms() {
        return drawn.swollenFilms();
    }

    @Override
    public List<Double> times() {
        return drawn.times();
    }

    @Override
    public double readyWithin(double seconds) {
        return drawn.ready().within(seconds);
    }

    @Override
    public double losesMoreThan(double share) {
        return drawn.losesMoreThan(share);
    }

    @Override
    public double swells(DryingCourse.Swelling least) {
        return drawn.swells(least);
    }

    @Override
    public double keepsBelow() {
        return safe.below();
    }

    @Override
    public double keepsAbove() {
        return safe.above();
    }

    @Override
    public double jarOverpressure() {
        return jar.overpressure();
    }
}
