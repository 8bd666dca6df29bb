package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.BathChemistry;
import org.fizzhull.fizz.BathWater;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.fizz.gas.Yield;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.FizzModel;
import org.fizzhull.forecast.model.FreshPowder;
import org.fizzhull.forecast.model.GasModel;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.notice.Notices;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.result.Voyage;

/**
 * Answers how a piece of a known recipe fizzes and what its bath becomes: fizz time, rate of gas against time, pH, what
 * else the piece brings. The piece is weighed, filled or pressed; the fizz it lost before the bath is missing in all of
 * it.
 *
 * <pre>{@code
 * var making = new Making.Weighed(Units.grams(138), Optional.empty(), Optional.of(Blend.of(recipe)));
 * FizzForecast fizz = FizzPredictor.standard().forecast(Question.of(ball, making));
 * double minutes = fizz.fizzTime().median() / 60;
 * }</pre>
 *
 * <p>Fizz time, loss and weight come from a quick voyage in every draw ({@link FizzModel}); the band of the gas from at
 * most {@link #GAS_DRAWS} full ones ({@link GasModel}), which cost some 150 times as much each; one full voyage and the
 * chemistry ({@link BathChemistry}) are computed by the central values. The draws before the bath are those of
 * {@link DryPredictor} with the same sampling. Immutable; safe to share between threads. Equations and sources:
 * docs/physics/fizz.md and voyage.md.
 */
public final class FizzPredictor extends Predictor<FizzPredictor> {
    /** Most draws of the gas: each is a full voyage, and the band's ends are read to a pixel. */
    public static final int GAS_DRAWS = 128;

    /** Intervals of the band of the gas: a picture shows no more. */
    private static final int POINTS = 60;

    /** The band's last time over the longest of the central and the upper fizz time. */
    private static final double BEYOND = 1.05;

    /** Every loss counts; a smaller one, within the error of weighing a recipe, makes no sentence. */
    private static final double WORTH_SAYING = 0.02;

    private static final Notice TOPPING_APART =
            new Notice("on-top-apart", "What lies on top is not counted in what is in the bath.");

    /** What was measured on pieces of the same mix in the same bath. */
    private final Observations seen;

    private FizzPredictor(Factors factors, Sampling sampling, Workers workers, Observations seen) {
        super(factors, sampling, workers);
        Given.all("observations", seen);
        this.seen = seen;
    }

    @Override
    protected FizzPredictor drawing(Factors others, Sampling other, Workers by) {
        return new FizzPredictor(others, other, by, seen);
    }

    /** {@return the usual predictor: the default priors, 4,096 draws from seed 1, on the calling thread} */
    public static FizzPredictor standard() {
        return new FizzPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, Observations.none());
    }

    /**
     * {@return this predictor knowing what was timed on pieces of the same mix in the same bath}
     *
     * @param measured observations of pieces of the same mix
     */
    public FizzPredictor with(Observations measured) {
        return new FizzPredictor(factors, sampling, workers, measured);
    }

    /**
     * {@return the forecast of a piece with a recipe, in a bath where it may fizz}
     *
     * @param put what is asked; its making has a recipe, and it is not of still water
     * @throws IllegalArgumentException for a piece without a recipe, or in still water
     * @throws org.fizzhull.quantity.Refusal for a fill that does not go into its mould, and for an acid whose strength
     *     is not known
     */
    public FizzForecast forecast(Question put) {
        // a recipe and a bath that lets it fizz are needed
        boolean unknown = put.making() instanceof Making.Weighed weighed
                && weighed.blend().isEmpty();
        if (unknown || put.stillWater()) {
            throw new IllegalArgumentException("a piece of a known recipe in a bath where it may fizz");
        }
        PieceLimits.checkPiece(put.shape(), put.making());
        Question question = TippingBoat.judged(put, factors);
        PreparedQuestion prepared = PreparedQuestion.of(question, factors);
        Factors asked = prepared.factors();
        Optional<Conditioned> known = Conditioned.on(prepared, seen, sampling, workers);
        double[] centre = known.isPresent() ? known.get().centre() : asked.medians();
        DropModel drop = new DropModel(prepared);
        drop.at(centre);
        // fizz times without and with the measurements: the difference is what they did
        double[][] fizzed = fizzed(prepared, centre, Optional.empty());
        Interval before = OutcomeStatistics.intervalOf(fizzed[FizzModel.TIME]);
        if (known.flatMap(Conditioned::posterior).isPresent()) {
            fizzed = fizzed(prepared, centre, known);
        }
        Piece piece = drop.piece(centre);
        if (!(question.making() instanceof Making.Weighed)) {
            // one weight in every answer: that of the middle draw, as float and dry tell it
            double middle = OutcomeStatistics.intervalOf(fizzed[FizzModel.MASS]).median();
            piece = drop.piece(centre, middle);
            drop.weigh(middle);
        }
        // the one voyage that is shown, and the chemistry of the bath, by the central values
        Voyage voyage = FullVoyage.of(prepared.form(), question.bath()).run(drop.launch());
        FreshPowder powder = FreshPowder.of(question, asked, piece);
        Blend blend = powder.blend();
        Reagents reagents = RecipeReagents.of(blend, powder.mass());
        Interval fizzTime = OutcomeStatistics.intervalOf(fizzed[FizzModel.TIME]);
        Interval lost = FizzLoss.of(question, fizzed[FizzModel.LOST]);
        Yield yield = reagents.theoreticalYield().afterLosing(lost.median());
        BathChemistry bath = BathChemistry.of(question.bath(), reagents);
        BathWater closed = bath.degassed(lost.median());
        BathWater open = bath.open();
        // the band of the gas over time
        double[] times = times(Math.max(voyage.fizzTime(), fizzTime.high()));
        double[][] gas = gas(prepared, voyage, times, known);
        List<FizzForecast.Point> band = new ArrayList<>(times.length);
        for (int i = 0; i < times.length; i++) {
            band.add(new FizzForecast.Point(times[i], OutcomeStatistics.intervalOf(gas[1 + i])));
        }
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        if (Effervescence.of(blend.moles(), piece.makeup().gasCapacity()).fizzes()) {
            Notice.addNew(notices, voyage.notices());
        }
        if (lost.median() >= WORTH_SAYING) {
            notices.add(
                    Notice.remark(
                            "fizz-lost",
                            "This piece lost about " + Math.round(100 * lost.median())
                                    + " % of its fizz before the bath: gas, speed and the pH before gas leaves count what is left."));
        }
        tell(notices, question, closed, known);
        return new FizzForecastRecord(
                question,
                blend,
                sampling,
                piece,
                new FizzForecast.FizzedBath(
                        yield, closed.ph(), open.ph(), FizzForecast.BathLoad.of(blend, powder.mass())),
                voyage,
                new FizzForecast.Drawn(fizzTime, lost, OutcomeStatistics.intervalOf(gas[0]), band),
                known.map(measured -> MeasurementEffect.fizzed(seen, measured.effective(), before)),
                notices);
    }

    /** Adds what the bath, a topping, the measurements and a run without draws have to say. */
    private void tell(List<Notice> notices, Question question, BathWater closed, Optional<Conditioned> known) {
        Notice.addNew(notices, closed.notices());
        if (question.shape() instanceof Loaded loaded && !loaded.toppings().isEmpty()) {
            notices.add(TOPPING_APART);
        }
        known.ifPresent(measured -> Notice.addNew(notices, measured.notices()));
        if (sampling.samples() == 0) {
            notices.add(Notices.CENTRAL_VALUES);
        }
    }

    /** Fizz times, losses and weights of every draw; without draws those of the central values. */
    private double[][] fizzed(PreparedQuestion prepared, double[] centre, Optional<Conditioned> known) {
        double[][] columns = FizzModel.columns(Math.max(1, sampling.samples()));
        if (sampling.samples() == 0) {
            FizzModel model = new FizzModel(prepared, columns);
            model.at(centre);
            model.keep(0);
            return columns;
        }
        Conditioned.draws(known, prepared.factors(), sampling.samples(), sampling.seed(), workers)
                .draws(() -> new FizzModel(prepared, columns));
        return columns;
    }

    /**
     * Rate of gas of full voyages, m3/s dry at 1 atm: row 0 the peak of each draw, then a row for each time; without
     * draws that of the central voyage.
     */
    private double[][] gas(PreparedQuestion prepared, Voyage central, double[] times, Optional<Conditioned> known) {
        int draws = Math.min(GAS_DRAWS, sampling.samples());
        double[][] columns = new double[1 + times.length][Math.max(1, draws)];
        if (draws > 0) {
            Conditioned.draws(known, prepared.factors(), draws, sampling.seed(), workers)
                    .draws(() -> new GasModel(prepared, times, columns));
            return columns;
        }
        columns[0][0] = central.dryVolume(central.peakGasRate());
        for (int i = 0; i < times.length; i++) {
            columns[1 + i][0] = central.dryVolume(GasModel.rate(central, times[i]));
        }
        return columns;
    }

    /**
     * {@code POINTS + 1} times from 0 to somewhat beyond the end, s: close together at the start, where the gas changes
     * most.
     */
    private static double[] times(double end) {
        double[] times = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            double share = (double) i / POINTS;
            times[i] = BEYOND * end * share * share;
        }
        return times;
    }
}
