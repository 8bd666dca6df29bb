package org.fizzhull.recipe;

import java.util.EnumMap;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Refusal;

/**
 * A cup of powder weighed as poured, then tapped down, filled up level and weighed again: the two densities of this
 * bag, in place of the table's.
 *
 * @param cup volume of the cup, m3
 * @param loose mass of the cup as poured and struck level, kg
 * @param tapped mass of the same cup tapped full, kg
 */
record CupMeasurement(double cup, double loose, double tapped) {
    /** Repeatability of such a cup, one standard deviation (3 %, assumed). */
    public static final double SIGMA = 0.03;

    private static final Source CUP = new Source("own-cup", "The user's own cup and scale", Source.Seen.SEEN);

    /**
     * Refuses a cup that cannot be: nothing in it, or lighter after tapping.
     *
     * @param cup volume of the cup, m3
     * @param loose mass of the cup as poured and struck level, kg
     * @param tapped mass of the same cup tapped full, kg
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
     * {@return the ingredient with this bag's densities}
     *
     * @param powder the ingredient as the table knows it
     */
    public Ingredient appliedTo(Ingredient powder) {
        Map<Property, Datum> measured = new EnumMap<>(Property.class);
        measured.put(Property.LOOSE_DENSITY, new Datum(loose / cup, SIGMA * loose / cup, CUP));
        measured.put(Property.TAPPED_DENSITY, new Datum(tapped / cup, SIGMA * tapped / cup, CUP));
        return powder.with(measured);
    }

    private static String grams(double kilograms) {
        return Math.round(kilograms * 1e4) / 10.0 + " g";
    }
}
