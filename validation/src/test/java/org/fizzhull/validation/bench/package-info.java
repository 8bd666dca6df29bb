/**
 * Benches drawn from the priors, measured with the errors that are believed of a kitchen, and forecast: how far do the
 * measurements narrow, and how often does the truth lie inside?
 *
 * <p>Entry: each class is one kind of measurement and a table of it; the rows are in {@code checks/forecast.csv}.
 */
@NullMarked
package org.fizzhull.validation.bench;

import org.jspecify.annotations.NullMarked;
