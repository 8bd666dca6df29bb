/**
 * Several questions answered in the same states of the world: pieces of one mix in several moulds and baths.
 *
 * <p>Entry: {@link org.fizzhull.forecast.joint.JointPredictor}. Draw i of every question is the same draw of every
 * input they share (common random numbers), and each stage is walked once for all baths. Left out: which of them to
 * take ({@code decide}).
 */
@NullMarked
package org.fizzhull.forecast.joint;

import org.jspecify.annotations.NullMarked;
