package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.fizz.Acid;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Part;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Role;

/** What of a recipe reacts, as the chemistry of the bath takes it. */
final class RecipeReagents {
    /** Molar masses of the acids differ by far more than this share; tables of them by less. */
    private static final double SAME = 2e-3;

    private RecipeReagents() {}

    /** The reagents in an amount of dry powder, kg; refuses an acid whose strength is not known. */
    static Reagents of(Blend blend, double dryMass) {
        double scale = dryMass / blend.dryMass();
        List<Part> parts = new ArrayList<>(blend.recipe().dry());
        parts.addAll(blend.recipe().wet());
        Reagents all = Reagents.none();
        for (Part part : parts) {
            Ingredient of = part.ingredient();
            double mass = scale * part.mass();
            double groups = mass * of.molesPerKilogram(Property.ACID_GROUPS);
            all = all.withBicarbonate(all.bicarbonate() + mass * of.molesPerKilogram(Property.BICARBONATE_GROUPS))
                    .withCarbonate(all.carbonate() + mass * of.molesPerKilogram(Property.CARBONATE_GROUPS));
            if (groups > 0) {
                Acid acid = acid(of);
                all = all.withAcid(acid, all.acid(acid) + groups / acid.groups());
            }
        }
        return all;
    }

    /** Whether an ingredient is this acid, free of crystal water. */
    static boolean isAnhydrous(Ingredient of, Acid acid) {
        double molar = of.value(Property.MOLAR_MASS, 0);
        return of.role() == Role.ACID && Math.abs(molar - acid.molarMass()) < SAME * molar;
    }

    /** By molar mass, with or without a crystal water: names are the maker's own. */
    private static Acid acid(Ingredient of) {
        double molar = of.value(Property.MOLAR_MASS);
        for (Acid acid : Acid.values()) {
            if (Math.abs(molar - acid.molarMass()) < SAME * molar
                    || Math.abs(molar - acid.molarMass() - PhysicalConstants.WATER_MOLAR_MASS) < SAME * molar) {
                return acid;
            }
        }
        throw new Refusal(
                "unknown-acid",
                of.name(),
                "an acid of " + Math.round(molar * 1e4) / 10.0 + " g/mol",
                "citric, tartaric, malic, ascorbic, lactic or fumaric acid, or cream of tartar",
                "How strong this acid is in the bath is not known here; float and dry take it.");
    }
}
