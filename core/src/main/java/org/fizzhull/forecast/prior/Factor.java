package org.fizzhull.forecast.prior;

import java.io.Serializable;
import java.util.Objects;
import org.fizzhull.evidence.Source;
import org.fizzhull.uncertainty.Prior;

/**
 * One row of the table of uncertain inputs ({@link org.fizzhull.forecast.question.Factors}): an input, what is believed
 * of it, and why. Immutable.
 *
 * @param input the uncertain input
 * @param prior what is believed of it, SI: kg, m, s, K, Pa, whatever unit people read ({@link Input#unit})
 * @param source where that belief is from
 * @param columns how many independent numbers of this prior the input stands for; mostly 1
 */
public record Factor(Input input, Prior prior, Source source, int columns) implements Serializable {
    /**
     * Refuses a row without columns, and a prior outside what its input can be, NaN included.
     *
     * @param input which
     * @param prior what is believed of it, SI: kg, m, s, K, Pa, whatever unit people read ({@link Input#unit})
     * @param source why
     * @param columns how many independent numbers of this prior the input stands for; mostly 1
     * @throws IllegalArgumentException for less than one column
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} where a value at the millionth point is outside
     *     {@link InputRange}
     */
    public Factor {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(prior, "prior");
        Objects.requireNonNull(source, "source");
        if (columns < 1) {
            throw new IllegalArgumentException("an input needs a column");
        }
        for (double u : InputRange.LOOKED_AT) {
            InputRange.checked(input, prior.quantile(u));
        }
        InputRange.checked(input, prior.median());
    }

    /**
     * {@return the same row with so many columns}
     *
     * @param count number of columns, at least 1
     */
    public Factor columns(int count) {
        return count == columns ? this : new Factor(input, prior, source, count);
    }

    /**
     * A row of one number.
     *
     * @param input which
     * @param prior what is believed of it, SI: kg, m, s, K, Pa, whatever unit people read ({@link Input#unit})
     * @param source why
     */
    public Factor(Input input, Prior prior, Source source) {
        this(input, prior, source, 1);
    }

    /**
     * {@return a value of this input, where the input can have it}
     *
     * @param value a value, SI
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for one outside its physical range
     */
    public double checked(double value) {
        return InputRange.checked(input, value);
    }
}
