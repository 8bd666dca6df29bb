package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.attitude.FloatingAttitudes;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.measured.Conditioned;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.NextMeasurement;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.BatchAim;
import org.fizzhull.forecast.model.BatchShare;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.OutcomeStatistics;
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
import org.fizzhull.uncertainty.Posterior;
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
        Shape shape = put.shape();
        ShapeDoor.check(shape);
        if (put.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(shape, filled);
        }
        Question question = TippingBoat.judged(put, factors);
        PreparedQuestion posed = PreparedQuestion.of(question, factors);
        double density = question.bath().density();
        Optional<Conditioned> known = Conditioned.on(posed, seen, sampling, workers);
        double[] centre =
                known.isPresent() ? known.get().centre() : posed.factors().medians();
        Optional<Posterior> after = known.isPresent() ? known.get().posterior() : bench(posed.factors());
        FloatDraws runs = draws(posed);
        FloatDraws.Result draws = sampling.samples() == 0
                ? runs.central(centre)
                : after.isPresent() ? runs.narrowed(after.get()) : runs.drawn();
        // one weight in every answer: that of the middle draw
        Piece piece = draws.mass().isPresent()
                ? new DropModel(question, posed.factors())
                        .piece(centre, draws.mass().get().median())
                : piece(posed, centre);
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        List<FloatingAttitude> rests = FloatingAttitudes.of(question, piece);
        Optional<MeasurementEffect> narrowing = Optional.empty();
        if (known.isPresent()) {
            narrowing = Optional.of(before(posed, known.get()));
            notices.addAll(known.get().notices());
        }
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
        OptionalDouble boat = shape.hollow().isPresent()
                ? OptionalDouble.of(density * BoatLimit.displaced(shape, density))
                : OptionalDouble.empty();
        double plain = density * (shape.volume() + shape.insetVolume());
        GoverningLimit limit = limit(question, plain, boat, piece);
        Optional<Probability> probability = draws.fates().probability();
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
                probability.isPresent()
                        ? NextMeasurement.of(
                                posed, seen, draws.columns(), probability.get().floatsToTheEnd())
                        : Optional.empty(),
                rests,
                draws.fates().probability(),
                draws.fates().riseTime(),
                fizzless(question, piece) ? Optional.empty() : draws.fates().fizzTime(),
                question.stillWater() || question.making().mix().isEmpty()
                        ? Optional.empty()
                        : Optional.of(FizzLoss.of(question, draws.columns()[VoyageModel.LOST])),
                aim,
                draws.drivers(),
                narrowing,
                draws.fates().probability().isPresent() ? notices : withCentral(notices));
    }

    /** Inputs that are drawn together have no pick-and-freeze indices: their draws are taken like those of a measurement. */
    private Optional<Posterior> bench(Factors asked) {
        return asked.isDependent() && sampling.samples() > 0
                ? Optional.of(Posterior.unweighted(asked.priors(), sampling.samples(), sampling.seed(), workers))
                : Optional.empty();
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

    private static FloatVerdict verdict(Question question, FloatDraws.Result draws, GoverningLimit limit) {
        BatchShare share = draws.critical().batch();
        Optional<Probability> known = draws.fates().probability();
        double end = known.isPresent() ? known.get().floatsToTheEnd() : share.mean() >= 0.5 ? 1 : 0;
        double once = known.isPresent()
                ? known.get().floatsAtOnce()
                : Statistics.mean(draws.critical().sharesAtOnce()) >= 0.5 ? 1 : 0;
        return FloatVerdict.of(end, known.isPresent() && share.undecided(), limit, once, question.shape());
    }

    private static List<Notice> withCentral(List<Notice> notices) {
        notices.add(Notices.CENTRAL_VALUES);
        return notices;
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
        return FloatingAttitudes.of(question, piece(posed, posed.factors().medians()));
    }

    /**
     * {@return what becomes of a piece without the rest of a forecast, for those who ask many questions}
     *
     * @param put the question
     */
    public BathOutcome outcome(Question put) {
        ShapeDoor.check(put.shape());
        if (put.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(put.shape(), filled);
        }
        Question question = TippingBoat.judged(put, factors);
        PreparedQuestion posed = PreparedQuestion.of(question, factors);
        Optional<Conditioned> known = Conditioned.on(posed, seen, sampling, workers);
        double[] centre =
                known.isPresent() ? known.get().centre() : posed.factors().medians();
        Piece piece = piece(posed, centre);
        if (sampling.samples() == 0) {
            FloatDraws.Result central = draws(posed).central(centre);
            return new BathOutcome(
                    question,
                    piece,
                    central.mass(),
                    central.critical(),
                    central.fates().probability(),
                    central.fates().fizzTime());
        }
        Optional<Posterior> after = known.isPresent() ? known.get().posterior() : Optional.empty();
        FloatDraws runs = draws(posed);
        FloatDraws.Walked walked = runs.walked(after.isPresent() ? after.get() : runs.prior());
        OutcomeStatistics fates = walked.fates();
        return new BathOutcome(
                question, piece, walked.mass(), walked.critical(), fates.probability(), fates.fizzTime());
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

    private FloatDraws draws(PreparedQuestion posed) {
        return new FloatDraws(posed, sampling, workers);
    }

    private static Piece piece(PreparedQuestion posed, double[] centre) {
        return new DropModel(posed.question(), posed.factors()).piece(centre);
    }

    /** What it would say without the measurements. */
    private MeasurementEffect before(PreparedQuestion posed, Conditioned known) {
        if (sampling.samples() == 0) {
            FloatDraws.Result central = draws(posed).central(posed.factors().medians());
            return MeasurementEffect.bathed(seen, known.effective(), central.fates(), central.spare());
        }
        FloatDraws runs = draws(posed);
        FloatDraws.Walked walked = runs.walked(runs.prior());
        Interval spare = OutcomeStatistics.interval95(Statistics.sorted(walked.spare()));
        return MeasurementEffect.bathed(seen, known.effective(), walked.fates(), spare);
    }
}
