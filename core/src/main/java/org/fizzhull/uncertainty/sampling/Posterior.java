package org.fizzhull.uncertainty.sampling;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;

/**
 * Draws of the inputs after measurements.
 * <ol>
 *   <li>Blocks of scrambled Sobol points give proposals from the priors ({@link SobolBlock}).
 *   <li>A {@link ExactConditioning} solves each for what was measured and weighs it.
 *   <li>Where too few proposals agree, more are drawn, up to a limit.
 *   <li>Systematic resampling inside each block (G. Kitagawa, J. Comput. Graph. Statist. 5 (1996) 1; from memory) makes
 *       equally heavy draws of them: so everything that reads draws of a prior reads these.
 * </ol>
 *
 * <p>Only weights and solved values are kept; the other inputs are made again from the same points whenever the draws
 * are walked through. Error: that of {@link #effective} independent draws, which a caller should look at. Cost: one
 * solve a proposal, then one call of the model for each proposal that is taken. A block depends on (seed, number) only.
 * Source: docs/physics/uncertainty.md, 4. Immutable.
 */
public final class Posterior implements Draws {
    /** More proposals are drawn until this share of the draws asked for is effective. */
    private static final double ENOUGH = 0.5;

    /** One prior for each column. */
    private final List<Prior> priors;
    /** Number of draws. */
    private final int samples;
    /** Seed of the scrambling. */
    private final long seed;
    /** What runs the blocks. */
    private final Workers workers;
    /** Proposals that were solved and weighed. */
    private final Proposals proposals;

    private Posterior(List<Prior> priors, int samples, long seed, Workers workers, Proposals proposals) {
        this.priors = priors;
        this.samples = samples;
        this.seed = seed;
        this.workers = workers;
        this.proposals = proposals;
    }

    /**
     * Proposals from the priors, with what was solved for.
     *
     * @param solved columns whose values are solved for
     * @param uniforms columns of a point beyond those of the priors
     * @param weights of each proposal: by block and row; the weights of a block sum to 1, or are all 0
     * @param values solved: by block, place in {@code solved} and row
     */
    private record Proposals(int[] solved, int uniforms, double[][] weights, double[][][] values) {
        Proposals(int[] solved, int uniforms, int rows) {
            this(
                    solved,
                    uniforms,
                    new double[MonteCarlo.BLOCKS][rows],
                    new double[MonteCarlo.BLOCKS][solved.length][rows]);
        }
    }

    /**
     * The points of a block: the further uniforms first and the inputs last, so that further inputs leave the draws of
     * those before as they are.
     */
    private static final class Points {
        private final List<Prior> priors;
        private final SobolBlock block;
        private final double[] point;
        private final double[] ofInputs;
        /** Uniforms beyond those of the inputs. */
        final double[] extra;
        /** Value of each input. */
        final double[] inputs;

        Points(List<Prior> priors, int uniforms, long seed, int block) {
            this.priors = priors;
            this.block = new SobolBlock(uniforms + priors.size(), seed, block);
            point = new double[uniforms + priors.size()];
            ofInputs = new double[priors.size()];
            extra = new double[uniforms];
            inputs = new double[priors.size()];
        }

        /** Goes on to the next point; {@link #read} takes its values. */
        void next() {
            block.next(point);
        }

        /** Takes uniforms and inputs of the point. */
        void read() {
            System.arraycopy(point, 0, extra, 0, extra.length);
            System.arraycopy(point, extra.length, ofInputs, 0, ofInputs.length);
            for (int i = 0; i < inputs.length; i++) {
                inputs[i] = priors.get(i).quantile(ofInputs, i);
            }
        }
    }

    /**
     * {@return the draws that measurements leave}
     *
     * @param priors one for each column of the inputs
     * @param samples number of draws, a positive multiple of {@link MonteCarlo#BLOCKS}
     * @param seed any number
     * @param workers what runs the blocks; the result does not depend on it
     * @param most times as many proposals may be tried at most, where few of them agree with what was measured
     * @param pinning one for each thread
     * @throws IllegalArgumentException for another number of draws
     */
    public static Posterior of(
            List<Prior> priors,
            int samples,
            long seed,
            Workers workers,
            int most,
            Supplier<ExactConditioning> pinning) {
        requireBlocks(samples);
        // as many proposals as draws; from their effective number, how many more are needed
        Posterior first = proposed(priors, samples, 1, seed, workers, pinning);
        double wanted = ENOUGH * samples / Math.max(1, first.effective());
        int times = (int) Math.min(most, Math.ceil(wanted));
        return times <= 1 ? first : proposed(priors, samples, times, seed, workers, pinning);
    }

    /**
     * {@return draws of priors as they are: for inputs that depend on one another, whose indices {@link #ratios} gives}
     *
     * @param priors one for each column of the inputs
     * @param samples number of draws, a positive multiple of {@link MonteCarlo#BLOCKS}
     * @param seed any number
     * @param workers what runs the blocks; the result does not depend on it
     */
    public static Posterior unweighted(List<Prior> priors, int samples, long seed, Workers workers) {
        requireBlocks(samples);
        // nothing is solved and every proposal is taken once: no point has to be looked at for that
        int rows = samples / MonteCarlo.BLOCKS;
        Proposals all = new Proposals(new int[0], 0, rows);
        for (double[] block : all.weights) {
            Arrays.fill(block, 1.0 / rows);
        }
        return new Posterior(List.copyOf(priors), samples, seed, workers, all);
    }

    /** Refuses a number of draws that does not fill the blocks alike. */
    private static void requireBlocks(int samples) {
        if (samples <= 0 || samples % MonteCarlo.BLOCKS != 0) {
            throw new IllegalArgumentException("draws come in multiples of " + MonteCarlo.BLOCKS + ", not " + samples);
        }
    }

    /** Proposes {@code times} as many points as draws, solves and weighs them. */
    private static Posterior proposed(
            List<Prior> priors,
            int samples,
            int times,
            long seed,
            Workers workers,
            Supplier<ExactConditioning> pinning) {
        ExactConditioning sample = pinning.get();
        int rows = samples / MonteCarlo.BLOCKS * times;
        Proposals proposals = new Proposals(sample.solved(), sample.uniforms(), rows);
        Workers.all(workers, MonteCarlo.BLOCKS, block -> {
            ExactConditioning solve = pinning.get();
            Points points = new Points(priors, proposals.uniforms, seed, block);
            double[] weights = proposals.weights[block];
            for (int row = 0; row < rows; row++) {
                Workers.begin(workers, 1);
                points.next();
                points.read();
                weights[row] = solve.solve(points.inputs, points.extra);
                for (int k = 0; k < proposals.solved.length; k++) {
                    proposals.values[block][k][row] = points.inputs[proposals.solved[k]];
                }
            }
            scale(weights);
        });
        return new Posterior(List.copyOf(priors), samples, seed, workers, proposals);
    }

    /** From natural logarithms to shares that sum to 1, in place; all 0 where nothing agrees. */
    private static void scale(double[] logWeights) {
        double most = Double.NEGATIVE_INFINITY;
        for (double w : logWeights) {
            most = Math.max(most, w);
        }
        double sum = 0;
        for (int i = 0; i < logWeights.length; i++) {
            logWeights[i] = most > Double.NEGATIVE_INFINITY ? Math.exp(logWeights[i] - most) : 0;
            sum += logWeights[i];
        }
        for (int i = 0; i < logWeights.length && sum > 0; i++) {
            logWeights[i] /= sum;
        }
    }

    /**
     * {@return how many independent draws these are worth (Kish 1965: 1 over the sum of squared shares; from memory),
     * each block counting alike; 0 where a block has no draw that agrees} Never more than the draws asked for.
     */
    public double effective() {
        double sum = 0;
        for (double[] block : proposals.weights) {
            double squares = 0;
            for (double w : block) {
                squares += w * w;
            }
            if (squares == 0) {
                return 0;
            }
            sum += squares;
        }
        return Math.min(samples, MonteCarlo.BLOCKS * MonteCarlo.BLOCKS / sum);
    }

    /** {@return the number of draws} */
    public int samples() {
        return samples;
    }

    /** {@return the number of proposals that were solved} */
    public int proposals() {
        return MonteCarlo.BLOCKS * proposals.weights[0].length;
    }

    /**
     * {@return the same with another number of draws, a positive multiple of {@link MonteCarlo#BLOCKS}} Nothing is
     * solved anew: the same proposals are taken more or less often.
     *
     * @param draws number of draws to take
     */
    public Posterior thinned(int draws) {
        return new Posterior(priors, draws, seed, workers, proposals);
    }

    @Override
    public double[] draws(Supplier<Model> model) {
        double[] y = new double[samples];
        walk(model, (block, from, inputs, copies, drawn) -> {
            double value = drawn.at(inputs);
            for (int copy = 0; copy < copies; copy++) {
                y[from + copy] = value;
                drawn.keep(from + copy);
            }
        });
        return y;
    }

    /**
     * {@return the first-order indices of an output of {@link #draws}, by group of columns; see {@link
     * CorrelationRatio}}
     *
     * @param y output of every draw, as {@link #draws} gives it
     * @param groups number of columns of each input, in order
     */
    public CorrelationRatio ratios(double[] y, int[] groups) {
        // the first draws of each block are enough
        int most = Math.min(CorrelationRatio.MOST_DRAWS, samples) / MonteCarlo.BLOCKS;
        double[][] x = new double[priors.size()][MonteCarlo.BLOCKS * most];
        double[] taken = new double[MonteCarlo.BLOCKS * most];
        int length = samples / MonteCarlo.BLOCKS;
        for (int block = 0; block < MonteCarlo.BLOCKS; block++) {
            System.arraycopy(y, block * length, taken, block * most, most);
        }
        walk(() -> inputs -> 0, (block, from, inputs, copies, drawn) -> {
            for (int at = from - block * length; at < Math.min(most, from - block * length + copies); at++) {
                for (int i = 0; i < x.length; i++) {
                    x[i][block * most + at] = inputs[i];
                }
            }
        });
        return CorrelationRatio.of(x, groups, taken, effective() * taken.length / samples);
    }

    /** Walks through the draws, block by block and in the order of the proposals, on the workers. */
    private void walk(Supplier<Model> model, Step step) {
        // draws of a block
        int length = samples / MonteCarlo.BLOCKS;
        Workers.all(workers, MonteCarlo.BLOCKS, block -> {
            Model drawn = model.get();
            int[] copies =
                    SystematicResampling.copies(proposals.weights[block], length, seed * MonteCarlo.BLOCKS + block);
            Points points = new Points(priors, proposals.uniforms, seed, block);
            int from = block * length;
            for (int row = 0; row < copies.length; row++) {
                Workers.begin(workers, 1);
                points.next();
                if (copies[row] == 0) {
                    continue;
                }
                points.read();
                for (int k = 0; k < proposals.solved.length; k++) {
                    points.inputs[proposals.solved[k]] = proposals.values[block][k][row];
                }
                step.take(block, from, points.inputs, copies[row], drawn);
                from += copies[row];
            }
        });
    }

    /** What is done at each proposal that is taken. */
    private interface Step {
        /** Called once for a proposal that is taken {@code copies} times, as draws {@code from} and on. */
        void take(int block, int from, double[] inputs, int copies, Model drawn);
    }

    /** {@return the median of each input, from a part of the draws where there are many} */
    public double[] medians() {
        Posterior part = thinned(Math.min(CorrelationRatio.MOST_DRAWS, samples));
        double[][] x = new double[priors.size()][part.samples];
        part.walk(() -> inputs -> 0, (block, from, inputs, copies, drawn) -> {
            for (int i = 0; i < inputs.length; i++) {
                Arrays.fill(x[i], from, from + copies, inputs[i]);
            }
        });
        double[] medians = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            medians[i] = Statistics.quantile(Statistics.sorted(x[i]), 0.5);
        }
        return medians;
    }
}
