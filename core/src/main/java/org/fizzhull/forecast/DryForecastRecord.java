package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.JarPressure;
import org.fizzhull.drying.SafeHumidity;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.model.DryDraws;
import org.fizzhull.forecast.model.DryLogFit;
import org.fizzhull.shape.Shape;

/** The parts of a {@link DryForecast}, which its own package alone puts together. */
record DryForecastRecord(
        Asked asked,
        DryingCourse course,
        DryDraws drawn,
        Optional<DryLogFit> log,
        List<Notice> measured,
        OptionalDouble needsHumidity,
        SafeHumidity safe,
        JarPressure jar)
        implements DryForecast {
    /** Least volume of the jar of which the pressure is told, m3. */
    private static final double LITRE = 1e-3;

    DryForecastRecord {
        measured = List.copyOf(measured);
    }

    /** Volume of the jar of which the pressure is told for a shape, m3. */
    static double jarVolume(Shape shape) {
        return Math.max(LITRE, 2 * shape.volume());
    }
}
