package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.attitude.FloatingAttitudes;
import org.fizzhull.forecast.conditioning.NextMeasurement;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.PreparedCheck;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.notice.Notices;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.FloatCheck;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.geometry.Extents;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.fizzhull.voyage.FullVoyage;

/**
 * Answers whether a pressed piece floats in its bath, how sure that is and what decides it. This is the entry class of
 * the library.
 *
 * <pre>{@code
 * Shape ball = Shapes.sphere(Units.millimetres(65));
 * Question question = Question.weighed(ball, Units.grams(138)).in(Bath.at(Units.celsius(38)));
 * Forecast forecast = FloatPredictor.standard().forecast(question);
 * FloatVerdict.Answer answer = forecast.verdict().answer(); // FLOATS, SINKS, EITHER or CANNOT_TELL
 * double chance = forecast.probability().orElseThrow().floatsToTheEnd(); // 0 to 1
 * double limit = forecast.critical().heaviest(0.9); // kg: floats to the end nine times of ten
 * }</pre>
 *
 * <p>A {@link Question} is a shape, how the piece came to be (weighed as it is, filled or pressed into its mould,
 * dried; {@link org.fizzhull.forecast.making.Making}), the water, how the piece goes in, and how well size and weight
 * are known. A {@link Forecast} is everything that follows from it: the verdict, the chances to float at once and to
 * the end, the critical weight of each draw, the ways the piece lies in the water, rise and fizz times, the inputs that
 * decide, the measurement that would tell most, and the notices a reader must see.
 *
 * <p>How a forecast is made:
 *
 * <ol>
 *   <li>A hollow set down open side up that would tip over is judged as dropped ({@link TippingBoat}).
 *   <li>The table of priors of this predictor ({@link Factors}) and the rows the question brings itself (scale, hand,
 *       mould, bath, making) give the uncertain inputs.
 *   <li>Each <b>draw</b> is one value of every uncertain input, from a row of scrambled Sobol points through the
 *       quantiles of the priors. With measurements ({@link Observations}) one weak input is solved in each draw so that
 *       the draw gives what was measured, and the draws are weighted and resampled (docs/physics/uncertainty.md, 4).
 *   <li>For each draw the piece is made, put into the bath ({@link org.fizzhull.voyage.QuickVoyage}) and its critical
 *       weight is searched: the heaviest piece of this shape and mix that floats
 *       ({@link org.fizzhull.forecast.result.CriticalWeights}).
 *   <li>Chances are shares of the draws, intervals their median with the 2.5 and 97.5 % points; the indices of what
 *       decides come from mixed rows ({@link Forecast.Driver}).
 * </ol>
 *
 * <p>Immutable; safe to share between threads. A draw depends on (seed, block, row) only and sums run in index order,
 * so that the same question, table, sampling and observations give the same bytes on any number of threads. No thread
 * is started: everything runs on the calling thread unless {@link #with(Workers)} names an executor.
 *
 * <p>Cost: a draw of a weighed piece takes some 100 us, most of it for its critical weight, so that 4,096 draws are
 * some tenths of a second on one thread; a piece that is pressed and dried takes about a millisecond more in each draw.
 * {@link #outcome} leaves out indices and attitudes. Without draws a forecast costs a fiftieth to a five hundredth, by
 * how long the attitudes of the shape are searched (of a large mesh seconds), and a further weight of a {@link #check}
 * some microseconds (docs/embedding.md).
 *
 * <p>What an interval does not cover: an ingredient of the wrong name, a piece that cracks, physics left out of
 * docs/physics (docs/physics/uncertainty.md, 5). Read next: {@link Question}, {@link Forecast}, {@link FizzPredictor}
 * for the gas, {@link DryPredictor} for the drying, {@link PressPredictor} for the press.
 */
public final class FloatPredictor extends Predictor<FloatPredictor> {
    /** Share of the draws with a balance that stays near zero above which the notice about it is given (judgement). */
    private static final double MANY_GRAZE = 0.05;

    /** Measurements on pieces of the same mix in the same bath; usually none. */
    private final Observations seen;

    private FloatPredictor(Factors factors, Sampling sampling, Workers workers, Observations seen) {
        super(factors, sampling, workers);
        Given.all("observations", seen);
        this.seen = seen;
    }

    @Override
    protected FloatPredictor drawing(Factors others, Sampling other, Workers by) {
        return new FloatPredictor(others, other, by, seen);
    }

    /** {@return the default priors, 4,096 draws from seed 1, on the calling thread} */
    public static FloatPredictor standard() {
        return new FloatPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, Observations.none());
    }

    /** {@return the table of uncertain inputs of this predictor, without the rows that a question adds} */
    public Factors factors() {
        return factors;
    }

    /** {@return the number of uncertain inputs and how they are drawn, for logs} */
    @Override
    public String toString() {
        return "float predictor: " + factors.rows().size() + " uncertain inputs, " + sampling.samples()
                + " draws from seed " + sampling.seed();
    }

    /**
     * {@return this predictor with measurements on pieces of the same mix in the same bath} They replace earlier
     * ones.
     *
     * @param measured fizz times, rise times, weighed pieces and readings under water; each kind may be empty
     */
    public FloatPredictor with(Observations measured) {
        return new FloatPredictor(factors, sampling, workers, measured);
    }

    /**
     * {@return the whole answer to a question}
     *
     * @param put what is asked; the forecast holds it as it was judged (a boat that tips counts as dropped)
     * @throws org.fizzhull.quantity.Refusal for a shape whose numbers contradict one another, a fill that its mould
     *     cannot hold, or a measurement that nothing of the priors agrees with
     * @throws java.util.concurrent.CancellationException where watched workers stop the run
     */
    public Forecast forecast(Question put) {
        Question question = judged(put);
        Shape shape = question.shape();
        PreparedQuestion prepared = PreparedQuestion.of(question, factors);
        BathDraws run = draws(prepared);
        BathDraws.Drawn draws = run.withDrivers();
        // one weight in every answer: that of the middle draw
        Piece piece = draws.mass().isPresent()
                ? new DropModel(prepared).piece(run.centre(), draws.mass().get().median())
                : run.piece();
        // what the reader must know, in the order in which it is told
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        List<FloatingAttitude> attitudes = FloatingAttitudes.of(question, piece);
        notices.addAll(run.notices());
        if (!question.stillWater() && lowest(shape) > question.bath().depth()) {
            notices.add(FullVoyage.SHALLOW_BATH);
        }
        if (draws.outcomes().graze() > MANY_GRAZE) {
            notices.add(Notices.GRAZING);
        }
        notices.addAll(Notices.critical(draws.critical()));
        // a weight to aim for, where the fill of a batch scatters
        Optional<CriticalWeights.BatchAim> aim = Optional.empty();
        if (question.making().hand().isPresent() && sampling.samples() > 0) {
            aim = CriticalWeights.BatchAim.of(draws.critical());
            if (aim.isEmpty()) {
                notices.add(CriticalWeights.BatchAim.bent(draws.critical()) ? Notices.BENT : Notices.NO_AIM);
            }
        }
        // the limits of still water: hull under water with its hollow flooded, and the boat with its hollow dry
        double density = question.bath().density();
        OptionalDouble boat = shape.hollow().isPresent()
                ? OptionalDouble.of(density * BoatLimit.displaced(shape, density))
                : OptionalDouble.empty();
        double plain = density * (shape.volume() + shape.insetVolume());
        Forecast.GoverningLimit limit = limit(question, plain, boat, piece);
        Optional<Probability> probability = draws.outcomes().probability();
        if (probability.isEmpty()) {
            notices.add(Notices.CENTRAL_VALUES);
        }
        return new ForecastRecord(
                question,
                prepared.factors(),
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
                        chance -> NextMeasurement.of(prepared, seen, draws.columns(), chance.floatsToTheEnd())),
                attitudes,
                probability,
                draws.outcomes().riseTime(),
                fizzless(question, piece) ? Optional.empty() : draws.outcomes().fizzTime(),
                question.stillWater() || question.making().mix().isEmpty()
                        ? Optional.empty()
                        : Optional.of(FizzLoss.of(question, draws.columns()[VoyageModel.LOST])),
                aim,
                draws.drivers(),
                run.narrowing(),
                notices);
    }

    /** Height of a shape that lies as flat as it can, m. */
    private static double lowest(Shape shape) {
        Extents extents = shape.extents();
        return Math.min(extents.height(), Math.min(extents.length(), extents.width()));
    }

    /** The draws of one answer to a prepared question, not yet made. */
    private BathDraws draws(PreparedQuestion prepared) {
        return new BathDraws(prepared, sampling, workers, seen);
    }

    /** The question as it is judged, after a look at its shape and its fill. */
    private Question judged(Question put) {
        PieceLimits.checkPiece(put.shape(), put.making());
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

    /**
     * The still-water limit that decides, kg: that of the boat where it is set down dry and carries more than its hull.
     */
    private static Forecast.GoverningLimit limit(Question question, double plain, OptionalDouble boat, Piece piece) {
        // the boat decides only where it is set down and carries more than its hull under water
        boolean dry = boat.isPresent() && question.into() == Question.IntoBath.PLACED && boat.getAsDouble() > plain;
        double mass = dry ? boat.getAsDouble() : plain;
        Forecast.GoverningLimit.Kind kind =
                dry ? Forecast.GoverningLimit.Kind.BOAT : Forecast.GoverningLimit.Kind.PLAIN;
        return new Forecast.GoverningLimit(kind, mass, mass - piece.mass());
    }

    /** The verdict; without draws the shares, 0 or 1, take the place of the chances. */
    private static FloatVerdict verdict(Question question, BathDraws.Drawn draws, Forecast.GoverningLimit limit) {
        CriticalWeights.BatchShare share = draws.critical().batch();
        Optional<Probability> known = draws.outcomes().probability();
        double end = known.isPresent() ? known.get().floatsToTheEnd() : share.mean() >= 0.5 ? 1 : 0;
        double once = known.isPresent()
                ? known.get().floatsAtOnce()
                : Statistics.mean(draws.critical().sharesAtOnce()) >= 0.5 ? 1 : 0;
        return FloatVerdict.of(end, known.isPresent() && share.undecided(), limit, once, question);
    }

    /**
     * {@return the critical weights of a question without the rest of a forecast: no indices, no attitudes} They do not
     * depend on the weight of the question's own piece; the share of its batch does.
     *
     * @param put what is asked
     * @throws org.fizzhull.quantity.Refusal as {@link #forecast}
     */
    public CriticalWeights critical(Question put) {
        return outcome(put).critical();
    }

    /**
     * {@return the ways a piece floats as it is, without fizz, by the central values; likeliest first, empty where it
     * sinks}
     *
     * @param put what is asked
     */
    public List<FloatingAttitude> attitudes(Question put) {
        Question question = TippingBoat.judged(put, factors);
        PreparedQuestion prepared = PreparedQuestion.of(question, factors);
        return FloatingAttitudes.of(
                question, new DropModel(prepared).piece(prepared.factors().medians()));
    }

    /**
     * {@return whether a piece floats in a 38 C bath, by the central values and without the rest of a forecast}
     *
     * @param shape form of the piece
     * @param mass of the whole piece on the scale, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a mass that no pressed piece of this shape has
     */
    public FloatCheck.Floats floats(Shape shape, double mass) {
        Question put = Question.weighed(shape, mass);
        return check(put, PreparedQuestion.forOneVoyage(judged(put), factors)).floats();
    }

    /**
     * {@return the heaviest piece of a shape, of a mix that is not known, that floats to the end in a 38 C bath by the
     * central values, kg} To 0.03 %.
     *
     * @param shape form of the piece
     */
    public double heaviest(Shape shape) {
        double mass = Bath.at(Question.DEFAULT_TEMPERATURE).density() * shape.volume() + shape.insetMass();
        Question put = Question.weighed(shape, mass);
        return check(put, PreparedQuestion.forOneVoyage(judged(put), factors)).heaviest();
    }

    /**
     * {@return the question by the central values, prepared once for as many weights of its shape in its bath as one
     * likes}
     *
     * @param put what is asked
     * @throws org.fizzhull.quantity.Refusal as {@link #forecast}
     */
    public FloatCheck check(Question put) {
        return check(put, PreparedQuestion.of(judged(put), factors));
    }

    /** A question by the central values, what was measured counted. */
    private FloatCheck check(Question put, PreparedQuestion prepared) {
        Sampling none = new Sampling(sampling.seed(), 0);
        return new PreparedCheck(put, factors, prepared, new BathDraws(prepared, none, workers, seen).centre());
    }

    /**
     * {@return chances, critical weights and fizz time of a question without the rest of a forecast, for many
     * questions}
     *
     * @param put what is asked
     * @throws org.fizzhull.quantity.Refusal as {@link #forecast}
     */
    public Forecast.BathOutcome outcome(Question put) {
        Question question = judged(put);
        BathDraws run = draws(PreparedQuestion.of(question, factors));
        BathDraws.Drawn draws = run.withoutDrivers();
        return new Forecast.BathOutcome(
                question,
                run.piece(),
                draws.mass(),
                draws.critical(),
                draws.outcomes().probability(),
                draws.outcomes().fizzTime());
    }

    /**
     * {@return the heaviest piece of a shape, of a mix that is not known, that floats to the end with a given chance,
     * kg}
     *
     * @param shape form of the piece
     * @param bath water that it goes into
     * @param chance probability, above 0 and below 1
     * @throws IllegalArgumentException for any other chance
     */
    public double heaviest(Shape shape, Bath bath, double chance) {
        double mass = bath.density() * shape.volume() + shape.insetMass();
        return critical(Question.weighed(shape, mass).in(bath)).heaviest(chance);
    }
}
