package org.fizzhull.drying.solver;

import org.fizzhull.pressing.powder.EarlyRates;

/**
 * The slow reaction of acid and bicarbonate in the water films before the bath (docs/physics/drying.md, 7):
 * {@code dxi/dt = k w_free (1 - xi/xi_max)^p}, mol of CO2 per kg of dry mix and second, each mol with
 * {@link EarlyRates#waterPerMole} of water. No published rate for such pieces was found: k is assumed, with the widest
 * prior.
 *
 * <p>xi carbon dioxide made (mol/kg dry), k rate constant at the temperature with its factors (mol/(kg s)), w_free free
 * water (kg/kg dry), xi_max carbon dioxide obtainable (mol/kg dry), p order. Immutable.
 */
public final class FilmReaction {
    /** xi_max, CO2 obtainable, mol/kg dry. */
    private final double most;
    /** p, no unit. */
    private final double order;
    /** Free water made per mol of CO2, kg/mol. */
    private final double waterPerMole;

    /**
     * @param most xi_max, CO2 obtainable, mol/kg dry
     * @param order p, 0.5 to 3
     * @param hydrateWaters h, water molecules bound per citrate, 0 to 2
     */
    public FilmReaction(double most, double order, double hydrateWaters) {
        this.most = most;
        this.order = order;
        waterPerMole = EarlyRates.waterPerMole(hydrateWaters);
    }

    /** {@return the free water made per mol of CO2, kg/mol} */
    public double waterPerMole() {
        return waterPerMole;
    }

    /** Whether more has gone off than there was, by more than rounding: a step that was too long. */
    boolean exceeds(double xi) {
        return xi > most * (1 + 1e-9);
    }

    /** Whether the curvature of the law may be left out over a step of xi, mol/kg: 1e-8 of all the fizz. */
    boolean nearlyLinear(double step) {
        return step * step * order <= 1e-8 * most * most;
    }

    /**
     * {@return the extent xi after the implicit step xi = start + reach (1 - xi/xi_max)^p, with reach = time k w_free,
     * mol/kg}
     *
     * @param start extent before the step, mol/kg
     * @param reach time k w_free, mol/kg
     */
    public double implicit(double start, double reach) {
        if (!(start < most)) {
            return start;
        }
        if (order == 1) {
            return (start + reach) / (1 + reach / most);
        }
        // left = 1 - xi/xi_max falls from its start; the residual is convex and rising: Newton from above is monotone
        double begin = 1 - start / most;
        double left = begin;
        for (int i = 0; i < 50; i++) {
            double power = Math.pow(left, order);
            double residual = left + reach / most * power - begin;
            double step = residual / (1 + reach / most * order * power / left);
            double next = left - step;
            left = next > 0 ? next : left / 4;
            if (Math.abs(step) <= 1e-14 * begin) {
                break;
            }
        }
        return most * (1 - left);
    }

    /**
     * {@return the derivative of xi by reach of the implicit step that ended at xi}
     *
     * @param xi extent at the end of the step, mol/kg
     * @param reach time k w_free, mol/kg
     */
    public double slope(double xi, double reach) {
        double left = 1 - xi / most;
        if (!(left > 0)) {
            return 0;
        }
        double power = order == 1 ? left : Math.pow(left, order);
        return power / (1 + reach / most * order * power / left);
    }
}
