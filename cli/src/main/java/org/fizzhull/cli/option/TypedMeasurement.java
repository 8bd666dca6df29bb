package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.LiftReading;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/** What was measured on one piece in the bath, as it is typed or written in a bench file. Stateless. */
final class TypedMeasurement {
    private static final String AT = PieceText.AT;
    private static final Allowed MASS = Allowed.above(0, Unit.GRAM);

    private static final Allowed TIME = Allowed.aboveUpTo(0, 24, Unit.HOUR);
    private static final Allowed WIDTH = Allowed.aboveUpTo(0, 1000, Unit.MILLIMETRE);
    private static final Allowed SOON = Allowed.aboveUpTo(0, 30, Unit.SECOND);
    private static final String AFTER = " after ";
    private static final String THEN = " then ";
    private static final String READINGS = "150 g after 2 s then 151 g after 4 s";
    private static final String LEFT = "left";

    private TypedMeasurement() {}

    /** What was seen, and what an option or its key of a bench file says of one piece more; without its mould. */
    static Observations and(Observations seen, String option, String text) {
        List<String> parts = QuantityText.parts(text);
        // of a rise its width stands behind a comma; of all else a comma can only part two pieces
        boolean several = !option.equals(MeasuredOptions.RISE) && parts.size() > 1;
        for (String further : parts.subList(1, parts.size())) {
            several |= further.contains(AT) || further.contains(AFTER);
        }
        if (several) {
            boolean dunk = option.equals(MeasuredOptions.LIFT);
            throw new Refusal(
                    "several-readings",
                    option,
                    text,
                    "one piece, such as " + parts.get(0),
                    "Leave out the comma, or give " + option + " again for each further piece"
                            + (dunk ? "; further readings of the same piece stand behind then, as in " + READINGS : "")
                            + ".");
        }
        return switch (option) {
            case MeasuredOptions.FIZZ -> seen.fizzed(timed(option, text, false));
            case MeasuredOptions.RISE -> seen.rose(timed(option, text, true));
            case MeasuredOptions.RESULT -> seen.dropped(dropped(text));
            default -> seen.held(held(text));
        };
    }

    /** {@code sank at 152 g}. */
    private static DroppedPiece dropped(String text) {
        int at = text.indexOf(AT);
        String word = (at < 0 ? text : text.substring(0, at)).strip();
        DroppedPiece.Result result = DroppedPiece.Result.named(word.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new Refusal(
                        "unknown-word",
                        MeasuredOptions.RESULT,
                        text,
                        "floated, rose or sank, and its weight, such as sank at 152 g",
                        "floated: up within 20 s; rose: sank first and came up later."));
        return at < 0
                ? new DroppedPiece(result, OptionalDouble.empty())
                : DroppedPiece.of(result, MASS.parseExact(MeasuredOptions.RESULT, text.substring(at + AT.length())));
    }

    /** {@code 151 g after 5 s at 142 g}, or {@code 150 g after 2 s then 151 g after 4 s at 142 g}. */
    private static HeldPiece held(String text) {
        int at = text.lastIndexOf(AT);
        String[] readings = (at < 0 ? text : text.substring(0, at)).split(THEN, -1);
        List<LiftReading> shown = new ArrayList<>();
        for (String reading : readings) {
            int after = reading.indexOf(AFTER);
            if (after < 0) {
                throw new Refusal(
                        "missing-value",
                        MeasuredOptions.LIFT,
                        text,
                        "a reading and its time, such as 151 g after 5 s",
                        "Say how long the piece was under when you read the scale; 2 to 5 s say most.");
            }
            Amount grams = MASS.parse(MeasuredOptions.LIFT, reading.substring(0, after));
            double seconds = SOON.parseExact(MeasuredOptions.LIFT, reading.substring(after + AFTER.length()));
            double deviation = grams.isExact() ? HeldPiece.DEVIATION : grams.standardDeviation();
            shown.add(new LiftReading(grams.value(), deviation, seconds));
        }
        HeldPiece piece = new HeldPiece(shown, OptionalDouble.empty());
        return at < 0 ? piece : piece.weighing(MASS.parseExact(MeasuredOptions.LIFT, text.substring(at + AT.length())));
    }

    private static TimedPiece timed(String option, String text, boolean rise) {
        List<String> parts = QuantityText.parts(text);
        if (rise && parts.size() > 1) {
            String size = String.join(", ", parts.subList(1, parts.size()));
            return timed(option, parts.get(0), true).leaving(left(option, size));
        }
        int at = text.indexOf(AT);
        Amount time = TIME.parse(option, at < 0 ? text : text.substring(0, at));
        TimedPiece piece;
        try {
            piece = rise ? TimedPiece.rose(time.value()) : TimedPiece.fizzed(time.value());
        } catch (Refusal refusal) {
            throw refusal.of(option);
        }
        if (!time.isExact()) {
            piece = piece.within(time.standardDeviation());
        }
        return at < 0 ? piece : piece.weighing(MASS.parseExact(option, text.substring(at + AT.length())));
    }

    /** {@code 40 mm left}, the last word left out or not. */
    private static double left(String option, String text) {
        String size = text.endsWith(LEFT)
                ? text.substring(0, text.length() - LEFT.length()).trim()
                : text;
        return WIDTH.parseExact(option, size);
    }
}
