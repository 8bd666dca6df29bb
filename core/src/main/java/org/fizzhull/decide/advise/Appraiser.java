package org.fizzhull.decide.advise;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.batch.Batch;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;

/**
 * Asks the predictors how a design does: the bath for the chance, and beside it the press for the feel, drying for the time,
 * the recipe for the cost. The chance is that of the forecast, that a piece taken at random floats to the end.
 *
 * <p>Fewer draws of the same seed serve a search, so that two designs differ by their change and not by their draws; what is
 * told is asked with all of them. Immutable.
 */
final class Appraiser {
    /** Draws for what a change does besides, at most. */
    private static final int BESIDE = 512;

    /** The mould of the design as it is, as text. */
    private final String mould;

    /** Asks with all draws, of that mould. */
    private final FloatPredictor predictor;
    /** The same of other moulds, of which less was measured. */
    private final FloatPredictor elsewhere;

    private final Sampling sampling;
    private final Workers workers;

    /** Draws for what a change does besides: told in whole minutes, hours and tens of per cent. */
    private final Sampling beside;

    /** With a predictor, seed and number of draws, and threads. */
    Appraiser(Shape mould, FloatPredictor predictor, FloatPredictor elsewhere, Sampling sampling, Workers workers) {
        this.mould = mould.text();
        this.predictor = predictor.with(sampling).with(workers);
        this.elsewhere = elsewhere.with(sampling).with(workers);
        this.sampling = sampling;
        this.workers = workers;
        this.beside = new Sampling(sampling.seed(), Math.min(BESIDE, sampling.samples()));
    }

    /** The predictor that knows what was measured of the mould of a design. */
    private FloatPredictor predictor(Design design) {
        return design.shape().text().equals(mould) ? predictor : elsewhere;
    }

    /** {@return the chance that a piece taken at random floats to the end, from at most that many draws of the same seed} */
    double chance(Design design, int draws) {
        Sampling fewer = new Sampling(sampling.seed(), Math.min(draws, sampling.samples()));
        return chance(predictor(design).with(fewer).outcome(design.question()).probability());
    }

    /** The chance of an outcome; there is one, since draws are made. */
    private static double chance(Optional<Probability> drawn) {
        return drawn.orElseThrow().floatsToTheEnd();
    }

    /** {@return the whole forecast of a design, from all draws} */
    Forecast forecast(Design design) {
        return predictor(design).forecast(design.question());
    }

    /** {@return how a design does, from all draws} */
    Advice.Appraisal appraise(Design design) {
        Forecast.BathOutcome outcome = predictor(design).outcome(design.question());
        return appraise(
                design,
                chance(outcome.probability()),
                outcome.critical(),
                outcome.piece().mass(),
                outcome.fizzTime());
    }

    /** {@return how a design does whose forecast is known} */
    Advice.Appraisal appraise(Design design, Forecast forecast) {
        return appraise(
                design,
                chance(forecast.probability()),
                forecast.critical(),
                forecast.piece().mass(),
                forecast.fizzTime());
    }

    /** The appraisal: what the bath told, and drying, feel and cost beside it. */
    private Advice.Appraisal appraise(
            Design design, double chance, CriticalWeights critical, double mass, Optional<Interval> fizzTime) {
        Making making = design.making();
        // what the change does besides: feel, drying, cost
        Optional<PressForecast.PieceOut> out = out(design.shape(), making);
        return new Advice.Appraisal(
                chance,
                critical.batch().nineOfTen(),
                mass,
                fizzTime,
                design.drying().isPresent() ? ready(design.shape(), making) : Optional.empty(),
                out.isPresent()
                        ? OptionalDouble.of(out.get().feel().getOrDefault(Pressed.Feel.HOLDS, 0.0))
                        : OptionalDouble.empty(),
                out.map(PressForecast.PieceOut::likeliest),
                design.recipe().isPresent()
                        ? MadePiece.cost(design.recipe().get(), damp(making, out) * (1 + Batch.LOST_SHARE))
                        : OptionalDouble.empty());
    }

    /** The piece out of the mould; empty for a finished one. */
    private Optional<PressForecast.PieceOut> out(Shape shape, Making making) {
        if (!(making instanceof Moulded)) {
            return Optional.empty();
        }
        PressPredictor press =
                PressPredictor.standard().with(predictor.factors()).with(beside).with(workers);
        return Optional.of(press.piece(shape, making));
    }

    /** When the piece is dry, s from pressing; empty for a finished one. */
    private Optional<Interval> ready(Shape shape, Making making) {
        if (!(making instanceof Moulded)) {
            return Optional.empty();
        }
        DryPredictor dry =
                DryPredictor.standard().with(predictor.factors()).with(beside).with(workers);
        return dry.forecast(shape, making).ready();
    }

    /** Damp mass of a piece, kg; 0 for a finished one, whose mix is not bought anew. */
    private static double damp(Making making, Optional<PressForecast.PieceOut> out) {
        if (making instanceof Moulded.Filled filled) {
            return filled.dampMass();
        }
        return out.isPresent() ? out.get().dampMass().median() : 0;
    }
}
