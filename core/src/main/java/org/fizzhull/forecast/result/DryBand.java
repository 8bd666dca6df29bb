package org.fizzhull.forecast.result;

import java.util.List;
import org.fizzhull.evidence.Interval;

/**
 * How the draws run over time.
 *
 * <p>The band of a {@link org.fizzhull.forecast.DryForecast}. Immutable.
 *
 * @param times from pressing, s, ascending from 0
 * @param mass of the piece at those times, kg: the spread of what it loses, laid on the median of the mass as pressed
 * @param fizzLeft share of the fizz left
 */
public record DryBand(List<Double> times, List<Interval> mass, List<Interval> fizzLeft) {
    /**
     * Copies the lists.
     *
     * @param times from pressing, s, ascending from 0
     * @param mass of the piece at those times, kg: the spread of what it loses, laid on the median of the mass as
     *     pressed
     * @param fizzLeft share of the fizz left
     */
    public DryBand {
        times = List.copyOf(times);
        mass = List.copyOf(mass);
        fizzLeft = List.copyOf(fizzLeft);
    }
}
