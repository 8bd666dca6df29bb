package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;
import org.fizzhull.voyage.result.Voyage;

/** The parts of a {@link FizzForecast}, which its own package alone puts together. */
record FizzForecastRecord(
        Question question,
        Blend blend,
        Sampling sampling,
        Piece piece,
        FizzedBath bath,
        Voyage voyage,
        Drawn drawn,
        Optional<MeasurementEffect> narrowing,
        List<Notice> notices)
        implements FizzForecast {
    FizzForecastRecord {
        notices = List.copyOf(notices);
    }
}
