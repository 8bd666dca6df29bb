package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.CorrelationRatio;
import org.fizzhull.uncertainty.Draws;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Posterior;
import org.fizzhull.uncertainty.Sensitivity;
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
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
        this.seen = seen;
    }

    /** The default priors, 4,096 draws from seed 1, on the calling thread. */
    public static FloatPredictor standard() {
        return new FloatPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, Observations.none());
    }

    /** With other priors. */
    public FloatPredictor with(Factors others) {
        return new FloatPredictor(others, sampling, workers, seen);
    }

    /** With other draws. */
    public FloatPredictor with(Sampling other) {
        return new FloatPredictor(factors, other, workers, seen);
    }

    /** With other workers; the answer stays the same to the byte. */
    public FloatPredictor with(Workers others) {
        return new FloatPredictor(factors, sampling, others, seen);
    }

    /** Knowing what was measured on pieces of the same mix in the same bath. */
    public FloatPredictor with(Observations measured) {
        return new FloatPredictor(factors, sampling, workers, measured);
    }

    /** The forecast; refuses a fill that does not go into the mould. */
    public Forecast forecast(Question put) {
        Shape shape = put.shape();
        if (put.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(shape, filled);
        }
        Question question = TippingBoat.judged(put, factors);
        Posed posed = Posed.of(question, factors);
        double density = question.bath().density();
        Optional<Conditioned> known = Conditioned.on(posed, seen, sampling, workers);
        double[] centre =
                known.isPresent() ? known.get().centre() : posed.factors().medians();
        Piece piece = piece(posed, centre);
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        if (question.into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        List<Rest> rests = Rests.of(question, piece);
        Optional<Posterior> after = known.isPresent() ? known.get().posterior() : Optional.empty();
        Result draws = sampling.samples() == 0
                ? central(posed, centre)
                : after.isPresent() ? narrowed(posed, after.get()) : drawn(posed);
        Optional<Narrowing> narrowing = Optional.empty();
        if (known.isPresent()) {
            narrowing = Optional.of(before(posed, known.get()));
            notices.addAll(known.get().notices());
        }
        if (draws.fates.graze() > MANY_GRAZE) {
            notices.add(Notices.GRAZING);
        }
        Optional<BatchAim> aim = Optional.empty();
        if (question.making().hand().isPresent() && sampling.samples() > 0) {
            aim = new BatchAims(posed, sampling, workers, after).find();
            if (aim.isEmpty()) {
                notices.add(Notices.NO_AIM);
            }
        }
        OptionalDouble boat = shape.hollow().isPresent()
                ? OptionalDouble.of(density * BoatLimit.displaced(shape, density))
                : OptionalDouble.empty();
        return new Forecast(
                question,
                sampling,
                piece,
                draws.mass,
                density * displacing(shape),
                boat,
                draws.spare,
                rests,
                draws.fates.probability(),
                draws.fates.riseTime(),
                draws.fates.fizzTime(),
                aim,
                draws.drivers,
                narrowing,
                draws.fates.probability().isPresent() ? notices : withCentral(notices));
    }

    /** Volume that the float limit counts, m3: the crystals of a geode are left out, as makers' tables do. */
    private static double displacing(Shape shape) {
        return shape.volume() + (shape.insetVolume() - shape.bare().insetVolume());
    }

    private static List<Notice> withCentral(List<Notice> notices) {
        notices.add(Notices.CENTRAL_VALUES);
        return notices;
    }

    private static Result central(Posed posed, double[] centre) {
        Optional<Interval> mass = posed.question().making() instanceof Weighed
                ? Optional.empty()
                : Optional.of(Interval.certain(piece(posed, centre).mass()));
        if (posed.question().stillWater()) {
            double spare = new DropModel(posed.question(), posed.factors()).at(centre);
            return new Result(Interval.certain(spare), mass, Fates.NONE, List.of());
        }
        double[][] columns = new double[VoyageModel.WIDTH][1];
        VoyageModel model = new VoyageModel(posed, columns);
        double spare = model.at(centre);
        model.keep(0);
        return new Result(Interval.certain(spare), mass, Fates.central(columns), List.of());
    }

    private static Piece piece(Posed posed, double[] centre) {
        return new DropModel(posed.question(), posed.factors()).piece(centre);
    }

    private Result drawn(Posed posed) {
        MonteCarlo run = run(posed.factors());
        Sensitivity found;
        Fates fates;
        double[] masses;
        if (posed.question().stillWater()) {
            masses = new double[sampling.samples()];
            found = run.sensitivity(() -> new StillModel(posed, masses));
            fates = Fates.still(found.draws());
        } else {
            double[][] columns = new double[VoyageModel.WIDTH][sampling.samples()];
            found = run.sensitivity(VoyageModel.each(posed, columns));
            fates = Fates.drawn(columns);
            masses = columns[VoyageModel.MASS];
        }
        return new Result(
                Fates.interval95(Statistics.sorted(found.draws())),
                masses(posed.question(), masses),
                fates,
                drivers(posed.factors(), found));
    }

    /** The draws that agree with what was measured. */
    private Result narrowed(Posed posed, Posterior run) {
        Factors asked = posed.factors();
        Walked walked = walked(posed, run);
        CorrelationRatio found = run.ratios(walked.spare, asked.columns());
        double[] none = new double[asked.rows().size()];
        Arrays.fill(none, Double.NaN);
        Sensitivity ratios = new Sensitivity(walked.spare, found.firstOrder(), none, found.error());
        return new Result(
                Fates.interval95(Statistics.sorted(walked.spare)),
                masses(posed.question(), walked.masses),
                walked.fates,
                drivers(asked, ratios));
    }

    /** The weight of a made piece; a weighed one is what the scale says. */
    private static Optional<Interval> masses(Question question, double[] masses) {
        return question.making() instanceof Weighed
                ? Optional.empty()
                : Optional.of(Fates.interval95(Statistics.sorted(masses)));
    }

    /** What it would say without the measurements. */
    private Narrowing before(Posed posed, Conditioned known) {
        if (sampling.samples() == 0) {
            Result central = central(posed, posed.factors().medians());
            return Narrowing.bathed(seen, known.effective(), central.fates, central.spare);
        }
        Walked walked = walked(posed, run(posed.factors()));
        Interval spare = Fates.interval95(Statistics.sorted(walked.spare));
        return Narrowing.bathed(seen, known.effective(), walked.fates, spare);
    }

    private MonteCarlo run(Factors asked) {
        return new MonteCarlo(asked.priors(), asked.columns(), sampling.samples(), sampling.seed(), workers);
    }

    /** Draws without indices. */
    private Walked walked(Posed posed, Draws run) {
        if (posed.question().stillWater()) {
            double[] masses = new double[sampling.samples()];
            double[] spare = run.draws(() -> new StillModel(posed, masses));
            return new Walked(spare, masses, Fates.still(spare));
        }
        double[][] columns = new double[VoyageModel.WIDTH][sampling.samples()];
        double[] spare = run.draws(VoyageModel.each(posed, columns));
        return new Walked(spare, columns[VoyageModel.MASS], Fates.drawn(columns));
    }

    private static List<Driver> drivers(Factors asked, Sensitivity found) {
        List<Driver> drivers = new ArrayList<>(asked.rows().size());
        for (int i = 0; i < asked.rows().size(); i++) {
            Driver driver =
                    new Driver(asked.rows().get(i).input(), found.firstOrder()[i], found.total()[i], found.error()[i]);
            int at = drivers.size();
            while (at > 0 && drivers.get(at - 1).share() < driver.share()) {
                at--;
            }
            drivers.add(at, driver);
        }
        return drivers;
    }

    /** What the draws say. */
    private record Result(Interval spare, Optional<Interval> mass, Fates fates, List<Driver> drivers) {}

    /** Draws of the spare and of the mass, kg, and what becomes of the pieces. */
    private record Walked(double[] spare, double[] masses, Fates fates) {}
}
