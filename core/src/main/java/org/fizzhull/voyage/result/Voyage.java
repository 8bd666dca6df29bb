package org.fizzhull.voyage.result;

import java.io.Serializable;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.SerialForm;

/**
 * What became of a piece, from the drop to its end: the result of a {@link FullVoyage}. Times in s since it was let go.
 *
 * @param outcome in one word
 * @param sinksLater whether a piece that floated at once went under before its end
 * @param floatsToTheEnd whether a piece that floated at once stayed up until a tenth of its dissolving body was left;
 *     toppings and insets do not count as dissolving
 * @param riseTime when it came up, s; empty unless it rises later
 * @param fizzTime when 1 % of the body was left, s
 * @param temperature of the bath, K
 * @param peakGasRate largest rate of gas seen at the surface, mol/s
 * @param events what happened, in order
 * @param series the course: depth, mass and gas at rising times
 * @param notices what the reader must know
 */
public record Voyage(
        Outcome outcome,
        boolean sinksLater,
        boolean floatsToTheEnd,
        OptionalDouble riseTime,
        double fizzTime,
        double temperature,
        double peakGasRate,
        List<VoyageEvent> events,
        VoyageSeries series,
        List<Notice> notices)
        implements Serializable {

    /**
     * Copies the lists.
     *
     * @param outcome in one word
     * @param sinksLater whether a piece that floated at once went under before its end
     * @param floatsToTheEnd whether a piece that floated at once stayed up until a tenth of its dissolving body was
     *     left; toppings and insets do not count as dissolving
     * @param riseTime when it came up, s; empty unless it rises later
     * @param fizzTime when 1 % of the body was left, s
     * @param temperature of the bath, K
     * @param peakGasRate largest rate of gas seen at the surface, mol/s
     * @param events in their order
     * @param series the course
     * @param notices what the reader must know
     */
    public Voyage {
        events = List.copyOf(events);
        notices = List.copyOf(notices);
    }

    /**
     * {@return the volume of moles of carbon dioxide as a dry ideal gas at the bath's temperature and 1 atm, m3}
     *
     * @param moles amount of carbon dioxide, mol
     */
    public double dryVolume(double moles) {
        return moles * PhysicalConstants.GAS_CONSTANT * temperature / PhysicalConstants.ATMOSPHERE;
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
