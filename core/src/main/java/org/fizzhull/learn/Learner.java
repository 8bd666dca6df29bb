package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.learn.fit.Laplace;
import org.fizzhull.learn.fit.LeastSquaresFit;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;

/**
 * Learns the inputs of a bench from its trials (docs/physics/uncertainty.md, "Learning a bench"). With z the scores of the
 * inputs by their default priors and r the residuals of what the trials showed ({@link TrialResidual}),
 * <pre>  ln p(z | trials) = -(|z|^2 + |r(z)|^2)/2 + const.</pre>
 *
 * <ol>
 * <li>LeastSquaresFit point by least squares ({@link LeastSquaresFit}) and a normal law around it ({@link Laplace}).
 * <li>Where |z|^2 + |r|^2 there exceeds the 99.9 % point of chi-squared, the trial without which the others agree best is left
 *     out and told, and the fit begins again. At most one trial in five is left out, and none of fewer than four; else all is
 *     refused with the trial that lies farthest off.
 * <li>Whole draws by importance sampling from there ({@link Resampled}).
 * </ol>
 *
 * <p>The size of a mould of several pieces is learned beside the inputs and then forgotten: it belongs to the mould, not to the
 * house. The grains of one mix, which pieces share too, are taken as each piece's own: of many pieces of one mix the answer is
 * then a little too sure. Checks: reference data sets of nonlinear least squares and
 * simulation-based calibration, both in that section. Cost: about 5,000 evaluations of every trial, up to 17,000 where the
 * normal law fits badly, on the calling thread. The same trials and seed give the same answer.
 *
 * <pre>{@code
 * Learned learned = Learner.learn(trials, 1);
 * FloatPredictor taught = FloatPredictor.standard().with(learned.bench().factors());
 * }</pre>
 */
public final class Learner {
    /** Trials at least. */
    private static final int FEWEST = 2;
    /** Draws that a bench keeps. */
    private static final int KEPT = 512;
    /** Step of a score for the differences of the fit, standard deviations of the prior. */
    private static final double STEP = 0.02;

    /** Trials that are as far from one another as by chance once in a thousand benches disagree. */
    private static final double UNLIKELY = 1e-3;

    /** Why the size of a mould is not sure. */
    private static final Source SIZE =
            new Source("mould-size", "Size by calipers, or by the water that fills the mould", Source.Seen.ASSUMED);

    /** Draws of the forecast that chooses the next measurement. */
    private static final int NEXT_DRAWS = 1024;

    private final List<Trial> trials;
    private final long seed;
    /** Inputs that may be learned and kept, then the size of each mould that made several of the pieces; index k of z and of values. */
    private final List<Factor> inputs;
    /** How many of them are kept. */
    private final int kept;
    /** Trials that agree so far. */
    private final List<TrialModel> models = new ArrayList<>();
    /** Trials that were left out so far. */
    private final List<Learned.Left> left = new ArrayList<>();

    /** Lays out the trials; pressing is learned where one of them tells of it. */
    private Learner(List<Trial> trials, long seed) {
        this.trials = trials;
        this.seed = seed;
        inputs = new ArrayList<>(LearnedInputs.of(trials.stream().anyMatch(Learner::pressed)));
        kept = inputs.size();
        List<List<Object>> moulds = moulds(trials);
        moulds.forEach(mould -> inputs.add(size(trials, mould)));
        for (Trial trial : trials) {
            int mould = moulds.indexOf(mould(trial));
            models.add(new TrialModel(trial, inputs, mould < 0 ? -1 : kept + mould));
        }
    }

    /** What tells a mould from another: its shape and the water that it holds. */
    private static List<Object> mould(Trial trial) {
        return List.of(trial.shape().bare(), trial.mouldWater());
    }

    /** Moulds of two trials or more, whose error of size they share; that of a mould of one piece is that piece's own. */
    private static List<List<Object>> moulds(List<Trial> trials) {
        List<List<Object>> all = trials.stream().map(Learner::mould).toList();
        return all.stream()
                .distinct()
                .filter(mould -> Collections.frequency(all, mould) > 1)
                .toList();
    }

    /** What is believed of the size of a mould before its pieces are looked at. */
    private static Factor size(List<Trial> trials, List<Object> mould) {
        Trial first = trials.stream()
                .filter(trial -> mould(trial).equals(mould))
                .findFirst()
                .orElseThrow();
        double deviation = first.measured().sizeDeviation(first.shape().surface());
        return new Factor(Input.MOULD_SIZE, Priors.normal(first.sizeError(), deviation), SIZE);
    }

    /** Whether a trial tells of pressing: fill, pressure and mix. */
    private static boolean pressed(Trial trial) {
        return trial.fill().isPresent()
                && trial.pressure().isPresent()
                && trial.blend().isPresent();
    }

    /**
     * {@return what trials teach}
     *
     * @param trials pieces with what they did, two or more
     * @param seed seed of the draws
     * @throws Refusal {@code too-few} for one trial, {@code contradiction} for trials that no bench explains
     */
    public static Learned learn(List<Trial> trials, long seed) {
        if (trials.size() < FEWEST) {
            throw new Refusal(
                    "too-few",
                    "trials",
                    trials.size() + " row" + (trials.size() == 1 ? "" : "s"),
                    "2 or more, better 5",
                    "Give one piece alone as a measurement in the question about it.");
        }
        return new Learner(trials, seed).learned();
    }

    /** Fit, draws, and the forecast that tells what to measure next. */
    private Learned learned() {
        // fit: the trials that agree, and the normal law around their likeliest point
        Laplace law = agreed();
        double[] residuals = residuals(law.mean).clone();
        double square = Arrays.stream(residuals).map(r -> r * r).sum();
        // draws: what the law leaves out of the true density is put right by weights
        Resampled sampled = Resampled.of(law, this::logDensity, KEPT, seed);
        Learned.Draws draws = new Learned.Draws(
                inputs.stream().limit(kept).map(Factor::input).toList(),
                Arrays.stream(sampled.draws())
                        .map(draw -> Arrays.stream(draw, 0, kept)
                                .mapToObj(z -> Math.max(-8, Math.min(8, z)))
                                .toList())
                        .toList());
        // next: what would narrow the piece that is most in doubt
        Question asked = border(values(law.mean)).question();
        return new Learned(
                draws,
                models.stream()
                        .map(model -> TrialFit.of(model, sampled.draws(), this::values))
                        .toList(),
                left,
                sampled.effective(),
                Resampled.PROPOSALS,
                -0.5 * square + 0.5 * law.logDeterminant,
                asked,
                FloatPredictor.standard()
                        .with(Bench.none().with(draws).factors())
                        .with(new Sampling(seed, NEXT_DRAWS))
                        .forecast(asked)
                        .next());
    }

    /** The trial whose piece is nearest to its border between floating and sinking: what is asked next is most in doubt there. */
    private TrialModel border(double[] values) {
        TrialModel nearest = models.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (TrialModel model : models) {
            double spare = Math.abs(model.predicted(values)[0]);
            if (spare < least) {
                least = spare;
                nearest = model;
            }
        }
        return nearest;
    }

    /**
     * The law of the trials that agree; those that do not are left out one by one. Where all agree, |z|^2 + |r|^2 at the
     * likeliest point is chi-squared with as many degrees of freedom as there are signs.
     */
    private Laplace agreed() {
        double[] start = new double[inputs.size()];
        // errors of the pieces' own at the priors' medians, for the first fit
        double[] values = values(start);
        models.forEach(model -> model.takeOwn(values));
        while (true) {
            Laplace law = fitted(start);
            // number of signs: residuals less the scores that stand before them
            int signs = residuals(law.mean).length - law.mean.length;
            double bound = new ChiSquaredDistribution(signs).inverseCumulativeProbability(1 - UNLIKELY);
            double cost = -2 * logDensity(law.mean);
            if (cost <= bound) {
                return law;
            }
            Worst worst = worst(start, cost);
            // at most one in five may disagree; of fewer than four trials none, since no majority tells which
            int most = trials.size() / 5;
            if (models.size() < 4 || left.size() >= most) {
                throw new Refusal(
                        "contradiction",
                        worst.model().trial().name(),
                        String.format(
                                Locale.ROOT,
                                "%s, %.1f standard deviations off what the other trials and the priors allow",
                                worst.what(),
                                worst.off()),
                        "trials that one bench explains",
                        "Check weight, mould, bath and unit of this row, or leave it out; of five rows one may disagree.");
            }
            models.remove(worst.model());
            left.add(new Learned.Left(worst.model().trial().name(), worst.what(), worst.off()));
        }
    }

    /**
     * A trial that disagrees.
     *
     * @param model the trial
     * @param what its sign that lies farthest off
     * @param off square root of what |z|^2 + |r|^2 falls by without it: standard deviations
     */
    private record Worst(TrialModel model, String what, double off) {}

    /** The trial without which the others agree best, each left out in turn. */
    private Worst worst(double[] start, double cost) {
        List<TrialModel> all = List.copyOf(models);
        Worst worst = new Worst(all.get(0), "", 0);
        for (TrialModel model : all) {
            models.remove(model);
            // fitted without this trial: how much better do the others agree
            double[] without = fitted(start).mean;
            double off = Math.sqrt(Math.max(0, cost + 2 * logDensity(without)));
            if (off > worst.off()) {
                worst = new Worst(model, farthest(model, values(without)), off);
            }
            models.clear();
            models.addAll(all);
        }
        return worst;
    }

    /** Name of the sign of a trial that lies farthest off, at one value of each input. */
    private static String farthest(TrialModel model, double[] values) {
        double[] off = new double[model.signs().size()];
        model.residuals(values, off, 0);
        int at = 0;
        for (int k = 1; k < off.length; k++) {
            at = Math.abs(off[k]) > Math.abs(off[at]) ? k : at;
        }
        return model.signs().get(at).what();
    }

    /** The fit, made twice: the errors of each piece's own depend a little on the point. */
    private Laplace fitted(double[] start) {
        double[] steps = new double[start.length];
        Arrays.fill(steps, STEP);
        Laplace first = LeastSquaresFit.find(this::residuals, start, steps);
        double[] values = values(first.mean);
        models.forEach(model -> model.takeOwn(values));
        return LeastSquaresFit.find(this::residuals, first.mean, steps);
    }

    /** Inputs in their own units from their scores, which are kept within those that a bench may hold. */
    private double[] values(double[] z) {
        double[] values = new double[z.length];
        for (int k = 0; k < z.length; k++) {
            Prior prior = inputs.get(k).prior();
            values[k] = prior.atScore(Math.max(-Learned.Draws.FARTHEST, Math.min(Learned.Draws.FARTHEST, z[k])));
        }
        return values;
    }

    /** Scores first, then the residuals of the trials in order. */
    private double[] residuals(double[] z) {
        int count = z.length;
        for (TrialModel model : models) {
            count += model.signs().size();
        }
        double[] all = Arrays.copyOf(z, count);
        double[] values = values(z);
        int at = z.length;
        for (TrialModel model : models) {
            model.residuals(values, all, at);
            at += model.signs().size();
        }
        return all;
    }

    /** ln p(z | trials) but for a constant. */
    private double logDensity(double[] z) {
        double sum = 0;
        for (double r : residuals(z)) {
            sum += r * r;
        }
        return -0.5 * sum;
    }

    /** The inputs that may be learned, of trials with or without pressing. */
    static List<Input> inputs(boolean pressed) {
        return LearnedInputs.of(pressed).stream().map(Factor::input).toList();
    }
}
