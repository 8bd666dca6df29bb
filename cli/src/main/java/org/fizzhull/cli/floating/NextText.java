package org.fizzhull.cli.floating;

import org.fizzhull.cli.text.Say;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;

/** The measurement that would tell most: what to do, what to type, and what it is worth. */
public final class NextText {
    private NextText() {}

    /** What to measure. */
    public static String what(MeasureNext next, Forecast forecast) {
        return what(next, forecast.question());
    }

    /** The same of a question. */
    public static String what(MeasureNext next, Question question) {
        return switch (next.kind()) {
            case WEIGH_PRESSED -> "weigh one pressed piece, damp, straight from the mould";
            case TIME_FIZZ ->
                "time how long a piece of " + Say.grams(next.mass(), next.mass()) + " takes until it is gone";
            case TIME_RISE ->
                "press one heavy piece, about " + Say.grams(next.mass(), next.mass())
                        + ", that sinks first: time when it comes up and see how wide it is then";
            case HOLD_UNDER ->
                "hold one piece of " + Say.grams(next.mass())
                        + " wholly under with a wire hoop, in a bowl of water as warm as the bath on the tared scale, and read"
                        + " it after 5" + Say.UNIT + "s";
            case WEIGH_WATER ->
                "fill the mould of "
                        + ShapeWords.piece(question.shape().bare())
                        + " with water, weigh that, and give the size that holds as much";
        };
    }

    /** The option to add to the same command, with what will probably be read as an example. */
    public static String option(MeasureNext next) {
        String mass = Say.plain(Say.grams(next.mass(), next.mass()));
        return switch (next.kind()) {
            case WEIGH_PRESSED ->
                "--weighed \""
                        + Say.plain(Say.grams(
                                next.expected().median(), next.expected().median())) + "\"";
            case TIME_FIZZ -> "--measured-fizz \"" + seconds(next) + " at " + mass + "\"";
            case TIME_RISE -> "--measured-rise \"" + seconds(next) + " at " + mass + left(next) + "\"";
            case HOLD_UNDER ->
                "--measured-lift \"" + Say.plain(Say.grams(next.expected().median())) + " after 5 s at " + mass + "\"";
            case WEIGH_WATER -> "--measured water";
        };
    }

    private static String left(MeasureNext next) {
        return next.left().isPresent() && next.left().getAsDouble() > 0
                ? ", " + Say.plain(Say.millimetres(next.left().getAsDouble())) + " left"
                : "";
    }

    private static String seconds(MeasureNext next) {
        return Say.whole(next.expected().median()) + " s";
    }

    /** How much narrower the forecast becomes. */
    public static String worth(MeasureNext next) {
        return "how far it lies from its critical weight would then be known to " + half(next.widthAfter())
                + " in place of " + half(next.widthBefore());
    }

    private static String half(double width) {
        return "+- " + Decimals.text(Math.rint(Units.inGrams(width) * 5) / 10, 6) + Say.UNIT + 'g';
    }
}
