package org.fizzhull.pressing.powder;

import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;

/**
 * How readily a powder gives way to a press, in three classes by grain size: the press scale Pk of each class is a
 * share of that of free-flowing powders, {@link PressingParameters#pressScale}.
 *
 * <p>The volume that a powder loses under a pressure P is, by Kawakita's law, C = a (P/Pk)/(1 + P/Pk) with a = 1/(K0 +
 * 1). Compressibility tests at 15 kPa show about 2 to 6 % for free-flowing crystals, 15 to 25 % for starches and the
 * like and 20 to 40 % for fine clays (from memory). That density depends the more on pressure the finer the powder is
 * found by Lanzerstorfer, J. Food Eng. 276 (2020) 109897 (ring shear tests of salt, sugar, flour, starch; abstract).
 * The shares below put the table's powders into those ranges; the border of 30 um is that of Geldart's cohesive group C
 * (Powder Technol. 7 (1973) 285, from memory: it moves with density).
 */
enum PowderClass {
    /** Grains above 30 um: crystals, coarse powders. */
    FREE_FLOWING(1),
    /** Grains below 30 um: starches, cocoa, icing sugar. */
    COHESIVE(0.2),
    /** Clays and fumed powders below 10 um that pack by their oil absorption. */
    FINE(0.1);

    /** Grain size below which a powder counts as cohesive, m. */
    private static final double COHESIVE_BELOW = 30e-6;

    /** s, its press scale over that of free-flowing powders. */
    private final double share;

    PowderClass(double share) {
        this.share = share;
    }

    /** {@return its press scale over that of free-flowing powders} */
    public double pressScaleShare() {
        return share;
    }

    /**
     * {@return the class of an ingredient}
     *
     * @param powder the ingredient
     */
    public static PowderClass of(Ingredient powder) {
        if (powder.packsByOil()) {
            return FINE;
        }
        return powder.value(Property.GRAIN_SIZE) < COHESIVE_BELOW ? COHESIVE : FREE_FLOWING;
    }
}
