package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Sensitivity;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.VoyageForm;

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

    private FloatPredictor(Factors factors, Sampling sampling, Workers workers) {
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
    }

    /** The default priors, 4,096 draws from seed 1, on the calling thread. */
    public static FloatPredictor standard() {
        return new FloatPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER);
    }

    /** With other priors. */
    public FloatPredictor with(Factors others) {
        return new FloatPredictor(others, sampling, workers);
    }

    /** With other draws. */
    public FloatPredictor with(Sampling other) {
        return new FloatPredictor(factors, other, workers);
    }

    /** With other workers; the answer stays the same to the byte. */
    public FloatPredictor with(Workers others) {
        return new FloatPredictor(factors, sampling, others);
    }

    /** The forecast; refuses a fill that does not go into the mould. */
    public Forecast forecast(Question question) {
        Shape shape = question.shape();
        if (question.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(shape, filled);
        }
        Factors asked = factors.asked(question);
        double density = question.bath().density();
        Piece piece = new DropModel(question, asked).piece(asked.medians());
        List<Notice> notices = new ArrayList<>(Notices.of(question, piece));
        List<Rest> rests = Rests.of(question, piece);
        Draws draws = sampling.samples() == 0 ? central(question, asked) : drawn(question, asked);
        if (draws.fates.graze() > MANY_GRAZE) {
            notices.add(Notices.GRAZING);
        }
        Optional<BatchAim> aim = Optional.empty();
        if (question.making().hand().isPresent() && sampling.samples() > 0) {
            aim = new BatchAims(question, asked, sampling, workers).find();
            if (aim.isEmpty()) {
                notices.add(Notices.NO_AIM);
            }
        }
        OptionalDouble boat =
                shape.hollow().isPresent() ? OptionalDouble.of(density * shape.hullVolume()) : OptionalDouble.empty();
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

    private Draws central(Question question, Factors asked) {
        double[] medians = asked.medians();
        if (question.stillWater()) {
            double spare = new DropModel(question, asked).at(medians);
            return new Draws(Interval.certain(spare), mass(question, asked), Fates.NONE, List.of());
        }
        double[][] columns = new double[VoyageModel.WIDTH][1];
        VoyageModel model = new VoyageModel(question, asked, VoyageModel.form(question), columns);
        double spare = model.at(medians);
        model.keep(0);
        return new Draws(Interval.certain(spare), mass(question, asked), Fates.central(columns), List.of());
    }

    private static Optional<Interval> mass(Question question, Factors asked) {
        return question.making() instanceof Weighed
                ? Optional.empty()
                : Optional.of(Interval.certain(
                        new DropModel(question, asked).piece(asked.medians()).mass()));
    }

    private Draws drawn(Question question, Factors asked) {
        MonteCarlo run = new MonteCarlo(asked.priors(), asked.columns(), sampling.samples(), sampling.seed(), workers);
        Sensitivity found;
        Fates fates;
        double[] masses;
        if (question.stillWater()) {
            masses = new double[sampling.samples()];
            found = run.sensitivity(() -> new StillModel(question, asked, masses));
            fates = Fates.still(found.draws());
        } else {
            VoyageForm form = VoyageModel.form(question);
            double[][] columns = new double[VoyageModel.WIDTH][sampling.samples()];
            found = run.sensitivity(() -> new VoyageModel(question, asked, form, columns));
            fates = Fates.drawn(columns);
            masses = columns[VoyageModel.MASS];
        }
        return new Draws(
                Fates.interval95(Statistics.sorted(found.draws())),
                question.making() instanceof Weighed
                        ? Optional.empty()
                        : Optional.of(Fates.interval95(Statistics.sorted(masses))),
                fates,
                drivers(asked, found));
    }

    private static List<Driver> drivers(Factors asked, Sensitivity found) {
        List<Driver> drivers = new ArrayList<>(asked.rows().size());
        for (int i = 0; i < asked.rows().size(); i++) {
            Driver driver =
                    new Driver(asked.rows().get(i).input(), found.firstOrder()[i], found.total()[i], found.error()[i]);
            int at = drivers.size();
            while (at > 0 && drivers.get(at - 1).total() < driver.total()) {
                at--;
            }
            drivers.add(at, driver);
        }
        return drivers;
    }

    /** What the draws say. */
    private record Draws(Interval spare, Optional<Interval> mass, Fates fates, List<Driver> drivers) {}
}
