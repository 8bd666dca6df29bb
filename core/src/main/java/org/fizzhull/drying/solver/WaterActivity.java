package org.fizzhull.drying.solver;

import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;

/**
 * Water activity against water content in enthalpy form: {@code a = min(GAB^-1(C / rho_d), a_film)}; above the content
 * at a_film any further water is free film solution at a_film. Piecewise linear between nodes evenly spaced in
 * activity, so that Newton's method ends exactly and the water balance closes to rounding. The slope of C is floored at
 * 0.5 kg/m3 per unit of activity: a mix without sorbents would be singular. A salt between two hydrates is a step at
 * the humidity where both stand side by side.
 *
 * <p>Content C is water per volume of piece (kg/m3), rho_d dry mix per volume (kg/m3). Error of the segments: below
 * that of the isotherms, which are known to 15 % at best. Immutable. Source: docs/physics/drying.md, 2.
 */
public final class WaterActivity {
    /** Least slope of content against activity, kg/m3 (docs/physics/drying.md, 3). */
    public static final double LEAST_SLOPE = 0.5;

    /** Segments between dry and the film activity. */
    private static final int SEGMENTS = 48;

    /** How wide in activity the step of a hydrate is drawn. */
    private static final double WIDTH = 0.01;

    /** Water activity of the film solution: the last node. */
    private final double film;
    /** Distance of the nodes, in activity. */
    private final double step;
    /** Content at each node, kg/m3. */
    private final double[] content = new double[SEGMENTS + 1];
    /** da/dC from each node to the next, m3/kg; 0 on the film, the last. */
    private final double[] slope = new double[SEGMENTS + 1];

    /** Water in the higher hydrate, as a part of all, at each node. */
    private final double[] hydrated = new double[SEGMENTS + 1];

    /**
     * @param sorbents isotherm of the dry mix
     * @param rhoDry mass of dry mix per volume of piece, kg/m3
     * @param film activity of the film solution, a_film
     */
    public WaterActivity(SorptionMixture sorbents, double rhoDry, double film) {
        this(sorbents, rhoDry, film, 0);
    }

    /**
     * @param sorbents powders and humectants that hold water
     * @param rhoDry dry mix per volume, kg/m3
     * @param film water activity of the film solution
     * @param hydrate water that the hydrates take up at {@link Hydrates#GIVING_HUMIDITY}, kg per kg of dry mix
     */
    public WaterActivity(SorptionMixture sorbents, double rhoDry, double film, double hydrate) {
        this.film = film;
        step = film / SEGMENTS;
        double below = 0;
        for (int i = 1; i <= SEGMENTS; i++) {
            // content at the node: isotherms and the bound water of hydrates, never flatter than the least slope
            double a = i * step;
            hydrated[i] = Math.max(0, Math.min(1, 0.5 + (a - Hydrates.GIVING_HUMIDITY) / WIDTH));
            double held = rhoDry * (sorbents.water(a) + hydrate * hydrated[i]);
            content[i] = content[i - 1] + Math.max(held - below, LEAST_SLOPE * step);
            below = held;
            slope[i - 1] = step / (content[i] - content[i - 1]);
        }
    }

    /**
     * {@return the part of the hydrate water that is bound at activity a, in the contents of this table}
     *
     * @param a water activity
     */
    public double hydrated(double a) {
        if (a >= film) {
            return hydrated[SEGMENTS];
        }
        int i = (int) (a / step);
        return hydrated[i] + (a / step - i) * (hydrated[i + 1] - hydrated[i]);
    }

    /** {@return the content at the film activity, above which water is free, kg/m3} */
    public double filmContent() {
        return content[SEGMENTS];
    }

    /** {@return the activity of the film} */
    public double film() {
        return film;
    }

    /**
     * {@return the content in equilibrium with air of relative humidity rh; at and above the film activity the film
     * content, kg/m3}
     *
     * @param rh relative humidity, 0 to 1
     */
    public double contentAt(double rh) {
        if (rh >= film) {
            return content[SEGMENTS];
        }
        int i = Math.min((int) (rh / step), SEGMENTS - 1);
        return content[i] + (rh - i * step) / slope[i];
    }

    /**
     * {@return the segment that holds content c, sought from a guess; SEGMENTS is the film} Negative contents extend
     * the first.
     *
     * @param c content, kg/m3
     * @param guess a segment to start from
     */
    public int segment(double c, int guess) {
        int i = guess;
        while (i < SEGMENTS && c >= content[i + 1]) {
            i++;
        }
        while (i > 0 && c < content[i]) {
            i--;
        }
        return i;
    }

    /** Whether content c lies on a segment, SEGMENTS being the film. */
    boolean holds(double c, int segment) {
        return (segment == 0 || c >= content[segment]) && (segment == SEGMENTS || c < content[segment + 1]);
    }

    /**
     * {@return the activity at content c of a segment}
     *
     * @param c content, kg/m3
     * @param segment its segment, from {@link #segment}
     */
    public double activity(double c, int segment) {
        return segment * step + (c - content[segment]) * slope[segment];
    }

    /**
     * {@return the slope da/dC on a segment, m3/kg; 0 on the film}
     *
     * @param segment a segment, from {@link #segment}
     */
    public double slope(int segment) {
        return slope[segment];
    }
}
