/**
 * Least squares and the normal approximation around their solution.
 *
 * <p>Entry: {@link org.fizzhull.learn.fit.LeastSquaresFit}.
 */
@NullMarked
package org.fizzhull.learn.fit;

import org.jspecify.annotations.NullMarked;
