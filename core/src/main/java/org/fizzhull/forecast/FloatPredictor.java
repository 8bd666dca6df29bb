package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.attitude.FloatingAttitudes;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.measured.NextMeasurement;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.BatchAim;
import org.fizzhull.forecast.model.BatchShare;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.FloatCheck;
import org.fizzhull.forecast.model.Floats;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.IntoBath;
import org.fizzhull.forecast.question.PieceLimits;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;

/**
 * Answers whether a piece floats. Immutable; safe to share between threads:
 * {@code FloatPredictor.standard().forecast(Question.weighed(ball, grams(138)))}.
 */
public final class FloatPredictor {
    /** Share of the draws above which the notice about grazing is given. */
    private static final double MANY_GRAZE = 0.05;

    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;
    private final Observations seen;

    private FloatPredictor(Factors factors, Sampling sampling, Workers workers, Observations seen) {
        this.factors = Objects.requireNonNull(factors, "factors");
        this.sampling = Objects.requireNonNull(sampling, "sampling");
        this.workers = Objects.requireNonNull(workers, "workers");
        this.seen = Objects.requireNonNull(seen, "observations");
    }

    /** {@return the default priors, 4,096 draws from seed 1, on the calling thread} */
    public static FloatPredictor standard() {
        return new FloatPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, Observations.none());
    }

    /**
     * {@return this predictor with other priors}
     *
     * @param others table of priors, or workers, that replace the present ones
     */
    public FloatPredictor with(Factors others) {
        return new FloatPredictor(others, sampling, workers, seen);
    }

    /** {@return its table of uncertain inputs, without what a question brings} */
    public Factors factors() {
        return factors;
    }

    /**
     * {@return this predictor with other draws}
     *
     * @param other number of draws and seed; no draws for central values alone
     */
    public FloatPredictor with(Sampling other) {
        return new FloatPredictor(factors, other, workers, seen);
    }

    /**
     * {@return this predictor with other workers; the answer stays the same to the byte}
     *
     * @param others table of priors, or workers, that replace the present ones
     */
    public FloatPredictor with(Workers others) {
        return new FloatPredictor(factors, sampling, others, seen);
    }

    /**
     * {@return this predictor knowing what was measured on pieces of the same mix in the same bath}
     *
     * @param measured observations of pieces of the same mix
     */
    public FloatPredictor with(Observations measured) {
        return new FloatPredictor(factors, sampling, workers, measured);
    }

    /**
     * {@return the forecast} Refuses a fill that does not go into the mould.
     *
     * @param put the question
     */
    public Forecast forecast(Question put) {
        Question question = judged(put);
        Shape shape = question.shape();
        PreparedQuestion posed = PreparedQuestion.of(question, factors);
        BathDraws run = draws(posed);
        BathDraws.Drawn draws = run.withDrivers();
        // one weight in every answer: that of the middle draw
        Piece piece = draws.mass().isPresent()
                ? new DropModel(posed).piece(run.centre(), draws.mass().get().median())
                : run.piece();
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        List<FloatingAttitude> rests = FloatingAttitudes.of(question, piece);
        notices.addAll(run.notices());
        if (draws.fates().graze() > MANY_GRAZE) {
            notices.add(Notices.GRAZING);
        }
        notices.addAll(Notices.critical(draws.critical()));
        Optional<BatchAim> aim = Optional.empty();
        if (question.making().hand().isPresent() && sampling.samples() > 0) {
            aim = BatchAim.of(draws.critical());
            if (aim.isEmpty()) {
                notices.add(BatchAim.bent(draws.critical()) ? Notices.BENT : Notices.NO_AIM);
            }
        }
        double density = question.bath().density();
        OptionalDouble boat = shape.hollow().isPresent()
                ? OptionalDouble.of(density * BoatLimit.displaced(shape, density))
                : OptionalDouble.empty();
        double plain = density * (shape.volume() + shape.insetVolume());
        GoverningLimit limit = limit(question, plain, boat, piece);
        Optional<Probability> probability = draws.fates().probability();
        if (probability.isEmpty()) {
            notices.add(Notices.CENTRAL_VALUES);
        }
        return new Forecast(
                question,
                posed.factors(),
                sampling,
                piece,
                draws.mass(),
                draws.critical(),
                plain,
                boat,
                draws.spare(),
                limit,
                verdict(question, draws, limit),
                probability.flatMap(
                        chance -> NextMeasurement.of(posed, seen, draws.columns(), chance.floatsToTheEnd())),
                rests,
                probability,
                draws.fates().riseTime(),
                fizzless(question, piece) ? Optional.empty() : draws.fates().fizzTime(),
                question.stillWater() || question.making().mix().isEmpty()
                        ? Optional.empty()
                        : Optional.of(FizzLoss.of(question, draws.columns()[VoyageModel.LOST])),
                aim,
                draws.drivers(),
                run.narrowing(),
                notices);
    }

    private BathDraws draws(PreparedQuestion posed) {
        return new BathDraws(posed, sampling, workers, seen);
    }

    /** The question as it is judged, after a look at its shape and its fill. */
    private Question judged(Question put) {
        ShapeDoor.check(put.shape());
        if (put.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(put.shape(), filled);
        }
        return TippingBoat.judged(put, factors);
    }

    /** Whether it is known not to fizz, or hardly: then it dissolves, and a fizz time has no meaning. */
    private static boolean fizzless(Question question, Piece piece) {
        return question.making()
                .mix()
                .filter(mix -> !Effervescence.of(mix.moles(), piece.makeup().gasCapacity())
                        .fizzes())
                .isPresent();
    }

    private static GoverningLimit limit(Question question, double plain, OptionalDouble boat, Piece piece) {
        boolean dry = boat.isPresent() && question.into() == IntoBath.PLACED && boat.getAsDouble() > plain;
        double mass = dry ? boat.getAsDouble() : plain;
        GoverningLimit.Kind kind = dry ? GoverningLimit.Kind.BOAT : GoverningLimit.Kind.PLAIN;
        return new GoverningLimit(kind, mass, mass - piece.mass());
    }

    private static FloatVerdict verdict(Question question, BathDraws.Drawn draws, GoverningLimit limit) {
        BatchShare share = draws.critical().batch();
        Optional<Probability> known = draws.fates().probability();
        double end = known.isPresent() ? known.get().floatsToTheEnd() : share.mean() >= 0.5 ? 1 : 0;
        double once = known.isPresent()
                ? known.get().floatsAtOnce()
                : Statistics.mean(draws.critical().sharesAtOnce()) >= 0.5 ? 1 : 0;
        return FloatVerdict.of(end, known.isPresent() && share.undecided(), limit, once, question.shape());
    }

    /**
     * {@return the critical weights of a question without the rest of a forecast: no indices, no attitudes} The weight
     * of the question's own piece matters to its batch alone.
     *
     * @param put the question
     */
    public CriticalWeights critical(Question put) {
        return outcome(put).critical();
    }

    /**
     * {@return the ways a piece floats as it is, without fizz, by the central values; likeliest first}
     *
     * @param put the question
     */
    public List<FloatingAttitude> rests(Question put) {
        Question question = TippingBoat.judged(put, factors);
        PreparedQuestion posed = PreparedQuestion.of(question, factors);
        return FloatingAttitudes.of(
                question, new DropModel(posed).piece(posed.factors().medians()));
    }

    /**
     * {@return whether a piece floats, by the central values and without the rest of a forecast: the cheap question}
     *
     * @param shape form of the piece
     * @param mass of the whole piece on the scale, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a mass that no pressed piece of this shape has
     */
    public Floats floats(Shape shape, double mass) {
        return check(Question.weighed(shape, mass)).floats();
    }

    /**
     * {@return the cheap question of a shape and a bath, prepared for as many weights as one likes}
     *
     * @param put the question
     */
    public FloatCheck check(Question put) {
        PreparedQuestion posed = PreparedQuestion.of(judged(put), factors);
        Sampling none = new Sampling(sampling.seed(), 0);
        return new FloatCheck(put, factors, posed, new BathDraws(posed, none, workers, seen).centre());
    }

    /**
     * {@return what becomes of a piece without the rest of a forecast, for those who ask many questions}
     *
     * @param put the question
     */
    public BathOutcome outcome(Question put) {
        Question question = judged(put);
        BathDraws run = draws(PreparedQuestion.of(question, factors));
        BathDraws.Drawn draws = run.withoutDrivers();
        return new BathOutcome(
                question,
                run.piece(),
                draws.mass(),
                draws.critical(),
                draws.fates().probability(),
                draws.fates().fizzTime());
    }

    /**
     * {@return the heaviest piece of a shape, of a mix that is not known, that floats to the end in a bath with a
     * chance between 0 and 1, kg}
     *
     * @param shape form of the piece
     * @param bath the water
     * @param chance probability, 0 to 1
     */
    public double heaviest(Shape shape, Bath bath, double chance) {
        double mass = bath.density() * shape.volume() + shape.insetMass();
        return critical(Question.weighed(shape, mass).in(bath)).heaviest(chance);
    }
}
