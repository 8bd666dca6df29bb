package org.fizzhull.decide;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.BatchShare;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FilledMould;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.Making;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.PressedMould;
import org.fizzhull.forecast.Question;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.pressing.Feel;
import org.fizzhull.recipe.Part;
import org.fizzhull.recipe.Price;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.uncertainty.Workers;

/**
 * Asks the predictors how a design does. The chance comes from the critical weights: in each draw of what is common to a batch,
 * the share of its pieces that lie below the heaviest weight that floats to the end. Fewer draws of the same seed serve a
 * search; what is told is asked with all of them.
 */
final class Appraiser {
    private final FloatPredictor predictor;
    private final Sampling sampling;
    private final Workers workers;

    Appraiser(FloatPredictor predictor, Sampling sampling, Workers workers) {
        this.predictor = predictor.with(sampling).with(workers);
        this.sampling = sampling;
        this.workers = workers;
    }

    /** Chance that a piece taken at random floats to the end, by at most so many draws. */
    double chance(Design design, int draws) {
        Sampling fewer = new Sampling(sampling.seed(), Math.min(draws, sampling.samples()));
        return predictor.with(fewer).critical(design.question()).batch().mean();
    }

    /** The forecast, all draws. */
    Forecast forecast(Design design) {
        return predictor.forecast(design.question());
    }

    /** Share of a batch that floats to the end. */
    BatchShare batch(Forecast forecast) {
        return forecast.critical().batch();
    }

    /** How a design does, all draws. */
    Appraisal appraise(Design design, Forecast forecast) {
        Question question = forecast.question();
        Making making = question.making();
        BatchShare batch = batch(forecast);
        Optional<PressForecast.PieceOut> out = out(question);
        return new Appraisal(
                batch.mean(),
                batch.nineOfTen(),
                forecast.piece().mass(),
                forecast.fizzTime(),
                design.drying().isPresent() ? ready(question, making) : Optional.empty(),
                out.isPresent()
                        ? OptionalDouble.of(out.get().feel().getOrDefault(Feel.HOLDS, 0.0))
                        : OptionalDouble.empty(),
                out.map(PressForecast.PieceOut::likeliest),
                design.recipe().isPresent() ? cost(design.recipe().get(), damp(making, out)) : OptionalDouble.empty());
    }

    private Optional<PressForecast.PieceOut> out(Question question) {
        Making making = question.making();
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return Optional.empty();
        }
        PressPredictor press = PressPredictor.standard().with(sampling).with(workers);
        return Optional.of(press.piece(question.shape(), making));
    }

    private Optional<Interval> ready(Question question, Making making) {
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return Optional.empty();
        }
        DryPredictor dry = DryPredictor.standard().with(sampling).with(workers);
        return dry.forecast(question.shape(), making).ready();
    }

    private static double damp(Making making, Optional<PressForecast.PieceOut> out) {
        if (making instanceof FilledMould filled) {
            return filled.dampMass();
        }
        return out.isPresent() ? out.get().dampMass().median() : 0;
    }

    /** Cost of the mix in a piece of that damp mass, kg; empty where nothing is known of a price. */
    private static OptionalDouble cost(Recipe recipe, double damp) {
        double cost = 0;
        boolean priced = false;
        for (java.util.List<Part> parts : java.util.List.of(recipe.dry(), recipe.wet())) {
            for (Part part : parts) {
                Price price = recipe.prices().get(part.ingredient().name());
                if (price != null) {
                    priced = true;
                    cost += price.perKilogram() * part.mass();
                }
            }
        }
        return priced && damp > 0 ? OptionalDouble.of(cost * damp / recipe.mass()) : OptionalDouble.empty();
    }
}
