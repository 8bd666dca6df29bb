package org.fizzhull.cli.floating;

import java.util.Optional;
import org.fizzhull.answer.body.NextWords;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.forecast.FloatVerdict;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;

/** The measurement that would tell most: what to do, what to type, and what it is worth. */
public final class NextText {
    private NextText() {}

    /** The words of the JSON, behind the line that was typed; the option alone where that is empty. */
    public static NextWords words(String asked) {
        return new NextWords() {
            @Override
            public Optional<String> what(MeasureNext next, Question question) {
                return Optional.of(NumberText.plain(NextText.what(next, question)));
            }

            @Override
            public Optional<String> type(MeasureNext next) {
                String option = NumberText.plain(option(next));
                return Optional.of(asked.isEmpty() ? option : asked + ' ' + option);
            }
        };
    }

    /** What to measure. */
    public static String what(MeasureNext next, Forecast forecast) {
        return what(next, forecast.question());
    }

    /** The same of a question. */
    public static String what(MeasureNext next, Question question) {
        return switch (next.kind()) {
            case WEIGH_PRESSED -> "weigh one pressed piece, damp, straight from the mould";
            case TIME_FIZZ ->
                "time how long a piece of " + NumberText.grams(next.mass(), next.mass()) + " takes until it is gone";
            case TIME_RISE ->
                "press one heavy piece, about " + NumberText.grams(next.mass(), next.mass())
                        + ", that sinks first: time when it comes up and see how wide it is then";
            case HOLD_UNDER ->
                "hold one piece of " + NumberText.grams(next.mass())
                        + " wholly under with a wire hoop, in a bowl of bath-warm water on the tared scale, and read it"
                        + " after 5" + NumberText.UNIT + "s";
            case WEIGH_WATER ->
                "fill the mould of "
                        + ShapeWords.piece(question.shape().bare())
                        + " with water, weigh that, and give the size that holds as much";
        };
    }

    /** What is left where the answer is open and no single reading would close it: a piece in the bath. */
    static Optional<String> trial(Forecast forecast) {
        boolean alike =
                forecast.share().map(CriticalWeights.BatchShare::together).orElse(true);
        if (forecast.verdict().answer() != FloatVerdict.Answer.CANNOT_TELL
                || !alike
                || forecast.question().stillWater()) {
            return Optional.empty();
        }
        return Optional.of("To know better: put one of its kind into a bath: nearly all of them will do the same."
                + " No reading of scale or watch alone would settle it.");
    }

    /** The option to add to the same command, with what will probably be read as an example; not broken between lines. */
    public static String option(MeasureNext next) {
        return TypedLine.unbroken(typed(next));
    }

    private static String typed(MeasureNext next) {
        String mass = NumberText.grams(next.mass(), next.mass());
        return switch (next.kind()) {
            case WEIGH_PRESSED ->
                "--weighed \""
                        + NumberText.grams(
                                next.expected().median(), next.expected().median()) + "\"";
            case TIME_FIZZ -> "--measured-fizz \"" + seconds(next) + " at " + mass + "\"";
            case TIME_RISE -> "--measured-rise \"" + seconds(next) + " at " + mass + left(next) + "\"";
            case HOLD_UNDER ->
                "--measured-lift \"" + NumberText.grams(next.expected().median()) + " after 5 s at " + mass + "\"";
            case WEIGH_WATER -> "--measured water";
        };
    }

    private static String left(MeasureNext next) {
        return next.left().isPresent() && next.left().getAsDouble() > 0
                ? ", " + NumberText.millimetres(next.left().getAsDouble()) + " left"
                : "";
    }

    private static String seconds(MeasureNext next) {
        return NumberText.whole(Math.max(1, next.expected().median())) + " s";
    }

    /** What it is good for: to settle the question, or else to make the forecast narrower. */
    public static String worth(MeasureNext next) {
        if (next.settles() >= MeasureNext.SETTLING) {
            return "with a chance of " + NumberText.percent(next.settles()) + " this settles it";
        }
        return "how far it lies from its critical weight would then be known to " + half(next.widthAfter())
                + " in place of " + half(next.widthBefore());
    }

    private static String half(double width) {
        double g = Units.inGrams(width) / 2;
        double step = g < 1 ? 0.01 : 0.1;
        return "+-" + NumberText.UNIT + Decimals.text(Math.rint(g / step) * step, 4) + NumberText.UNIT + 'g';
    }
}
