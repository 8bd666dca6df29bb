package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.sampling.ShiftedPrior;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * What trials taught: the answer of {@link Learner#learn}. Immutable.
 *
 * @param draws the learned inputs
 * @param fits the trials it rests on, and how each lies in what the finished bench expects of it
 * @param left trials that no bench explains together with the others, and why
 * @param effective number of independent draws that the weighted ones are worth
 * @param proposals number of weighted draws
 * @param logEvidence natural logarithm of how likely the trials were on the whole, by Laplace's approximation, but for the
 *     constants of the measurement errors
 * @param asked question of the trial nearest to its border, for which the next measurement is chosen
 * @param next measurement that would narrow it most; empty where it is settled
 */
public record Learned(
        Draws draws,
        List<TrialFit> fits,
        List<Left> left,
        double effective,
        int proposals,
        double logEvidence,
        Question asked,
        Optional<MeasureNext> next) {
    /**
     * Copies the lists.
     *
     * @param draws the learned inputs
     * @param fits the trials it rests on, and how each lies in what the finished bench expects of it
     * @param left trials that no bench explains together with the others, and why
     * @param effective number of independent draws that the weighted ones are worth
     * @param proposals number of weighted draws
     * @param logEvidence natural logarithm of how likely the trials were on the whole, but for a constant
     * @param asked question of the trial nearest to its border
     * @param next measurement that would narrow it most; empty where it is settled
     */
    public Learned {
        fits = List.copyOf(fits);
        left = List.copyOf(left);
    }

    /** {@return number of trials it rests on} */
    public int used() {
        return fits.size();
    }

    /** {@return number of them that lie inside the 95 % interval that the finished bench gives for them} */
    public int inside() {
        return (int) fits.stream().filter(TrialFit::inside).count();
    }

    /** {@return a bench of which no more than this is known, whose table every later forecast takes} */
    public Bench bench() {
        return Bench.none().with(draws);
    }

    /**
     * A trial that was left out.
     *
     * @param name name of the trial
     * @param what column that disagrees most
     * @param off how far it lies off what the others allow, standard deviations
     */
    public record Left(String name, String what, double off) {}

    /**
     * What trials left of the priors of one bench, as whole draws, so that how the inputs depend on one another survives. Each
     * value of a draw is a score: the standard normal quantile of where it stands in the default prior; 0 is its median, 1 one
     * standard deviation above. Written to and read from a bench file by the command line; a {@link Bench} hands them to every
     * predictor. Immutable.
     *
     * @param inputs learned inputs, in the order of the values
     * @param draws at least 50 whole draws, one score for each input in each, from -8 to 8
     */
    public record Draws(List<Input> inputs, List<List<Double>> draws) {
        /** Draws at least: so many that one lies beyond each end of a 95 % interval. */
        private static final int FEWEST = 50;
        /** Largest score, standard deviations of the default prior. */
        static final double FARTHEST = 8;

        /** Least standard deviation of a score: draws that hardly differ would make a prior of no width. */
        private static final double NARROWEST = 1e-3;

        /** Source of every learned prior. */
        private static final Source LEARNED = new Source(
                "bench", "Learned from the trials of this bench, starting from the default prior", Seen.COMPUTED);

        /**
         * Checks the draws and copies the lists.
         *
         * @param inputs learned inputs, in the order of the values
         * @param draws at least 50 whole draws, one score for each input in each, from -8 to 8
         * @throws Refusal {@code out-of-range} for too few draws, a draw of another length or a score that no prior has, {@code
         *     unknown-name} for an input that no bench holds
         */
        public Draws {
            inputs = List.copyOf(inputs);
            draws = List.copyOf(draws);
            if (inputs.isEmpty() || draws.size() < FEWEST) {
                throw bad(draws.size() + " draws of " + inputs.size() + " inputs", FEWEST + " draws or more");
            }
            LearnedInputs.priors(inputs);
            // every draw whole, every score within reach of a prior
            for (List<Double> draw : draws) {
                if (draw.size() != inputs.size()) {
                    throw bad(draw.size() + " values in a draw", inputs.size() + " values");
                }
                for (double score : draw) {
                    if (!(Math.abs(score) <= FARTHEST)) {
                        throw bad("a score of " + score, "scores from -8 to 8");
                    }
                }
            }
        }

        /** For a file that {@code learn} did not write so. */
        private static Refusal bad(String read, String allowed) {
            return new Refusal("out-of-range", "draws", read, allowed, "Let learn write the bench file anew.");
        }

        /**
         * {@return the input of a name in a bench file}
         *
         * @param label name of the input in a bench file
         * @throws Refusal {@code unknown-name} for any other
         */
        public static Input named(String label) {
            for (Input input : Input.values()) {
                if (input.label().equals(label)) {
                    return input;
                }
            }
            throw new Refusal(
                    "unknown-name",
                    "factors",
                    label,
                    "names that learn writes",
                    "Let learn write the bench file anew.");
        }

        /**
         * {@return a table of uncertain inputs, with what was learned in place of their own priors} Each learned input has its prior
         * shifted and narrowed to mean and standard deviation of its scores; the draws themselves say how the inputs depend on one
         * another.
         *
         * @param table the other inputs
         */
        public Factors over(Factors table) {
            int n = inputs.size();
            List<Prior> priors = LearnedInputs.priors(inputs);
            List<Factor> rows = new ArrayList<>(n);
            for (int k = 0; k < n; k++) {
                double[] scores = column(k);
                double mean = Statistics.mean(scores);
                double deviation = Math.max(NARROWEST, Math.sqrt(Statistics.variance(scores, mean)));
                // each input by itself; how they depend on one another is in the draws
                Prior prior = new ShiftedPrior(priors.get(k), mean, deviation);
                rows.add(new Factor(inputs.get(k), prior, LEARNED));
            }
            return table.learned(rows, inputs, values(priors));
        }

        /**
         * The draws in the units of the inputs, sorted by bubble size: neighbours are then alike, and points that are evenly spread
         * over the rows are so over what decides most.
         */
        private List<List<Double>> values(List<Prior> priors) {
            int by = Math.max(0, inputs.indexOf(Input.BUBBLE_SIZE));
            List<List<Double>> sorted = new ArrayList<>(draws);
            sorted.sort((one, other) -> Double.compare(one.get(by), other.get(by)));
            List<List<Double>> values = new ArrayList<>(sorted.size());
            for (List<Double> draw : sorted) {
                values.add(values(draw, priors));
            }
            return values;
        }

        /** One draw of scores in the units of the inputs. */
        private List<Double> values(List<Double> draw, List<Prior> priors) {
            List<Double> values = new ArrayList<>(draw.size());
            for (int k = 0; k < draw.size(); k++) {
                values.add(priors.get(k).atScore(draw.get(k)));
            }
            return values;
        }

        /** {@return each input before and after, in the order of {@link #inputs}} */
        public List<Parameter> parameters() {
            List<Parameter> all = new ArrayList<>(inputs.size());
            List<Prior> priors = LearnedInputs.priors(inputs);
            for (int k = 0; k < inputs.size(); k++) {
                Prior prior = priors.get(k);
                double[] scores = Statistics.sorted(column(k));
                double deviation = Math.sqrt(Statistics.variance(scores, Statistics.mean(scores)));
                all.add(new Parameter(
                        inputs.get(k),
                        interval(inputs.get(k), prior, 0, -Normal.Z_975, Normal.Z_975),
                        interval(
                                inputs.get(k),
                                prior,
                                Statistics.quantile(scores, 0.5),
                                Statistics.quantile(scores, 0.025),
                                Statistics.quantile(scores, 0.975)),
                        100 * Math.min(1, deviation),
                        Statistics.quantile(scores, 0.5)));
            }
            return all;
        }

        /** Median and 95 % interval in the unit that people read, from scores. */
        private static Interval interval(Input input, Prior prior, double median, double low, double high) {
            return new Interval(
                    input.inUnit(prior.atScore(median)),
                    input.inUnit(prior.atScore(low)),
                    input.inUnit(prior.atScore(high)));
        }

        /** Scores of input k, by draw. */
        private double[] column(int k) {
            double[] scores = new double[draws.size()];
            for (int i = 0; i < scores.length; i++) {
                scores[i] = draws.get(i).get(k);
            }
            return scores;
        }

        /**
         * One input before and after.
         *
         * @param input which input
         * @param before median and 95 % interval by the default prior, in the unit people read ({@link Input#unit})
         * @param after the same by the draws, in that unit
         * @param stillPriorPercent standard deviation of its score, per cent of that of the prior: 100 where the trials told
         *     nothing of it
         * @param shift median of its score: how many standard deviations of the prior it moved
         */
        public record Parameter(Input input, Interval before, Interval after, double stillPriorPercent, double shift) {}
    }
}
