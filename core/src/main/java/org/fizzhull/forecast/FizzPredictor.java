package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.BathChemistry;
import org.fizzhull.fizz.BathWater;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.fizz.Yield;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Loaded;
import org.fizzhull.uncertainty.Draws;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Posterior;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Voyage;

/**
 * Answers how a piece of a known recipe, weighed or made, fizzes and what its bath becomes; fizz lost before the bath is
 * missing in both. Immutable:
 * {@code FizzPredictor.standard().forecast(Question.of(ball, new Weighed(mass, hand, Optional.of(blend))))}.
 */
public final class FizzPredictor {
    /** Most draws of the gas: each is a full voyage, and the band's ends are read to a pixel. */
    public static final int GAS_DRAWS = 128;

    private static final int POINTS = 60;

    /** The band's last time over the longest of the central and the upper fizz time. */
    private static final double BEYOND = 1.05;

    /** Every loss counts; a smaller one, within the error of weighing a recipe, makes no sentence. */
    private static final double WORTH_SAYING = 0.02;

    private static final Notice TOPPING_APART =
            new Notice("on-top-apart", "What lies on top is not counted in what is in the bath.");

    private final Factors factors;
    private final Sampling sampling;
    private final Workers workers;
    private final Observations seen;

    private FizzPredictor(Factors factors, Sampling sampling, Workers workers, Observations seen) {
        this.factors = Objects.requireNonNull(factors, "factors");
        this.sampling = sampling;
        this.workers = workers;
        this.seen = seen;
    }

    /** 4,096 draws from seed 1 on the calling thread. */
    public static FizzPredictor standard() {
        return new FizzPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, Observations.none());
    }

    /** With other priors. */
    public FizzPredictor with(Factors others) {
        return new FizzPredictor(others, sampling, workers, seen);
    }

    /** With other draws. */
    public FizzPredictor with(Sampling other) {
        return new FizzPredictor(factors, other, workers, seen);
    }

    /** With other workers; the answer stays the same to the byte. */
    public FizzPredictor with(Workers others) {
        return new FizzPredictor(factors, sampling, others, seen);
    }

    /** Knowing what was timed on pieces of the same mix in the same bath. */
    public FizzPredictor with(Observations measured) {
        return new FizzPredictor(factors, sampling, workers, measured);
    }

    /** The forecast of a piece with a recipe, in a bath where it may fizz; refuses a fill that does not fit its mould. */
    public FizzForecast forecast(Question put) {
        boolean unknown =
                put.making() instanceof Weighed weighed && weighed.blend().isEmpty();
        if (unknown || put.stillWater()) {
            throw new IllegalArgumentException("a piece of a known recipe in a bath where it may fizz");
        }
        if (put.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(put.shape(), filled);
        }
        Question question = TippingBoat.judged(put, factors);
        Posed posed = Posed.of(question, factors);
        Factors asked = posed.factors();
        Optional<Conditioned> known = Conditioned.on(posed, seen, sampling, workers);
        double[] centre = known.isPresent() ? known.get().centre() : asked.medians();
        DropModel drop = new DropModel(question, asked);
        drop.at(centre);
        Voyage voyage = drop.sail(FullVoyage.of(posed.form(), question.bath()));
        Piece piece = drop.piece(centre);
        FreshPowder powder = FreshPowder.of(question, asked, piece);
        Blend blend = powder.blend();
        Reagents reagents = RecipeReagents.of(blend, powder.mass());
        Yield fresh = Yield.of(reagents);
        double left = fizzLeft(piece, fresh);
        Yield yield = fresh.afterLosing(1 - left);
        BathChemistry bath = BathChemistry.of(question.bath(), reagents);
        BathWater closed = bath.degassed(1 - left);
        BathWater open = bath.open();
        Optional<Posterior> after = known.flatMap(Conditioned::posterior);
        Interval before = fizzTime(posed, voyage, Optional.empty());
        Interval fizzTime = after.isEmpty() ? before : fizzTime(posed, voyage, after);
        double[] times = times(Math.max(voyage.fizzTime(), fizzTime.high()));
        double[][] gas = gas(posed, voyage, times, after);
        List<FizzForecast.Point> band = new ArrayList<>(times.length);
        for (int i = 0; i < times.length; i++) {
            band.add(new FizzForecast.Point(times[i], interval(gas[1 + i])));
        }
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        tell(notices, question, voyage, closed, left, known);
        return new FizzForecast(
                question,
                blend,
                sampling,
                piece,
                reagents,
                yield,
                closed,
                open,
                Bathful.of(blend, powder.mass(), piece.bodyMass()),
                voyage,
                fizzTime,
                interval(gas[0]),
                band,
                known.map(measured -> Narrowing.fizzed(seen, measured.effective(), before)),
                notices);
    }

    private void tell(
            List<Notice> notices,
            Question question,
            Voyage voyage,
            BathWater closed,
            double left,
            Optional<Conditioned> known) {
        addNew(notices, voyage.notices());
        addNew(notices, closed.notices());
        if (1 - left >= WORTH_SAYING) {
            notices.add(
                    new Notice(
                            "fizz-lost",
                            "This piece lost about " + Math.round(100 * (1 - left))
                                    + " % of its fizz before the bath: gas, speed and the pH before gas leaves count what is left."));
        }
        if (question.shape() instanceof Loaded loaded && !loaded.toppings().isEmpty()) {
            notices.add(TOPPING_APART);
        }
        known.ifPresent(measured -> addNew(notices, measured.notices()));
        if (sampling.samples() == 0) {
            notices.add(Notices.CENTRAL_VALUES);
        }
    }

    /** Share of the recipe's fizz that the piece still has, what goes off as the liquid meets the powder left out. */
    private static double fizzLeft(Piece piece, Yield fresh) {
        double has = piece.makeup().gasCapacity() * piece.bodyMass();
        return has < fresh.carbonDioxide() ? has / fresh.carbonDioxide() : 1;
    }

    private Interval fizzTime(Posed posed, Voyage central, Optional<Posterior> after) {
        if (sampling.samples() == 0) {
            return Interval.certain(central.fizzTime());
        }
        double[][] columns = new double[VoyageModel.WIDTH][sampling.samples()];
        run(posed.factors(), sampling.samples(), after).draws(() -> new VoyageModel(posed, columns));
        return interval(columns[VoyageModel.FIZZ_TIME]);
    }

    private double[][] gas(Posed posed, Voyage central, double[] times, Optional<Posterior> after) {
        int draws = Math.min(GAS_DRAWS, sampling.samples());
        double[][] columns = new double[1 + times.length][Math.max(1, draws)];
        if (draws > 0) {
            run(posed.factors(), draws, after).draws(() -> new GasModel(posed, times, columns));
            return columns;
        }
        columns[0][0] = central.dryVolume(central.peakGasRate());
        for (int i = 0; i < times.length; i++) {
            columns[1 + i][0] = central.dryVolume(GasModel.rate(central, times[i]));
        }
        return columns;
    }

    private Draws run(Factors asked, int draws, Optional<Posterior> after) {
        if (after.isPresent()) {
            return after.get().thinned(draws);
        }
        return new MonteCarlo(asked.priors(), asked.columns(), draws, sampling.seed(), workers);
    }

    /** Close together at the start, where the gas changes most. */
    private static double[] times(double end) {
        double[] times = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            double share = (double) i / POINTS;
            times[i] = BEYOND * end * share * share;
        }
        return times;
    }

    private static void addNew(List<Notice> notices, List<Notice> more) {
        for (Notice notice : more) {
            if (!notices.contains(notice)) {
                notices.add(notice);
            }
        }
    }

    private static Interval interval(double[] y) {
        return Fates.interval95(Statistics.sorted(y));
    }
}
