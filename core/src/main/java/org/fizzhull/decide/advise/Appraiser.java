package org.fizzhull.decide.advise;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.batch.Batch;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.BathOutcome;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.Feel;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;

/**
 * Asks the predictors how a design does. The chance is that of the forecast, that a piece taken at random floats to the end.
 * Fewer draws of the same seed serve a search; what is told is asked with all of them.
 */
final class Appraiser {
    private static final int BESIDE = 512;

    private final String mould;
    private final FloatPredictor predictor;
    private final FloatPredictor elsewhere;
    private final Sampling sampling;
    private final Workers workers;

    /** Draws for what a change does besides: told in whole minutes, hours and tens of per cent. */
    private final Sampling beside;

    Appraiser(Shape mould, FloatPredictor predictor, FloatPredictor elsewhere, Sampling sampling, Workers workers) {
        this.mould = mould.text();
        this.predictor = predictor.with(sampling).with(workers);
        this.elsewhere = elsewhere.with(sampling).with(workers);
        this.sampling = sampling;
        this.workers = workers;
        this.beside = new Sampling(sampling.seed(), Math.min(BESIDE, sampling.samples()));
    }

    private FloatPredictor predictor(Design design) {
        return design.shape().text().equals(mould) ? predictor : elsewhere;
    }

    /** Chance that a piece taken at random floats to the end, by at most so many draws. */
    double chance(Design design, int draws) {
        Sampling fewer = new Sampling(sampling.seed(), Math.min(draws, sampling.samples()));
        return chance(predictor(design).with(fewer).outcome(design.question()).probability());
    }

    private static double chance(Optional<Probability> drawn) {
        return drawn.orElseThrow().floatsToTheEnd();
    }

    /** The forecast, all draws. */
    Forecast forecast(Design design) {
        return predictor(design).forecast(design.question());
    }

    /** How a design does, all draws. */
    Appraisal appraise(Design design) {
        BathOutcome outcome = predictor(design).outcome(design.question());
        return appraise(
                design,
                chance(outcome.probability()),
                outcome.critical(),
                outcome.piece().mass(),
                outcome.fizzTime());
    }

    /** How a design does whose forecast is known. */
    Appraisal appraise(Design design, Forecast forecast) {
        return appraise(
                design,
                chance(forecast.probability()),
                forecast.critical(),
                forecast.piece().mass(),
                forecast.fizzTime());
    }

    private Appraisal appraise(
            Design design, double chance, CriticalWeights critical, double mass, Optional<Interval> fizzTime) {
        Making making = design.making();
        Optional<PressForecast.PieceOut> out = out(design.shape(), making);
        return new Appraisal(
                chance,
                critical.batch().nineOfTen(),
                mass,
                fizzTime,
                design.drying().isPresent() ? ready(design.shape(), making) : Optional.empty(),
                out.isPresent()
                        ? OptionalDouble.of(out.get().feel().getOrDefault(Feel.HOLDS, 0.0))
                        : OptionalDouble.empty(),
                out.map(PressForecast.PieceOut::likeliest),
                design.recipe().isPresent()
                        ? MadePiece.cost(design.recipe().get(), damp(making, out) * (1 + Batch.LOST_SHARE))
                        : OptionalDouble.empty());
    }

    private Optional<PressForecast.PieceOut> out(Shape shape, Making making) {
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return Optional.empty();
        }
        PressPredictor press =
                PressPredictor.standard().with(predictor.factors()).with(beside).with(workers);
        return Optional.of(press.piece(shape, making));
    }

    private Optional<Interval> ready(Shape shape, Making making) {
        if (!(making instanceof FilledMould) && !(making instanceof PressedMould)) {
            return Optional.empty();
        }
        DryPredictor dry =
                DryPredictor.standard().with(predictor.factors()).with(beside).with(workers);
        return dry.forecast(shape, making).ready();
    }

    private static double damp(Making making, Optional<PressForecast.PieceOut> out) {
        if (making instanceof FilledMould filled) {
            return filled.dampMass();
        }
        return out.isPresent() ? out.get().dampMass().median() : 0;
    }
}
