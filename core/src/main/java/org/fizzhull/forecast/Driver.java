package org.fizzhull.forecast;

/**
 * How much one uncertain input decides of the spare at the drop: its Sobol indices.
 *
 * @param input which
 * @param firstOrder share of the variance that goes when it is known
 * @param total share of the variance that stays when only it is unknown
 * @param error standard error of the total
 */
public record Driver(Input input, double firstOrder, double total, double error) {}
