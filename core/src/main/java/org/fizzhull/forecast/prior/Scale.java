package org.fizzhull.forecast.prior;

import static org.fizzhull.uncertainty.Priors.cutNormal;
import static org.fizzhull.uncertainty.Priors.uniform;

import java.io.Serializable;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * The scale on which pieces and fills are weighed, by its step: the smallest difference it shows. One reading is off by
 * up to half a step to both sides, each reading anew (one standard deviation step / sqrt(12), JCGM 100:2008, F.2.2.1,
 * from memory). Beside that the scale shows all weights too low or too high by the same amount (one standard deviation
 * step / sqrt(6), assumed), so that both together are half a step.
 *
 * <p>The first is an input of the piece ({@link Input#SCALE}), the second of the batch ({@link Input#SCALE_OFFSET}).
 * Immutable.
 *
 * @param step kg, above 0
 */
public record Scale(double step) implements Serializable {
    /** Step of a kitchen scale, kg. */
    public static final double KITCHEN_STEP = 1e-3;

    /** Fewest steps in which a usual scale shows a light piece. */
    private static final double LEAST_STEPS = 50;

    /** Fewest steps in which a weight has to be shown; a lighter one is refused (judgement). */
    private static final double FEWEST_STEPS = 4;

    /** Largest offset, steps: the normal law is cut there (judgement). */
    private static final double WIDEST_OFFSET = 1.5;

    /** Why one reading is off. */
    private static final Source READING =
            new Source("scale-reading", "Half a step of the scale to both sides: JCGM 100:2008, F.2.2.1", Seen.MEMORY);
    /** Why all readings are off alike. */
    private static final Source OFFSET =
            new Source("scale-offset", "A scale off by as much as its step tells", Seen.ASSUMED);

    /**
     * Refuses a step that is not above 0, NaN included.
     *
     * @param step kg, above 0
     * @throws Refusal {@code out-of-range}
     */
    public Scale {
        if (!(step > 0 && step < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "scale",
                    1e3 * step + " g",
                    "more than 0 g",
                    "The step of a scale is the smallest difference it shows, such as 0.1 g.");
        }
    }

    /**
     * {@return the scale for a weight, kg, of which nothing is known: steps of 1 g, of a light piece a fiftieth of its
     * weight}
     *
     * @param mass weight, kg; NaN for a pressed piece, which is on no scale
     */
    public static Scale usual(double mass) {
        return mass > 0 && mass < LEAST_STEPS * KITCHEN_STEP ? new Scale(mass / LEAST_STEPS) : new Scale(KITCHEN_STEP);
    }

    /**
     * {@return the scale that shows a weight, kg, in such steps as it was written with, at most a tenth of it; 0: the
     * usual one}
     *
     * @param mass weight, kg
     * @param lastPlace one of the last place of the number as it was written, kg; 0 where it was not read from a text
     */
    public static Scale written(double mass, double lastPlace) {
        Given.notNegative("last place", lastPlace);
        return lastPlace > 0 ? new Scale(Math.min(lastPlace, mass / 10)) : usual(mass);
    }

    /**
     * Refuses a weight, kg, that the scale shows in hardly a step.
     *
     * @param mass weight, kg
     * @throws Refusal {@code out-of-range} where it is too light for this scale
     */
    public void check(double mass) {
        Given.finite("mass", mass);
        if (mass < FEWEST_STEPS * step) {
            throw new Refusal(
                    "out-of-range",
                    "scale",
                    "steps of " + 1e3 * step + " g for a weight of " + 1e3 * mass + " g",
                    "at most a quarter of the weight",
                    "Weigh it on a finer scale, or ten pieces together.");
        }
    }

    /** {@return the error of one reading, kg} */
    public Factor reading() {
        return new Factor(Input.SCALE, uniform(-step / 2, step / 2), READING);
    }

    /** {@return the error of all readings, kg} */
    public Factor offset() {
        double widest = WIDEST_OFFSET * step;
        return new Factor(Input.SCALE_OFFSET, cutNormal(0, step / Math.sqrt(6), -widest, widest), OFFSET);
    }

    /** {@return one standard deviation of both together, kg} */
    public double deviation() {
        return step / 2;
    }
}
