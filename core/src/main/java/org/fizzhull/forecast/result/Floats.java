package org.fizzhull.forecast.result;

import java.io.Serializable;

/**
 * Whether a piece floats by the central values of everything uncertain: no chance, which needs draws. Near the border
 * ({@link #spareAtDrop} within some ten grams of 0) the central values say little; ask for the chance there.
 *
 * @param mass of the piece as it goes into the bath, kg
 * @param atOnce whether it is at the surface 20 s after it was let go
 * @param toTheEnd whether it then stays up until a tenth of its dissolving body is left; toppings and crystals do not
 *     count as dissolving
 * @param spareAtDrop what the piece could carry at the drop before it sinks, clinging gas and wetting included, kg;
 *     negative for one that goes down
 */
public record Floats(double mass, boolean atOnce, boolean toTheEnd, double spareAtDrop) implements Serializable {}
