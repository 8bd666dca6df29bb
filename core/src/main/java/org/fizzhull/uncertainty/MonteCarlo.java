package org.fizzhull.uncertainty;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Propagates priors through a model by eight independently scrambled blocks of Sobol points. Half of the draws are the
 * rows A, half the rows B of the pick-and-freeze scheme, so the Sobol indices cost only the mixed rows. A draw depends on
 * (seed, block, row) only.
 */
public final class MonteCarlo {
    /** Blocks of points; their scatter gives the standard errors. */
    public static final int BLOCKS = 8;

    /** Draws are a multiple of this. */
    public static final int STEP = 2 * BLOCKS;

    private final List<Prior> priors;
    private final int samples;
    private final long seed;
    private final Workers workers;

    /**
     * @param priors one for each input
     * @param samples number of draws, a positive multiple of {@link #STEP}
     * @param seed any number
     * @param workers who runs the blocks
     */
    public MonteCarlo(List<Prior> priors, int samples, long seed, Workers workers) {
        if (samples <= 0 || samples % STEP != 0) {
            throw new IllegalArgumentException("draws come in multiples of " + STEP + ", not " + samples);
        }
        this.priors = List.copyOf(priors);
        this.samples = samples;
        this.seed = seed;
        this.workers = workers;
    }

    /** The output of every draw, block after block, each block its rows A then its rows B. */
    public double[] draws(Supplier<Model> model) {
        double[] y = new double[samples];
        workers.run(BLOCKS, block -> new Block(block, model.get(), y, null).run());
        return y;
    }

    /** The draws and, from the same points, the Sobol indices of the output. */
    public Sensitivity sensitivity(Supplier<Model> model) {
        double[] y = new double[samples];
        double[][] sums = new double[BLOCKS][3 * priors.size()];
        workers.run(BLOCKS, block -> new Block(block, model.get(), y, sums[block]).run());
        return Sensitivity.of(y, sums);
    }

    /** One block: its own points, its own part of the outputs and sums. */
    private final class Block {
        private final int rows = samples / STEP;
        private final int width = priors.size();
        private final int number;
        private final Model model;
        private final double[] y;
        private final double @Nullable [] sums;

        Block(int number, Model model, double[] y, double @Nullable [] sums) {
            this.number = number;
            this.model = model;
            this.y = y;
            this.sums = sums;
        }

        void run() {
            SobolBlock points = new SobolBlock(2 * width, seed, number);
            double[] u = new double[2 * width];
            double[] a = new double[width];
            double[] b = new double[width];
            for (int row = 0; row < rows; row++) {
                points.next(u);
                for (int i = 0; i < width; i++) {
                    a[i] = priors.get(i).quantile(u[i]);
                    b[i] = priors.get(i).quantile(u[width + i]);
                }
                double fa = model.at(a);
                double fb = model.at(b);
                int at = number * 2 * rows + row;
                y[at] = fa;
                y[at + rows] = fb;
                if (sums != null) {
                    mix(sums, a, b, fa, fb);
                }
            }
        }

        private void mix(double[] into, double[] a, double[] b, double fa, double fb) {
            for (int i = 0; i < width; i++) {
                double kept = a[i];
                a[i] = b[i];
                double change = model.at(a) - fa;
                a[i] = kept;
                into[3 * i] += fb * change;
                into[3 * i + 1] += change;
                into[3 * i + 2] += change * change;
            }
        }
    }
}
