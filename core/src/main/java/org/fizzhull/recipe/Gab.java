package org.fizzhull.recipe;

import java.io.Serializable;

/**
 * Water held by a powder in equilibrium with air: isotherm of Guggenheim, Anderson and de Boer,
 * X = Xm C K a / ((1 - Ka)(1 - Ka + CKa)), at activities from 0 to about 0.9, below deliquescence of the mix. Form and
 * constants: docs/physics/drying.md, 2. A humectant as an ideal solution is the case C = K = 1, Xm =
 * M(water)/M(humectant).
 *
 * @param monolayer Xm, kg water per kg free of water
 * @param c C, without unit
 * @param k K, at most 1
 */
public record Gab(double monolayer, double c, double k) implements Serializable {
    /**
     * Refuses constants outside the form's meaning.
     *
     * @param monolayer Xm, kg water per kg free of water
     * @param c C, without unit
     * @param k K, at most 1
     */
    public Gab {
        if (!(monolayer >= 0 && c > 0 && k > 0 && k <= 1)) {
            throw new IllegalArgumentException("GAB constants " + monolayer + ", " + c + ", " + k);
        }
    }

    /**
     * {@return the water held at an activity from 0 to below 1, kg per kg free of water}
     *
     * @param activity water activity, 0 to below 1
     */
    public double waterAt(double activity) {
        double u = k * activity;
        return monolayer * c * u / ((1 - u) * (1 - u + c * u));
    }
}
