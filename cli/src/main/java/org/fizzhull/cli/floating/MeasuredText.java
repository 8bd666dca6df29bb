package org.fizzhull.cli.floating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.Decimals;

/** What the stopwatch and the scale did to an answer, in a maker's words. */
public final class MeasuredText {
    private static final long MINUTE = 60;

    /** A piece of usual weight, kg. */
    private static final double WHOLE = 0.1;

    private MeasuredText() {}

    /** Of a piece in the bath: its spare, its fate and its fizz time now. */
    static void bathed(
            Optional<MeasurementEffect> narrowing,
            Interval spare,
            Optional<Probability> now,
            Optional<Interval> fizzTime,
            Table table) {
        if (narrowing.isEmpty()) {
            return;
        }
        MeasurementEffect known = narrowing.get();
        String drop = "at the drop " + ends(spare) + ", without it "
                + ends(known.spareAtDrop().orElse(spare)) + chance(known, now);
        if (known.seen().weighed().isPresent()) {
            table.row("your scale", pieces(known) + ": " + drop);
        }
        if (!known.seen().lift().isEmpty()) {
            table.row("your scale", lifts(known) + ": " + drop);
        }
        if (!known.seen().rise().isEmpty()) {
            table.row("your stopwatch", "up after " + times(known.seen().rise()) + ": " + drop);
        }
        fizz(known, fizzTime, table);
    }

    private static String chance(MeasurementEffect known, Optional<Probability> now) {
        return now.isPresent() && known.probability().isPresent()
                ? "; chance to float to the end "
                        + FloatSentence.chance(now.get().floatsToTheEnd()) + ", without it "
                        + FloatSentence.chance(known.probability().get().floatsToTheEnd())
                : "";
    }

    /** Of the fizz time alone. */
    public static void fizzed(Optional<MeasurementEffect> narrowing, Interval fizzTime, Table table) {
        narrowing.ifPresent(known -> {
            if (!known.seen().lift().isEmpty()) {
                table.row("your scale", lifts(known));
            }
            if (!known.seen().rise().isEmpty()) {
                table.row("your stopwatch", "up after " + times(known.seen().rise()));
            }
            fizz(known, Optional.of(fizzTime), table);
        });
    }

    /** Of a pressed piece. */
    public static void pressed(MeasurementEffect known, Interval dampMass, Table table) {
        if (known.seen().weighed().isPresent()) {
            table.row(
                    "your scale",
                    pieces(known) + ": this piece " + grams(dampMass) + ", without it "
                            + grams(known.dampMass().orElse(dampMass)));
        }
    }

    /** What stands behind it. */
    public static void behind(MeasurementEffect known, Table table) {
        known.effectiveDraws()
                .ifPresent(draws -> table.row(
                        "draws that agree",
                        "worth " + Math.round(draws) + " independent ones: in each draw what was measured is solved"
                                + " for one weak number (bubble size, recession, press scale) and the draw weighed by"
                                + " its prior there"));
        known.seen().fizz().forEach(piece -> table.row("fizz time", spread(piece)));
        known.seen().rise().forEach(piece -> table.row("rise time", spread(piece)));
        known.seen()
                .lift()
                .forEach(piece -> table.row(
                        "reading under water",
                        piece.readings().stream()
                                        .map(read -> NumberText.grams(read.reading()) + " +- "
                                                + NumberText.grams(read.deviation()))
                                        .collect(Collectors.joining(" then "))
                                + " (one standard deviation; assumed unless you gave it"
                                + (piece.readings().size() > 1 ? "; half of the variance is the same in all of them" : "")
                                + "), against the weight before;"
                                + " one draw in ten takes it that the scale does not feel the rising bubbles; a proposal of"
                                + " this program, checked by simulation only"));
        if (several(known)) {
            table.row("several of a kind", "the first is solved exactly in each draw, the others weigh the draws");
        }
    }

    private static boolean several(MeasurementEffect known) {
        return known.seen().fizz().size() > 1
                || known.seen().rise().size() > 1
                || known.seen().rise().size() + known.seen().lift().size() > 1
                || known.seen()
                        .weighed()
                        .filter(piece -> !piece.others().isEmpty())
                        .isPresent();
    }

    private static void fizz(MeasurementEffect known, Optional<Interval> fizzTime, Table table) {
        if (!known.seen().fizz().isEmpty()
                && fizzTime.isPresent()
                && known.fizzTime().isPresent()) {
            table.row(
                    "your stopwatch",
                    "gone after " + times(known.seen().fizz()) + ": fizzes " + durations(fizzTime.get())
                            + ", without it " + durations(known.fizzTime().get()));
        }
    }

    private static String times(List<TimedPiece> pieces) {
        return pieces.stream().map(MeasuredText::time).collect(Collectors.joining(" and "));
    }

    private static String lifts(MeasurementEffect known) {
        return "under water "
                + known.seen().lift().stream()
                        .map(piece -> piece.readings().stream()
                                        .map(read -> NumberText.grams(read.reading()) + " after "
                                                + entered(read.seconds()))
                                        .collect(Collectors.joining(" then "))
                                + (piece.mass().isPresent()
                                        ? " at " + NumberText.grams(piece.mass().getAsDouble())
                                        : ""))
                        .collect(Collectors.joining(" and "));
    }

    private static String pieces(MeasurementEffect known) {
        List<String> all = new ArrayList<>();
        known.seen().eachWeighed(piece -> all.add(piece(piece)));
        return String.join(" and ", all);
    }

    private static String piece(WeighedPiece piece) {
        return NumberText.grams(piece.dampMass()) + " at " + Decimals.text(piece.pressure() / 1e3, 3) + NumberText.UNIT
                + "kPa"
                + piece.shape().map(shape -> " in " + ShapeWords.piece(shape)).orElse("");
    }

    private static String time(TimedPiece piece) {
        return entered(piece.time())
                + (piece.mass().isPresent()
                        ? " at " + NumberText.grams(piece.mass().getAsDouble())
                        : "")
                + (piece.left().isPresent()
                        ? ", " + NumberText.millimetres(piece.left().getAsDouble()) + " left"
                        : "");
    }

    /** As a stopwatch shows it. */
    private static String entered(double seconds) {
        long whole = Math.round(seconds);
        long minutes = whole < 2 * MINUTE ? 0 : whole / MINUTE;
        long rest = whole - minutes * MINUTE;
        return (minutes > 0 ? minutes + "" + NumberText.UNIT + "min" : "")
                + (minutes > 0 && rest > 0 ? "" + NumberText.UNIT : "")
                + (rest > 0 || minutes == 0 ? rest + "" + NumberText.UNIT + "s" : "");
    }

    private static String spread(TimedPiece piece) {
        return Decimals.text(piece.time(), 4) + " s +- " + Decimals.text(piece.deviation(), 2)
                + " s from piece to piece (one standard deviation; assumed unless you gave it)";
    }

    private static String ends(Interval spare) {
        return spare.low() < spare.high()
                ? FloatText.signed(spare.low(), WHOLE) + " to " + FloatText.signed(spare.high(), WHOLE)
                : FloatText.signed(spare.median(), WHOLE);
    }

    private static String durations(Interval time) {
        return time.low() < time.high()
                ? OutcomeText.duration(time.low()) + " to " + OutcomeText.duration(time.high())
                : OutcomeText.duration(time.median());
    }

    private static String grams(Interval mass) {
        return mass.low() < mass.high()
                ? NumberText.grams(mass.low()) + " to " + NumberText.grams(mass.high())
                : NumberText.grams(mass.median());
    }
}
