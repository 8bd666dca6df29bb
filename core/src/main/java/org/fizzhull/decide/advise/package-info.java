/**
 * What is the smallest change that reaches the goal? Start at {@link org.fizzhull.decide.advise.Adviser}.
 *
 * <p>Steps are those that a kitchen can take; every proposal is forecast anew with all draws, never read off a fit.
 */
@NullMarked
package org.fizzhull.decide.advise;

import org.jspecify.annotations.NullMarked;
