package org.fizzhull.quantity;

import org.jspecify.annotations.Nullable;

/**
 * An amount, and, for a single number with a single unit, how it was written: what a slip is guessed from.
 *
 * @param amount what was read
 * @param unit its unit, or null for a spread, a range or a compound
 * @param number the number of that unit, without meaning when there is none
 */
record Reading(Amount amount, @Nullable Unit unit, double number) {}
