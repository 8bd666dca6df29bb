package org.fizzhull.cli.floating;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.text.Json;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.TimedPiece;

/** What was measured on other pieces and what the answer was before, as the key {@code measured}. */
public final class MeasuredJson {
    private static final double GRAMS = 1e3;
    private static final double KILO = 1e-3;

    private MeasuredJson() {}

    /** The object, or null where nothing was measured. */
    public static void write(Json json, Optional<MeasurementEffect> narrowing) {
        if (narrowing.isEmpty()) {
            json.nothing("measured");
            return;
        }
        MeasurementEffect known = narrowing.get();
        json.object("measured");
        timed(json, "fizz", known.seen().fizz().stream().findFirst());
        timed(json, "rise", known.seen().rise().stream().findFirst());
        weighed(json, known.seen().weighed());
        lift(json, known.seen().lift().stream().findFirst());
        json.array("further");
        known.seen().fizz().stream().skip(1).forEach(piece -> further(json, "fizz", piece));
        known.seen().rise().stream().skip(1).forEach(piece -> further(json, "rise", piece));
        known.seen().lift().stream().skip(1).forEach(piece -> further(json, piece));
        known.seen().weighed().ifPresent(first -> first.others().forEach(piece -> further(json, piece)));
        json.endArray();
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
        json.object(key);
        values(json, piece.get());
        json.end();
    }

    private static void values(Json json, TimedPiece piece) {
        OptionalDouble left = piece.left();
        json.number("time_s", piece.time())
                .number("spread_s", piece.deviation())
                .number("mass_g", grams(piece.mass()))
                .number("left_mm", left.isPresent() ? OptionalDouble.of(inMillimetres(left.getAsDouble())) : left);
    }

    private static OptionalDouble grams(OptionalDouble mass) {
        return mass.isPresent() ? OptionalDouble.of(inGrams(mass.getAsDouble())) : mass;
    }

    private static void lift(Json json, Optional<HeldPiece> piece) {
        if (piece.isEmpty()) {
            json.nothing("lift");
            return;
        }
        json.object("lift");
        values(json, piece.get());
        json.end();
    }

    private static void values(Json json, HeldPiece piece) {
        json.number("reading_g", inGrams(piece.reading()))
                .number("spread_g", inGrams(piece.deviation()))
                .number("after_s", piece.seconds())
                .number("mass_g", grams(piece.mass()));
    }

    private static void weighed(Json json, Optional<WeighedPiece> piece) {
        if (piece.isEmpty()) {
            json.nothing("weighed");
            return;
        }
        json.object("weighed");
        values(json, piece.get());
        json.end();
    }

    private static void values(Json json, WeighedPiece piece) {
        json.number("damp_mass_g", inGrams(piece.dampMass()))
                .number("spread_g", inGrams(piece.deviation()))
                .number("pressure_kPa", piece.pressure() * KILO)
                .text("shape", piece.shape().map(shape -> shape.text()).orElse(null));
    }

    private static void further(Json json, String what, TimedPiece piece) {
        json.object().text("what", what);
        values(json, piece);
        json.end();
    }

    private static void further(Json json, HeldPiece piece) {
        json.object().text("what", "lift");
        values(json, piece);
        json.end();
    }

    private static void further(Json json, WeighedPiece piece) {
        json.object().text("what", "weighed");
        values(json, piece);
        json.end();
    }

    private static void interval(Json json, String key, Optional<Interval> value, double perUnit) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(perUnit));
        } else {
            json.nothing(key);
        }
    }
}
