package org.fizzhull.forecast;

import java.io.Serializable;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.uncertainty.sampling.Sensitivity;

/**
 * How much one uncertain input decides of the spare at the drop: its Sobol indices (docs/physics/uncertainty.md, 3).
 * The margin is taken, not the outcome, since indices of 0 and 1 rank noise near the ends. After a measurement the
 * inputs depend on one another, a total index does not exist and the first order is a correlation ratio.
 *
 * @param input the uncertain input
 * @param firstOrder share of the variance of the spare that goes when it is known, 0 to 1
 * @param total share of the variance that stays when only it is unknown, 0 to 1; NaN after a measurement
 * @param error standard error of the total, after a measurement of the first order
 */
public record Driver(Input input, double firstOrder, double total, double error) implements Serializable {
    /** One of the indices of a run; an estimate that is negative or inside its own error is 0. */
    static Driver of(Input input, Sensitivity found, int i) {
        return new Driver(
                input,
                told(found.firstOrder()[i], found.firstError()[i]),
                told(found.total()[i], found.error()[i]),
                found.error()[i]);
    }

    /** The index, or 0 where it is negative or within its own standard error: chance alone makes such values. */
    private static double told(double index, double error) {
        return index < Math.max(0, error) ? 0 : index;
    }

    /** {@return the total, or the first order where there is no total: what drivers are ordered by} */
    public double share() {
        return Double.isNaN(total) ? firstOrder : total;
    }
}
