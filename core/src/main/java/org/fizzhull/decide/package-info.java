/**
 * Decisions on top of the forecast: which of several moulds, recipes and baths to take.
 *
 * <p>Enter at {@link org.fizzhull.decide.Comparison#of}. Every candidate is answered in the same states of the world
 * ({@link org.fizzhull.forecast.joint.JointPredictor}), so that the chance that one beats another, and what the wrong
 * choice costs, are counted draw by draw. Values are SI; pieces are shares of 1. Left out: words and pictures (the
 * command line has them), and what no forecast computes: looks, feel, sales.
 */
@NullMarked
package org.fizzhull.decide;

import org.jspecify.annotations.NullMarked;
