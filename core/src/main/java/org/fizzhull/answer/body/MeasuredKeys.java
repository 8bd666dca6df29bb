package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.LoggedPieces;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.TimedPiece;

/**
 * What was measured on other pieces and what the answer was before, as the key {@code measured} of {@code float}, {@code fizz}
 * and {@code press}. Of each kind the first measurement has its own key, all others stand under {@code further}.
 *
 * <ul>
 * <li>{@code fizz}, {@code rise}: {@code time_s} with {@code spread_s}, one standard deviation; {@code mass_g} of that piece, null
 *     for the one asked about; {@code left_mm}, its width when it came up
 * <li>{@code weighed}: {@code damp_mass_g} with {@code spread_g}, {@code pressure_kPa} and {@code shape} of that piece
 * <li>{@code lift}: {@code reading_g} of the scale with {@code spread_g}, {@code after_s} under water
 * <li>{@code further} also has each result ({@code result}, {@code mass_g}) and drying log ({@code shape}, {@code weighings})
 * <li>{@code effective_draws}: number of independent draws that the narrowed ones are worth
 * <li>{@code before}: the answer without the measurements
 * </ul>
 */
final class MeasuredKeys {
    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;
    /** Millimetres in a metre. */
    private static final double MILLIMETRES = 1e3;
    /** Kilopascals in a pascal. */
    private static final double KILO = 1e-3;

    private MeasuredKeys() {}

    /** Writes the object, or null where nothing was measured. */
    static void write(AnswerWriter to, Optional<MeasurementEffect> narrowing) {
        if (narrowing.isEmpty()) {
            to.nothing("measured");
            return;
        }
        MeasurementEffect known = narrowing.get();
        to.object("measured");
        timed(to, "fizz", known.seen().fizz().stream().findFirst());
        timed(to, "rise", known.seen().rise().stream().findFirst());
        weighed(to, known.seen().weighed());
        lift(to, known.seen().lift().stream().findFirst());
        to.array("further");
        known.seen().fizz().stream().skip(1).forEach(piece -> further(to, "fizz", piece));
        known.seen().rise().stream().skip(1).forEach(piece -> further(to, "rise", piece));
        known.seen().lift().stream().skip(1).forEach(piece -> further(to, piece));
        known.seen().weighed().ifPresent(first -> first.others().forEach(piece -> further(to, piece)));
        known.seen().results().forEach(piece -> further(to, piece));
        known.seen().dried().forEach(pieces -> further(to, pieces));
        to.endArray();
        to.number("effective_draws", known.effectiveDraws());
        // the answer as it was without these measurements
        to.object("before");
        OptionalDouble floats = known.probability().isPresent()
                ? OptionalDouble.of(known.probability().get().floatsAtOnce())
                : OptionalDouble.empty();
        OptionalDouble later =
                known.probability().isPresent() ? known.probability().get().risesLater() : OptionalDouble.empty();
        OptionalDouble end = known.probability().isPresent()
                ? OptionalDouble.of(known.probability().get().floatsToTheEnd())
                : OptionalDouble.empty();
        to.number("floats_to_the_end", end).number("floats_at_once", floats).number("rises_later", later);
        to.interval("spare_at_drop_g", known.spareAtDrop(), GRAMS)
                .interval("rise_time_s", known.riseTime(), 1)
                .interval("fizz_time_s", known.fizzTime(), 1)
                .interval("damp_mass_g", known.dampMass(), GRAMS)
                .end()
                .end();
    }

    /** The first fizz or rise time under its key, or null. */
    private static void timed(AnswerWriter to, String key, Optional<TimedPiece> piece) {
        if (piece.isEmpty()) {
            to.nothing(key);
            return;
        }
        to.object(key);
        values(to, piece.get());
        to.end();
    }

    /** Keys of a timed piece: s, g, mm. */
    private static void values(AnswerWriter to, TimedPiece piece) {
        to.number("time_s", piece.time())
                .number("spread_s", piece.deviation())
                .number("mass_g", piece.mass(), GRAMS)
                .number("left_mm", piece.left(), MILLIMETRES);
    }

    /** The first reading of a piece held under water, or null. */
    private static void lift(AnswerWriter to, Optional<HeldPiece> piece) {
        if (piece.isEmpty()) {
            to.nothing("lift");
            return;
        }
        to.object("lift");
        values(to, piece.get());
        to.end();
    }

    /** Keys of a piece held under water: g, s. */
    private static void values(AnswerWriter to, HeldPiece piece) {
        to.number("reading_g", inGrams(piece.reading()))
                .number("spread_g", inGrams(piece.deviation()))
                .number("after_s", piece.seconds())
                .number("mass_g", piece.mass(), GRAMS);
    }

    /** The first weighed piece, or null. */
    private static void weighed(AnswerWriter to, Optional<WeighedPiece> piece) {
        if (piece.isEmpty()) {
            to.nothing("weighed");
            return;
        }
        to.object("weighed");
        values(to, piece.get());
        to.end();
    }

    /** Keys of a weighed piece: g, kPa. */
    private static void values(AnswerWriter to, WeighedPiece piece) {
        to.number("damp_mass_g", inGrams(piece.dampMass()))
                .number("spread_g", inGrams(piece.deviation()))
                .number("pressure_kPa", piece.pressure() * KILO)
                .text("shape", piece.shape().map(shape -> shape.text()));
    }

    /** A second or later time, as an element of the array. */
    private static void further(AnswerWriter to, String what, TimedPiece piece) {
        to.object().text("what", what);
        values(to, piece);
        to.end();
    }

    private static void further(AnswerWriter to, HeldPiece piece) {
        to.object().text("what", "lift");
        values(to, piece);
        to.end();
    }

    private static void further(AnswerWriter to, WeighedPiece piece) {
        to.object().text("what", "weighed");
        values(to, piece);
        to.end();
    }

    /** What a piece did when it was let go; all of them stand under {@code further}. */
    private static void further(AnswerWriter to, DroppedPiece piece) {
        to.object()
                .text("what", "result")
                .text("result", piece.result().word())
                .number("mass_g", piece.mass(), GRAMS)
                .end();
    }

    /** A drying log; all of them stand under {@code further}. */
    private static void further(AnswerWriter to, LoggedPieces pieces) {
        int weighings = pieces.log().pieces().stream()
                .mapToInt(one -> one.times().size())
                .sum();
        to.object()
                .text("what", "drying log")
                .text("shape", pieces.shape().text())
                .whole("weighings", weighings)
                .end();
    }
}
