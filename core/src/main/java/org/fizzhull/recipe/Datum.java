package org.fizzhull.recipe;

import java.io.Serializable;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Given;

/**
 * One number known of an ingredient: value, spread and source. The unit is the SI unit of the {@link Property} it belongs
 * to; the spread becomes the prior of that number in a forecast.
 *
 * @param value the value, SI
 * @param sigma one standard deviation, same unit; 0 where the value is a definition
 * @param source where value and spread are from
 */
public record Datum(double value, double sigma, Source source) implements Serializable {
    /**
     * Checks value and spread.
     *
     * @param value the value, SI, finite
     * @param sigma one standard deviation, same unit, finite, 0 or more
     * @param source where value and spread are from
     * @throws IllegalArgumentException for NaN, infinity or a negative spread
     */
    public Datum {
        Given.all("source", source);
        if (!(Double.isFinite(value) && sigma >= 0 && Double.isFinite(sigma))) {
            throw new IllegalArgumentException(
                    "a datum needs a number and a spread of 0 or more: " + value + ", " + sigma);
        }
    }

    /** {@return the standard deviation as a share of the value; 0 where the value is 0} */
    public double relativeSigma() {
        return value == 0 ? 0 : sigma / Math.abs(value);
    }
}
