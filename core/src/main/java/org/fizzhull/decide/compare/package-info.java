/**
 * Which of several moulds, recipes and baths? Start at {@link org.fizzhull.decide.compare.Comparison#of}.
 *
 * <p>Candidates are answered in the same states of the world ({@link org.fizzhull.decide.compare.Comparer}), so that the
 * chance that one beats another, and what the wrong choice costs, are counted draw by draw.
 */
@NullMarked
package org.fizzhull.decide.compare;

import org.jspecify.annotations.NullMarked;
