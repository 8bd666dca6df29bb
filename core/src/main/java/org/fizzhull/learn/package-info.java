/**
 * Inference of poorly known inputs, shared by every later forecast, from a maker's own trials.
 *
 * <p>Entry: {@link org.fizzhull.learn.Learner#learn}: rows of a trials sheet in, a {@link org.fizzhull.learn.Bench} out, whose
 * {@link org.fizzhull.learn.Bench#factors} every predictor takes in place of the standard ones. Units are SI; scores are
 * standard normal quantiles of the default prior. Left out: files and words (the command line has them), the powders' own
 * densities, drying.
 */
@NullMarked
package org.fizzhull.learn;

import org.jspecify.annotations.NullMarked;
