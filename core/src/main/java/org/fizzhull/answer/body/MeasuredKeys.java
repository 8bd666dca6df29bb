package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.LiftReading;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.result.Probability;

/**
 * What was measured on other pieces and what the answer was before, as the key {@code measured} of {@code float}, {@code fizz}
 * and {@code press}. Of each kind the first measurement has its own key, all others stand under {@code further}.
 *
 * <ul>
 * <li>{@code fizz}, {@code rise}: {@code time_s} with {@code spread_s}, one standard deviation; {@code mass_g} of that piece, null
 *     for the one asked about; {@code left_mm}, its width when it came up
 * <li>{@code weighed}: {@code damp_mass_g} with {@code spread_g}, {@code pressure_kPa} and {@code shape} of that piece
 * <li>{@code lift}: {@code reading_g} of the scale with {@code spread_g}, {@code after_s} under water; {@code later} readings of the same piece
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
        to.object("measured", narrowing, known -> keys(to, known));
    }

    /** Each kind of measurement, then the answer as it was without them. */
    private static void keys(AnswerWriter to, MeasurementEffect known) {
        Observations seen = known.seen();
        to.object("fizz", seen.fizz().stream().findFirst(), piece -> timed(to, piece))
                .object("rise", seen.rise().stream().findFirst(), piece -> timed(to, piece))
                .object("weighed", seen.weighed(), piece -> weighed(to, piece))
                .object("lift", seen.lift().stream().findFirst(), piece -> held(to, piece));
        to.array("further");
        further(to, "fizz", seen.fizz().stream().skip(1), MeasuredKeys::timed);
        further(to, "rise", seen.rise().stream().skip(1), MeasuredKeys::timed);
        further(to, "lift", seen.lift().stream().skip(1), MeasuredKeys::held);
        further(
                to,
                "weighed",
                seen.weighed().stream().flatMap(piece -> piece.others().stream()),
                MeasuredKeys::weighed);
        further(to, "result", seen.results().stream(), MeasuredKeys::dropped);
        further(to, "drying log", seen.dried().stream(), MeasuredKeys::logged);
        to.endArray();
        to.number("effective_draws", known.effectiveDraws());
        // the answer as it was without these measurements
        to.object("before");
        to.number("floats_to_the_end", chance(known, Probability::floatsToTheEnd))
                .number("floats_at_once", chance(known, Probability::floatsAtOnce))
                .number(
                        "rises_later",
                        known.probability().map(Probability::risesLater).orElseGet(OptionalDouble::empty));
        to.interval("spare_at_drop_g", known.spareAtDrop(), GRAMS)
                .interval("rise_time_s", known.riseTime(), 1)
                .interval("fizz_time_s", known.fizzTime(), 1)
                .interval("damp_mass_g", known.dampMass(), GRAMS)
                .end();
    }

    /** A chance without the measurements; empty without draws. */
    private static OptionalDouble chance(MeasurementEffect known, ToDoubleFunction<Probability> which) {
        return known.probability().stream().mapToDouble(which).findFirst();
    }

    /** Further measurements of a kind, each an element of the array. */
    private static <T> void further(AnswerWriter to, String what, Stream<T> pieces, BiConsumer<AnswerWriter, T> keys) {
        pieces.forEach(piece -> {
            to.object().text("what", what);
            keys.accept(to, piece);
            to.end();
        });
    }

    /** Keys of a timed piece: s, g, mm. */
    private static void timed(AnswerWriter to, TimedPiece piece) {
        to.number("time_s", piece.time())
                .number("spread_s", piece.deviation())
                .number("mass_g", piece.mass(), GRAMS)
                .number("left_mm", piece.left(), MILLIMETRES);
    }

    /** Keys of a piece held under water: g, s; its first reading, then the later ones. */
    private static void held(AnswerWriter to, HeldPiece piece) {
        reading(to, piece.first());
        to.number("mass_g", piece.mass(), GRAMS)
                .objects("later", Observations.behind(piece.readings()), later -> reading(to, later));
    }

    /** Keys of one reading under water: g, s. */
    private static void reading(AnswerWriter to, LiftReading reading) {
        to.number("reading_g", inGrams(reading.reading()))
                .number("spread_g", inGrams(reading.deviation()))
                .number("after_s", reading.seconds());
    }

    /** Keys of a weighed piece: g, kPa. */
    private static void weighed(AnswerWriter to, WeighedPiece piece) {
        to.number("damp_mass_g", inGrams(piece.dampMass()))
                .number("spread_g", inGrams(piece.deviation()))
                .number("pressure_kPa", piece.pressure() * KILO)
                .text("shape", piece.shape().map(shape -> shape.text()));
    }

    /** Keys of what a piece did when it was let go: its result, and its mass before, g. */
    private static void dropped(AnswerWriter to, DroppedPiece piece) {
        to.text("result", piece.result().word()).number("mass_g", piece.mass(), GRAMS);
    }

    /** Keys of a drying log: the shape, and the number of weighings of all its pieces. */
    private static void logged(AnswerWriter to, Observations.LoggedPieces pieces) {
        int weighings = pieces.log().pieces().stream()
                .mapToInt(one -> one.times().size())
                .sum();
        to.text("shape", pieces.shape().text()).whole("weighings", weighings);
    }
}
