package org.fizzhull.forecast;

import org.fizzhull.fizz.Acid;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;

/**
 * The reagents of a recipe as the chemistry of the bath takes them: mol of bicarbonate, carbonate, magnesium and of
 * each acid, from the amounts of the mix and the groups per kg of each ingredient. Used by {@link FizzPredictor}.
 * Stateless.
 */
final class RecipeReagents {
    private RecipeReagents() {}

    /**
     * The reagents in an amount of dry powder, mol.
     *
     * @param blend the mix
     * @param dryMass dry powder in the piece, kg
     * @throws Refusal {@code unknown-acid} for an acid whose strength in the bath is not known
     */
    static Reagents of(Blend blend, double dryMass) {
        double scale = dryMass / blend.dryMass();
        Reagents all = Reagents.none();
        for (Recipe.Part part : blend.recipe().parts()) {
            Ingredient of = part.ingredient();
            double mass = scale * part.mass();
            // an acid counts in molecules, whatever the number of its groups
            double groups = mass * of.molesPerKilogram(Property.ACID_GROUPS);
            all = all.withBicarbonate(all.bicarbonate() + mass * of.molesPerKilogram(Property.BICARBONATE_GROUPS))
                    .withCarbonate(all.carbonate() + mass * of.molesPerKilogram(Property.CARBONATE_GROUPS))
                    .withMagnesium(all.magnesium() + mass * of.molesPerKilogram(Property.MAGNESIUM_IONS));
            if (groups > 0) {
                Acid acid = acid(of);
                all = all.withAcid(acid, all.acid(acid) + groups / acid.groups());
            }
        }
        return all;
    }

    /** The acid that the ingredient is said to be, by the table or by the user's {@code like}. */
    private static Acid acid(Ingredient of) {
        return switch (of.substance()) {
            case CITRIC_ACID -> Acid.CITRIC;
            case TARTARIC_ACID -> Acid.TARTARIC;
            case MALIC_ACID -> Acid.MALIC;
            case POTASSIUM_BITARTRATE -> Acid.POTASSIUM_BITARTRATE;
            case ASCORBIC_ACID -> Acid.ASCORBIC;
            case LACTIC_ACID -> Acid.LACTIC;
            case FUMARIC_ACID -> Acid.FUMARIC;
            default -> throw unknown(of);
        };
    }

    /** Refuses an acid by its molar mass, and says which acids are known. */
    private static Refusal unknown(Ingredient of) {
        double molar = of.value(Property.MOLAR_MASS);
        return new Refusal(
                "unknown-acid",
                of.name(),
                "an acid of " + Math.round(molar * 1e4) / 10.0 + " g/mol",
                "citric, tartaric, malic, ascorbic, lactic or fumaric acid, or cream of tartar",
                "Say which it is: like: citric acid. Of another acid it is not known here how strong it is in the bath; float and dry"
                        + " take it.");
    }
}
