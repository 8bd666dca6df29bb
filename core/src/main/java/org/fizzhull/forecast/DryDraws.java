package org.fizzhull.forecast;

import org.fizzhull.evidence.Interval;

/**
 * What the draws of a drying forecast say. Masses of the whole piece, with any inset, kg.
 *
 * @param damp mass as pressed
 * @param last mass at the end of the plan, as it goes into the bath
 * @param label mass once all that can still leave in the drying room has left
 * @param ready when 95 % of the removable water is gone
 * @param fizzLost share of the fizz lost at the end of the plan
 * @param waterGone water that has left by the end of the drying, kg; below 0 where it came in
 * @param swollenFilms share of the draws whose film wrap swells with gas
 * @param band mass and fizz left over time
 */
public record DryDraws(
        Interval damp,
        Interval last,
        Interval label,
        ReadyTimes ready,
        Interval fizzLost,
        Interval waterGone,
        double swollenFilms,
        DryBand band) {}
