package org.fizzhull.recipe;

import java.util.EnumMap;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Refusal;

/**
 * A cup of powder weighed as poured, then tapped down, filled up level and weighed again. Mass over volume gives the loose
 * and the tapped density of this very bag, which replace those of the table: the table's are known to 12 to 20 % only
 * (docs/physics/packing.md, 1).
 *
 * <p>How the two masses are read from a recipe stands in {@link OwnCup}.
 *
 * @param cup volume of the cup, m3
 * @param loose mass of the powder as poured and struck level, kg
 * @param tapped mass of the powder that fills the same cup after tapping, kg
 */
record CupMeasurement(double cup, double loose, double tapped) {
    /** Repeatability of a density measured so, one relative standard deviation (3 %, assumed: filling and striking level). */
    public static final double SIGMA = 0.03;

    /** Source of both densities. */
    private static final Source CUP = new Source("own-cup", "The user's own cup and scale", Source.Seen.SEEN);

    /**
     * Checks the two weighings against each other.
     *
     * @param cup volume of the cup, m3, above 0
     * @param loose mass of the powder as poured and struck level, kg, above 0
     * @param tapped mass of the powder that fills the same cup after tapping, kg, above {@code loose}
     * @throws Refusal {@code out-of-range} for an empty cup, or one that is no heavier after tapping
     */
    public CupMeasurement {
        if (!(cup > 0 && loose > 0 && tapped > loose && Double.isFinite(tapped / cup))) {
            throw new Refusal(
                    "out-of-range",
                    "powder cup",
                    grams(loose) + " loose, " + grams(tapped) + " tapped in " + Math.round(cup * 1e8) / 100.0 + " mL",
                    "more tapped than loose, both above 0 g",
                    "Fill the cup up again while tapping, strike it level, weigh it: it must be heavier then.");
        }
    }

    /**
     * {@return the ingredient with the two densities of this bag in place of the table's}
     *
     * @param powder the ingredient as the table knows it
     */
    public Ingredient appliedTo(Ingredient powder) {
        Map<Property, Datum> measured = new EnumMap<>(Property.class);
        measured.put(Property.LOOSE_DENSITY, new Datum(loose / cup, SIGMA * loose / cup, CUP));
        measured.put(Property.TAPPED_DENSITY, new Datum(tapped / cup, SIGMA * tapped / cup, CUP));
        return powder.with(measured);
    }

    /** For the message: a mass in grams to a tenth. */
    private static String grams(double kilograms) {
        return Math.round(kilograms * 1e4) / 10.0 + " g";
    }
}
