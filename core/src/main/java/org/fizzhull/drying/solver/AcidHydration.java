package org.fizzhull.drying.solver;

import org.fizzhull.drying.mix.Hydrates;

/**
 * Anhydrous citric acid on its way to the monohydrate and back (docs/physics/drying.md, 2):
 *
 * <pre>  db/dt = k (b_most s(a_w) - b)</pre>
 *
 * <p>b water bound (kg per kg of dry mix), b_most what all of the acid binds, k a rate (1/s), a_w water activity, s the
 * part that is the monohydrate in equilibrium: 0 below the humidity where both forms stand side by side, 1 above it,
 * over a ramp as wide as rooms of 20 to 25 C shift it. While a film stands anywhere in the piece, k is 0
 * ({@link DryingStage}): acid in films reacts, and to let it drink them, or the vapour on its way out, would call pieces dry
 * sooner in damp air, against common practice (assumed). No published rate was found: k is
 * assumed, with a wide prior; one rate for both directions. Immutable.
 */
public final class AcidHydration {
    /** Width of the ramp in activity. */
    private static final double WIDTH = 0.04;

    private final double most;
    private final double rate;

    /** Contents of a cell between which the ramp runs, kg/m3. */
    private final double low;

    private final double high;

    /**
     * @param most water that all of the acid binds, kg per kg of dry mix
     * @param rate k, 1/s
     * @param isotherm of the same mix; where its films are drier than the acid's own transition nothing is bound
     */
    public AcidHydration(double most, double rate, WaterActivity isotherm) {
        low = isotherm.contentAt(Hydrates.TAKING_HUMIDITY - WIDTH / 2);
        high = isotherm.contentAt(Hydrates.TAKING_HUMIDITY + WIDTH / 2);
        this.most = high > low ? most : 0;
        this.rate = rate;
    }

    /** {@return whether the acid of this mix binds nothing, so that there is nothing to compute} */
    public boolean idle() {
        return most == 0 || rate == 0;
    }

    /**
     * {@return the water bound in equilibrium with a content of mobile water, kg per kg of dry mix}
     *
     * @param content mobile water of a cell, kg/m3
     */
    public double settled(double content) {
        return most == 0 ? 0 : most * Math.max(0, Math.min(1, (content - low) / (high - low)));
    }

    /** The water bound after an implicit step of h seconds from b. */
    double implicit(double b, double h, double content) {
        return (b + h * rate * settled(content)) / (1 + h * rate);
    }

    /** How that changes with a content on the ramp, m3/kg; beside the ramp it does not. */
    double slope(double h) {
        return h * rate / (1 + h * rate) * most / (high - low);
    }

    /** Whether a content lies on the ramp. */
    boolean ramps(double content) {
        return content > low && content < high;
    }

    /** Whether two contents lie on the same side of both ends of the ramp. */
    boolean sameSide(double content, double other) {
        return content > low == other > low && content < high == other < high;
    }

    /** The content to stop at on the way to another: a step over an end of the ramp ends just beyond it. */
    double toKink(double from, double to) {
        if (from <= low && to > low) {
            return Math.min(to, low + 1e-3 * (high - low));
        }
        if (from >= high && to < high) {
            return Math.max(to, high - 1e-3 * (high - low));
        }
        return to;
    }
}
