package org.fizzhull.forecast;

import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Workers;

/**
 * Settings of every predictor besides the question: the table of uncertain inputs, how often and from which seed it
 * draws, and what computes the draws. Each has its own question and answer.
 *
 * <p>Immutable, safe to share between threads; every {@code with} gives another predictor. The answer depends on table,
 * number of draws and seed, never on the workers.
 *
 * @param <P> the kind of predictor
 */
public abstract class Predictor<P> {
    /** Priors of the uncertain inputs, without the rows that a question brings. */
    protected final Factors factors;
    /** Number of draws and seed; 0 draws for central values alone. */
    protected final Sampling sampling;
    /** What runs the blocks of draws; no answer depends on it. */
    protected final Workers workers;

    /**
     * Keeps how it draws.
     *
     * @param factors table of uncertain inputs
     * @param sampling number of draws and seed
     * @param workers what computes the blocks of draws
     */
    protected Predictor(Factors factors, Sampling sampling, Workers workers) {
        Given.all("factors, sampling, workers", factors, sampling, workers);
        this.factors = factors;
        this.sampling = sampling;
        this.workers = workers;
    }

    /**
     * {@return this predictor drawing otherwise; what else it knows stays}
     *
     * @param others table of uncertain inputs
     * @param other number of draws and seed
     * @param by what computes the blocks of draws
     */
    protected abstract P drawing(Factors others, Sampling other, Workers by);

    /**
     * {@return this predictor with other priors}
     *
     * @param others table of priors in place of the present one; a row of it also takes the place of the row that a
     *     question brings for the same input ({@link Factors#asked})
     */
    public P with(Factors others) {
        return drawing(others, sampling, workers);
    }

    /**
     * {@return this predictor with other draws}
     *
     * @param other number of draws and seed; no draws for central values alone, where the answer has such
     */
    public P with(Sampling other) {
        return drawing(factors, other, workers);
    }

    /**
     * {@return this predictor with other workers; the answer stays the same to the byte}
     *
     * @param others what runs the blocks of draws, such as {@code Workers.on(executor)}; it may also watch and stop a
     *     run
     */
    public P with(Workers others) {
        return drawing(factors, sampling, others);
    }
}
