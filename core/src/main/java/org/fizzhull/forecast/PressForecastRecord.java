package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/** The parts of a {@link PressForecast}, which its own package alone puts together. */
record PressForecastRecord(
        Blend blend,
        double looseDensity,
        double tappedDensity,
        Shape shape,
        Sampling sampling,
        List<Point> curve,
        Pressed.LiquidWindow window,
        double workingTime,
        double workingTimeLeast,
        double workingTimeMost,
        Optional<PieceOut> piece,
        List<Notice> notices)
        implements PressForecast {
    PressForecastRecord {
        curve = List.copyOf(curve);
        notices = List.copyOf(notices);
    }
}
