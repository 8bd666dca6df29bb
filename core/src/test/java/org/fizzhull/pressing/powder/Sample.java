package org.fizzhull.pressing.powder;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;
import org.fizzhull.recipe.Substance;

/** Three invented powders, those of validation/reference/packing.py, and a mould that only has a volume to speak of. */
final class Sample {
    private static final Source INVENTED = new Source("invented", "Invented powders", Source.Seen.COMPUTED);

    private Sample() {}

    static Ingredient powder(String name, Role role, double solid, double loose, double tapped, double micrometres) {
        EnumMap<Property, Property.Datum> values = new EnumMap<>(Property.class);
        values.put(Property.TRUE_DENSITY, new Property.Datum(solid * 1e3, 5, INVENTED));
        values.put(Property.LOOSE_DENSITY, new Property.Datum(loose * solid * 1e3, 100, INVENTED));
        values.put(Property.TAPPED_DENSITY, new Property.Datum(tapped * solid * 1e3, 100, INVENTED));
        values.put(Property.GRAIN_SIZE, new Property.Datum(micrometres * 1e-6, 0, INVENTED));
        return new Ingredient(name, List.of(), role, Substance.UNSPECIFIED, values, "", "", "");
    }

    static Blend sheet(double liquidRatio) {
        Ingredient water = new Ingredient(
                "water",
                List.of(),
                Role.WATER,
                Substance.UNSPECIFIED,
                Map.of(
                        Property.LIQUID_DENSITY, new Property.Datum(1000, 0, INVENTED),
                        Property.WATER_SHARE, new Property.Datum(1, 0, INVENTED)),
                "",
                "",
                "");
        List<Recipe.Part> dry = List.of(
                new Recipe.Part(powder("citric acid", Role.ACID, 1.665, 0.55, 0.61, 400), 0.030, 0),
                new Recipe.Part(powder("sodium bicarbonate", Role.BICARBONATE, 2.20, 0.46, 0.62, 100), 0.060, 0),
                new Recipe.Part(powder("corn starch", Role.STARCH, 1.48, 0.34, 0.50, 15), 0.010, 0));
        List<Recipe.Part> wet = List.of(new Recipe.Part(water, 0.1 * liquidRatio, 0));
        return Blend.of(new Recipe("invented", dry, wet, false, Map.of(), Map.of(), List.of()));
    }

    /** Packing alone: no bulking, no spring-back, no wall friction. */
    static PressingParameters bare(double pressScale) {
        return new PressingParameters(pressScale, 0, 0, 20e3, 0, 0, 0, 0.3, 0.8, 0.4, 0.3e-6);
    }

    /** A litre, so that grams of a fill are its density in kg/m3. */
    static MouldDimensions litre() {
        return new MouldDimensions(1e-3, 1e-2, 0.1, 0.1, 0.06);
    }

    /** Ball of 65 mm: V = pi d3/6, in two halves. */
    static MouldDimensions ball65() {
        double d = 0.065;
        double volume = Math.PI * d * d * d / 6;
        double face = Math.PI * d * d / 4;
        return new MouldDimensions(volume, face, volume / face / 2, d, Math.PI * d * d);
    }
}
