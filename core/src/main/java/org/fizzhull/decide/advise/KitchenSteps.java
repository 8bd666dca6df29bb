package org.fizzhull.decide.advise;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * The steps in which a kitchen changes things: what its scale shows and its ruler has marks for, so that a proposal can be
 * weighed out as it is told. All assumed.
 *
 * @param weight of a fill, a piece or a liquid, kg
 * @param powder of a powder of the mix, kg
 * @param mould across a mould, m
 */
public record KitchenSteps(double weight, double powder, double mould) {
    /** 1 g, 5 g of a powder, 5 mm. */
    public static final KitchenSteps METRIC =
            new KitchenSteps(Unit.GRAM.toSi(1), Unit.GRAM.toSi(5), Unit.MILLIMETRE.toSi(5));

    /** 0.05 oz, 0.2 oz of a powder, a quarter of an inch. */
    public static final KitchenSteps US =
            new KitchenSteps(Unit.OUNCE.toSi(0.05), Unit.OUNCE.toSi(0.2), Unit.INCH.toSi(0.25));

    /**
     * Refuses steps of nothing.
     *
     * @param weight of a fill, a piece or a liquid, kg
     * @param powder of a powder of the mix, kg
     * @param mould across a mould, m
     */
    public KitchenSteps {
        if (!(weight > 0 && powder > 0 && mould > 0)) {
            throw new Refusal("out-of-range", "steps", weight + ", " + powder + ", " + mould, "above 0", "Say a step.");
        }
    }

    /**
     * {@return these steps with those of another across a mould}
     *
     * @param other whose step is taken
     */
    public KitchenSteps across(KitchenSteps other) {
        return new KitchenSteps(weight, powder, other.mould);
    }
}
