package org.fizzhull.forecast;

import org.fizzhull.evidence.Source;
import org.fizzhull.uncertainty.Prior;

/**
 * One row of the table of uncertain inputs.
 *
 * @param input which
 * @param prior what is believed of it, in the unit of the input
 * @param source why
 * @param columns how many independent numbers of this prior the input stands for; mostly 1
 */
public record Factor(Input input, Prior prior, Source source, int columns) {
    /** Refuses a row without columns. */
    public Factor {
        if (columns < 1) {
            throw new IllegalArgumentException("an input needs a column");
        }
    }

    /** A row of one number. */
    public Factor(Input input, Prior prior, Source source) {
        this(input, prior, source, 1);
    }
}
