package org.fizzhull.forecast;

import org.fizzhull.evidence.Source;
import org.fizzhull.uncertainty.Prior;

/**
 * One row of the table of uncertain inputs.
 *
 * @param input which
 * @param prior what is believed of it, in the unit of the input
 * @param source why
 */
public record Factor(Input input, Prior prior, Source source) {}
