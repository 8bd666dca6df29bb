/**
 * {@code dry}: when is it dry here, what does it lose, and what can be done from which day? Start at
 * {@link org.fizzhull.cli.drying.DryCommand}.
 */
@NullMarked
package org.fizzhull.cli.drying;

import org.jspecify.annotations.NullMarked;
