/**
 * Why did a batch go wrong? Start at {@link org.fizzhull.decide.why.Diagnoser}.
 *
 * <p>The draws that show what was seen are set against those that do not; causes come with their chance, {@code something else}
 * included, and with the one check that tells the likeliest two apart.
 */
@NullMarked
package org.fizzhull.decide.why;

import org.jspecify.annotations.NullMarked;
