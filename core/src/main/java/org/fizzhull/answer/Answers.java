package org.fizzhull.answer;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.body.AdviceAnswer;
import org.fizzhull.answer.body.CompareAnswer;
import org.fizzhull.answer.body.DryAnswer;
import org.fizzhull.answer.body.DryReport;
import org.fizzhull.answer.body.FizzAnswer;
import org.fizzhull.answer.body.FloatAnswer;
import org.fizzhull.answer.body.IngredientsAnswer;
import org.fizzhull.answer.body.LearnAnswer;
import org.fizzhull.answer.body.PressAnswer;
import org.fizzhull.answer.body.PressReport;
import org.fizzhull.answer.body.ShapeAnswer;
import org.fizzhull.answer.body.ShapeKindsAnswer;
import org.fizzhull.answer.body.WhyAnswer;
import org.fizzhull.answer.tree.AnswerTree;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.learn.Learned;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.shape.Shape;

/**
 * What is answered to a question, as the object that the command line writes as JSON: the same keys, in the same order and
 * units, with the same values. Keys and units: cli/docs/contract.md, 4.
 *
 * <pre>{@code
 * Forecast forecast = FloatPredictor.standard().forecast(Question.weighed(ball, 0.142));
 * AnswerTree answer = Answers.of(forecast);
 * double chance = answer.number("/probability/floats_to_the_end").orElseThrow();
 * objectMapper.writeValue(out, answer.toMap()); // whatever JSON library is at hand
 * }</pre>
 *
 * <p>Sentences that only a program that talks to people can word (what to type, what to do next) are null, and a notice
 * {@code no-words} says so. Without draws the chances are null. Stateless.
 */
public final class Answers {
    private Answers() {}

    /**
     * {@return a forecast of floating, as {@code float} tells it}
     *
     * @param forecast chances, limits and attitudes of one piece
     */
    public static AnswerTree of(Forecast forecast) {
        return FloatAnswer.of(forecast).tree();
    }

    /**
     * {@return a forecast of fizzing, as {@code fizz} tells it}
     *
     * @param forecast gas, pH and fizz time of one piece
     */
    public static AnswerTree of(FizzForecast forecast) {
        return new FizzAnswer(forecast).tree();
    }

    /**
     * {@return a forecast of drying, as {@code dry} tells it without dates}
     *
     * @param forecast drying of the recipe, after any weighings
     */
    public static AnswerTree of(DryForecast forecast) {
        return of(forecast, Optional.empty(), Optional.empty());
    }

    /**
     * {@return a forecast of drying with its dates, as {@code dry} tells it} Local time without a zone.
     *
     * @param forecast drying of the recipe, after any weighings
     * @param start when the piece was pressed; empty where no date is known
     * @param readyBy when it has to be ready; empty where no date is known
     */
    public static AnswerTree of(DryForecast forecast, Optional<LocalDateTime> start, Optional<LocalDateTime> readyBy) {
        return DryAnswer.of(new DryReport(forecast, start, readyBy)).tree();
    }

    /**
     * {@return what a mix does under a press, as {@code press} tells it of a named shape}
     *
     * @param forecast the mix and, where one was asked for, the piece
     */
    public static AnswerTree of(PressForecast forecast) {
        return new PressAnswer(new PressReport(forecast, true, Optional.empty(), false)).tree();
    }

    /**
     * {@return what is known of a shape, as the command for shapes tells it}
     *
     * @param shape any shape
     */
    public static AnswerTree of(Shape shape) {
        return new ShapeAnswer(shape).tree();
    }

    /** {@return the kinds of shapes that can be typed, as {@code shapes} lists them} */
    public static AnswerTree shapeKinds() {
        return new ShapeKindsAnswer().tree();
    }

    /**
     * {@return ingredients with their numbers and sources, as {@code ingredients} lists them}
     *
     * @param rows the ingredients
     */
    public static AnswerTree ingredients(List<Ingredient> rows) {
        return new IngredientsAnswer(rows, List.of()).tree();
    }

    /**
     * {@return a table of candidates, as {@code compare} tells it}
     *
     * @param comparison the table, best row first
     */
    public static AnswerTree of(Comparison comparison) {
        return CompareAnswer.of(comparison).tree();
    }

    /**
     * {@return the smallest changes, as the command for advice tells them}
     *
     * @param advice how the design stands and what would mend it
     */
    public static AnswerTree of(Advice advice) {
        return AdviceAnswer.of(advice).tree();
    }

    /**
     * {@return why a batch failed, as {@code why} tells it}
     *
     * @param why causes with their chances
     * @param sampling seed and number of draws that it was asked with
     */
    public static AnswerTree of(Why why, Sampling sampling) {
        return WhyAnswer.of(why, sampling).tree();
    }

    /**
     * {@return what trials taught, as {@code learn} tells it}
     *
     * @param learned inputs before and after, and what to measure next
     * @param seed seed that it was asked with
     */
    public static AnswerTree of(Learned learned, long seed) {
        return LearnAnswer.of(learned, seed).tree();
    }
}
