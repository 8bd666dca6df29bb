package org.fizzhull.uncertainty.sampling;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/**
 * Propagates priors through a model by eight independently scrambled blocks of Sobol points ({@link SobolBlock}). Each
 * block has 2w dimensions, w the number of priors: the even ones of a point make a row of A, the odd ones a row of B, so
 * that further priors at the end of the list leave the draws of those before them as they are. All rows are draws of the
 * output; the rows A with single inputs taken from B give the Sobol indices (pick-and-freeze), so that
 * these cost only the mixed rows.
 * <pre>{@code
 * List<Prior> priors = List.of(Priors.normal(142e-3, 1e-3), Priors.lognormal(0.0650, 1.01));
 * MonteCarlo run = new MonteCarlo(priors, 4096, 1, Workers.CALLER);
 * double[] y = run.draws(() -> inputs -> inputs[0] / (Math.PI / 6 * Math.pow(inputs[1], 3)));   // density, kg/m3
 * double[] sorted = Statistics.sorted(y);
 * double low = Statistics.quantile(sorted, 0.025);
 * }</pre>
 *
 * <p>A draw of an input depends on (seed, block, row) and its place in the list only. Of inputs that are drawn together ({@link WholeDraws}) the first
 * carries the index of all. Error of a mean: about 1/N for smooth outputs, 1/sqrt N at worst; the standard error is
 * taken from the scatter of the blocks. Source: docs/physics/uncertainty.md, 1 and 3. Immutable; draws are the same
 * whatever the workers. After measurements: {@link Posterior}.
 */
public final class MonteCarlo implements Draws {
    /** Blocks of points; their scatter gives the standard errors. */
    public static final int BLOCKS = 8;

    /** Indices come from one row in so many as a rule. */
    public static final int QUARTER = 4;

    /** Draws are a multiple of this. */
    public static final int STEP = 2 * BLOCKS;

    /** One prior for each column. */
    private final List<Prior> priors;
    /** Number of columns of each input, in order. */
    private final int[] groups;
    /** Number of draws, rows A and B of all blocks. */
    private final int samples;
    /** Seed of the scrambling. */
    private final long seed;
    /** What runs the blocks. */
    private final Workers workers;

    /**
     * With one column for each input.
     *
     * @param priors one for each input
     * @param samples number of draws, a positive multiple of {@link #STEP}
     * @param seed any number; the same seed gives the same draws
     * @param workers what runs the blocks; the result does not depend on it
     * @throws IllegalArgumentException for another number of draws
     */
    public MonteCarlo(List<Prior> priors, int samples, long seed, Workers workers) {
        this(priors, filled(priors.size(), 1), samples, seed, workers);
    }

    /**
     * With inputs that stand for several columns: an index is then that of the group, all its columns taken together.
     *
     * @param priors one for each column
     * @param groups number of columns of each input, in order; their sum is the number of priors
     * @param samples number of draws, a positive multiple of 16 (two halves in each of eight blocks)
     * @param seed any number; the same seed gives the same draws
     * @param workers what runs the blocks; the result does not depend on it
     * @throws IllegalArgumentException for another number of draws, and groups that do not add up to the priors
     */
    public MonteCarlo(List<Prior> priors, int[] groups, int samples, long seed, Workers workers) {
        Given.all("workers", workers);
        if (samples <= 0 || samples % STEP != 0) {
            throw new IllegalArgumentException("draws come in multiples of " + STEP + ", not " + samples);
        }
        int columns = Arrays.stream(groups).sum();
        if (columns != priors.size()) {
            throw new IllegalArgumentException(columns + " grouped columns for " + priors.size() + " priors");
        }
        this.priors = List.copyOf(priors);
        this.groups = groups.clone();
        this.samples = samples;
        this.seed = seed;
        this.workers = workers;
    }

    private static int[] filled(int length, int value) {
        int[] filled = new int[length];
        Arrays.fill(filled, value);
        return filled;
    }

    /**
     * The output of every draw, block after block, each block its rows A then its rows B. A model that throws ends the
     * run.
     */
    @Override
    public double[] draws(Supplier<Model> model) {
        double[] y = new double[samples];
        run(model, y, null, new int[0]);
        return y;
    }

    /**
     * {@return the draws and the Sobol indices from a quarter of their rows}
     *
     * @param model makes one model for each thread
     */
    public Sensitivity sensitivity(Supplier<Model> model) {
        return sensitivity(model, filled(groups.length, QUARTER));
    }

    /**
     * {@return the draws and, from the same points, the Sobol indices of the output} The indices come from the first
     * rows of each block, which are a net where their number is a power of two. Cost: for each input the model runs once
     * more in each of its rows. Error of an index at 4,096 draws: about 0.02 from a quarter of the rows, 0.03 from an
     * eighth, 0.05 from a sixteenth.
     *
     * @param model makes one model for each thread
     * @param parts of each input: its rows are one of so many of a block, at least 1
     */
    public Sensitivity sensitivity(Supplier<Model> model, int[] parts) {
        double[] y = new double[samples];
        double[][] sums = new double[BLOCKS][3 * groups.length];
        int[] mixed = new int[groups.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = Math.max(1, samples / STEP / parts[i]);
        }
        run(model, y, sums, mixed);
        return Sensitivity.of(y, sums, mixed);
    }

    /** Runs every block; with sums, so many first rows of each are mixed too, input by input. */
    private void run(Supplier<Model> model, double[] y, double @Nullable [][] sums, int[] mixed) {
        Workers.all(
                workers,
                BLOCKS,
                block -> new Block(block, model.get(), y, sums == null ? null : sums[block], mixed).run());
    }

    /** One block: its own points, its own part of the outputs and sums. */
    private final class Block {
        /** Rows A of the block, and as many rows B. */
        private final int rows = samples / STEP;
        /** Number of columns. */
        private final int width = priors.size();
        /** Number of the block, from 0. */
        private final int number;

        private final Model model;
        /** Outputs of all blocks. */
        private final double[] y;
        /** Three sums for each input, as {@link Sensitivity#of} reads them; null where no indices are asked for. */
        private final double @Nullable [] sums;
        /** Number of rows from which the indices of each input come. */
        private final int[] mixed;

        Block(int number, Model model, double[] y, double @Nullable [] sums, int[] mixed) {
            this.number = number;
            this.model = model;
            this.y = y;
            this.sums = sums;
            this.mixed = mixed;
        }

        void run() {
            SobolBlock points = new SobolBlock(2 * width, seed, number);
            double[] u = new double[2 * width];
            double[] a = new double[width];
            double[] b = new double[width];
            double[] ua = new double[width];
            double[] ub = new double[width];
            for (int row = 0; row < rows; row++) {
                Workers.begin(workers, 2);
                points.next(u);
                for (int i = 0; i < width; i++) {
                    ua[i] = u[2 * i];
                    ub[i] = u[2 * i + 1];
                }
                values(ua, a);
                values(ub, b);
                int at = number * 2 * rows + row;
                double fa = model.at(a);
                model.keep(at);
                double fb = model.at(b);
                model.keep(at + rows);
                y[at] = fa;
                y[at + rows] = fb;
                if (sums != null) {
                    mix(row, sums, a, b, fa, fb, ua, ub);
                }
            }
        }

        /** The values of a row from its part of a point; a call a row, since what is called often is compiled soon. */
        private void values(double[] u, double[] into) {
            for (int i = 0; i < width; i++) {
                into[i] = finite(priors.get(i), u, i);
            }
        }

        /** The quantile of a prior at its column of a point; an infinite or undefined one is a mistake of the prior. */
        private static double finite(Prior prior, double[] u, int column) {
            double value = prior.quantile(u, column);
            if (Math.abs(value) < Double.POSITIVE_INFINITY) {
                return value;
            }
            throw new IllegalArgumentException("the prior " + prior + " gives " + value + " at " + u[column]);
        }

        /**
         * Adds a row to the sums of the inputs that take it: A with the columns of that input taken from B. Columns are
         * swapped and swapped back; of dependent inputs those of the point they are made from.
         */
        private void mix(
                int row, double[] into, double[] a, double[] b, double fa, double fb, double[] ua, double[] ub) {
            int from = 0;
            for (int i = 0; i < groups.length; i++) {
                if (row >= mixed[i]) {
                    from += groups[i];
                    continue;
                }
                boolean dependent = priors.get(from).isDependent();
                swap(a, b, from, groups[i]);
                if (dependent) {
                    swap(ua, ub, from, groups[i]);
                    dependents(ua, a);
                }
                double change = model.at(a) - fa;
                swap(a, b, from, groups[i]);
                if (dependent) {
                    swap(ua, ub, from, groups[i]);
                    dependents(ua, a);
                }
                from += groups[i];
                into[3 * i] += fb * change;
                into[3 * i + 1] += change;
                into[3 * i + 2] += change * change;
            }
        }

        /** Values of the dependent inputs of a row, from its point. */
        private void dependents(double[] u, double[] into) {
            for (int i = 0; i < width; i++) {
                if (priors.get(i).isDependent()) {
                    into[i] = finite(priors.get(i), u, i);
                }
            }
        }

        /** Exchanges some columns of two rows. */
        private static void swap(double[] a, double[] b, int from, int count) {
            for (int i = from; i < from + count; i++) {
                double kept = a[i];
                a[i] = b[i];
                b[i] = kept;
            }
        }
    }
}
