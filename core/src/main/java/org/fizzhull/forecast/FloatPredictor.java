package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Sensitivity;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.uncertainty.Workers;

/**
 * Answers whether a piece floats. Immutable; safe to share between threads:
 * {@code FloatPredictor.standard().forecast(Question.weighed(ball, grams(138)))}.
 */
public final class FloatPredictor {
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

    /** The forecast. */
    public Forecast forecast(Question question) {
        Shape shape = question.shape();
        Factors asked = factors.asked(question);
        double density = question.bath().density();
        List<Notice> notices = new ArrayList<>(Notices.of(question));
        List<Rest> rests = Rests.of(question);
        Draws draws = sampling.samples() == 0 ? central(question, asked) : drawn(question, asked);
        Optional<BatchAim> aim = Optional.empty();
        if (question.hand().isPresent() && sampling.samples() > 0) {
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
                density * shape.volume(),
                boat,
                draws.spare,
                rests,
                draws.probability,
                aim,
                draws.drivers,
                draws.probability.isPresent() ? notices : withCentral(notices));
    }

    private static List<Notice> withCentral(List<Notice> notices) {
        notices.add(Notices.CENTRAL_VALUES);
        return notices;
    }

    private Draws central(Question question, Factors asked) {
        double spare = new DropModel(question, asked).at(asked.medians());
        return new Draws(Interval.certain(spare), Optional.empty(), List.of());
    }

    private Draws drawn(Question question, Factors asked) {
        MonteCarlo run = new MonteCarlo(asked.priors(), sampling.samples(), sampling.seed(), workers);
        Sensitivity found = run.sensitivity(() -> new DropModel(question, asked));
        double[] spare = found.draws();
        double floats = Statistics.shareAbove(spare, 0);
        double error = Statistics.shareError(spare, 0, MonteCarlo.BLOCKS);
        OptionalDouble later = question.stillWater() ? OptionalDouble.of(0) : OptionalDouble.empty();
        OptionalDouble down = question.stillWater() ? OptionalDouble.of(1 - floats) : OptionalDouble.empty();
        double[] sorted = Statistics.sorted(spare);
        Interval interval = new Interval(
                Statistics.quantile(sorted, 0.5),
                Statistics.quantile(sorted, 0.025),
                Statistics.quantile(sorted, 0.975));
        Probability probability = new Probability(floats, error, later, down, OptionalDouble.empty());
        return new Draws(interval, Optional.of(probability), drivers(asked, found));
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
    private record Draws(Interval spare, Optional<Probability> probability, List<Driver> drivers) {}
}
