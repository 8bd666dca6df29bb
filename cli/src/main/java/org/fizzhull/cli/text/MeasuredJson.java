package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.Narrowing;
import org.fizzhull.forecast.TimedPiece;
import org.fizzhull.forecast.WeighedPiece;

/** What was measured on other pieces and what the answer was before, as the key {@code measured}. */
final class MeasuredJson {
    private static final double GRAMS = 1e3;
    private static final double KILO = 1e-3;

    private MeasuredJson() {}

    /** The object, or null where nothing was measured. */
    static void write(Json json, Optional<Narrowing> narrowing) {
        if (narrowing.isEmpty()) {
            json.nothing("measured");
            return;
        }
        Narrowing known = narrowing.get();
        json.object("measured");
        timed(json, "fizz", known.seen().fizz());
        timed(json, "rise", known.seen().rise());
        weighed(json, known.seen().weighed());
        json.number("effective_draws", known.effectiveDraws());
        json.object("before");
        OptionalDouble floats = known.probability().isPresent()
                ? OptionalDouble.of(known.probability().get().floatsAtOnce())
                : OptionalDouble.empty();
        OptionalDouble later =
                known.probability().isPresent() ? known.probability().get().risesLater() : OptionalDouble.empty();
        OptionalDouble end = known.probability().isPresent()
                ? OptionalDouble.of(known.probability().get().floatsToTheEnd())
                : OptionalDouble.empty();
        json.number("floats_to_the_end", end).number("floats_at_once", floats).number("rises_later", later);
        interval(json, "spare_at_drop_g", known.spareAtDrop(), GRAMS);
        interval(json, "rise_time_s", known.riseTime(), 1);
        interval(json, "fizz_time_s", known.fizzTime(), 1);
        interval(json, "damp_mass_g", known.dampMass(), GRAMS);
        json.end().end();
    }

    private static void timed(Json json, String key, Optional<TimedPiece> piece) {
        if (piece.isEmpty()) {
            json.nothing(key);
            return;
        }
        OptionalDouble mass = piece.get().mass();
        OptionalDouble left = piece.get().left();
        json.object(key)
                .number("time_s", piece.get().time())
                .number("spread_s", piece.get().deviation())
                .number("mass_g", mass.isPresent() ? OptionalDouble.of(inGrams(mass.getAsDouble())) : mass)
                .number("left_mm", left.isPresent() ? OptionalDouble.of(inMillimetres(left.getAsDouble())) : left)
                .end();
    }

    private static void weighed(Json json, Optional<WeighedPiece> piece) {
        if (piece.isEmpty()) {
            json.nothing("weighed");
            return;
        }
        json.object("weighed")
                .number("damp_mass_g", inGrams(piece.get().dampMass()))
                .number("spread_g", inGrams(piece.get().deviation()))
                .number("pressure_kPa", piece.get().pressure() * KILO)
                .text("shape", piece.get().shape().map(shape -> shape.text()).orElse(null))
                .end();
    }

    private static void interval(Json json, String key, Optional<Interval> value, double perUnit) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(perUnit));
        } else {
            json.nothing(key);
        }
    }
}
