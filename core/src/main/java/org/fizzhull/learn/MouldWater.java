package org.fizzhull.learn;

import java.io.Serializable;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Priors;

/**
 * A mould that was filled with water and weighed. With W the mass of the water, V and S volume and surface of the stated form and
 * r = W/(998 kg/m3 V), the mould is across by
 * <pre>  e = (6 V/S)(r^(1/3) - 1)</pre>
 * more than stated: of a ball 6 V/S is the diameter; of any form, what grows the volume as that of a ball. The water is true to
 * 1 g ({@link Measured#WATER}), its density at 10 to 30 C to 2 in 1000. Immutable.
 *
 * @param mould form of its pieces, as stated
 * @param water mass of the water that fills it, kg at room temperature
 */
public record MouldWater(Shape mould, double water) implements Serializable {
    /** Density of the water that fills a mould, kg/m3: at 20 C, to 2 in 1000 from 10 to 30 C. */
    private static final double DENSITY = 998;

    /** Relative difference of the water from the stated volume above which it must be another mould. */
    private static final double MOST_OFF = 0.25;

    private static final Source FILLED =
            new Source("mould-water", "The mould filled with water and weighed, true to 1 g", Source.Seen.COMPUTED);

    /**
     * Refuses water that is not that of the mould.
     *
     * @param mould form of its pieces, as stated
     * @param water mass of the water that fills it, kg at room temperature
     * @throws Refusal {@code conflict}
     */
    public MouldWater {
        if (!(Math.abs(water / DENSITY / mould.volume() - 1) <= MOST_OFF)) {
            throw new Refusal(
                    "conflict",
                    "mould water",
                    1e3 * water + " g of water in a mould of " + Math.round(1e6 * mould.volume()) + " mL",
                    "as much as the mould holds, to a quarter",
                    "Weigh the water that fills the whole mould, both halves of a ball, or mend the size.");
        }
    }

    /** {@return true less stated size of the mould, m across} */
    public double sizeError() {
        double ratio = water / DENSITY / mould.volume();
        return 6 * mould.volume() / mould.surface() * (Math.cbrt(ratio) - 1);
    }

    /** {@return what is then known of the size of the mould} */
    Factor size() {
        double deviation = Measured.WATER.sizeDeviation(mould.surface());
        return new Factor(Input.MOULD_SIZE, Priors.normal(sizeError(), deviation), FILLED);
    }
}
