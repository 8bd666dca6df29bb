/**
 * How well is a number known, where is it from, and where does it stop to hold?
 *
 * <p>Entry classes: {@link org.fizzhull.evidence.Source} for priors and table values,
 * {@link org.fizzhull.evidence.published.ValidityRange} for published relations, {@link org.fizzhull.evidence.Interval} and
 * {@link org.fizzhull.evidence.Notice} for results. Values are SI; a unit for people stands beside them. Reference: the
 * marks of docs/physics (seen, second-hand, from memory, computed, assumed, common practice).
 *
 * <p>Left out: distributions (package uncertainty) and which input has which prior (package forecast).
 */
@NullMarked
package org.fizzhull.evidence;

import org.jspecify.annotations.NullMarked;
