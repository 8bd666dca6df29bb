package org.fizzhull.forecast;

import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.powder.EarlyReaction;
import org.fizzhull.recipe.Blend;

/**
 * Share of the fizz of the powders that is gone before the bath, 0 to 1, by one rule for {@link Forecast} and
 * {@link FizzForecast}, so that both tell the same. Stateless.
 */
final class FizzLoss {
    private FizzLoss() {}

    /**
     * The interval of a question with a recipe. Of a weighed piece the draws say nothing: what its drying left by the
     * central values, or else only what goes off as the liquid meets the powder.
     *
     * @param drawn the share that is gone, draw by draw
     */
    static Interval of(Question question, double[] drawn) {
        if (!(question.making() instanceof Making.Weighed weighed)) {
            return OutcomeStatistics.intervalOf(drawn);
        }
        if (weighed.dried().isPresent()) {
            return Interval.certain(1 - weighed.dried().get().fizzLeft());
        }
        Blend blend = weighed.blend().orElseThrow();
        double all = blend.moles().gas();
        return Interval.certain(all > 0 ? EarlyReaction.standard(blend).prompt(blend) / all : 0);
    }
}
