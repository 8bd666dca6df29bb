package org.fizzhull.decide.compare;

import java.util.OptionalDouble;

/**
 * The rank of a row among the others, counted draw by draw ({@link Ranking}). Chances 0 to 1.
 *
 * @param betterThanNext chance that it beats the next row in what the table is sorted by; empty for the last. For
 *     floating, the row beats the other in whose draw it could be heavier by the larger share and still float to the
 *     end
 * @param chanceOfBest chance that no other row floats a larger share of its pieces; equals count in parts
 * @param regret share of the pieces, 0 to 1, that it floats less on average than the row that is best in each state of
 *     the world: what a wrong choice costs. Of the row with the best chance it is what perfect knowledge would be worth
 */
public record RowRank(OptionalDouble betterThanNext, double chanceOfBest, double regret) {}
