package org.fizzhull.validation.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.fizzhull.drying.mix.Gab;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;
import org.openscience.cdk.config.Elements;
import org.openscience.cdk.config.Isotopes;

/** The ingredient table and what a recipe amounts to. */
public final class RecipeChecks extends Bindings {
    private static final IngredientTable TABLE = IngredientTable.standard();

    public RecipeChecks() {
        super("recipe");
        bindLive(
                "molar-mass",
                in -> 1e3 * ingredient(in).value(Property.MOLAR_MASS),
                in -> chemistryLibrary(in.word("formula")));
        bindLive(
                "hydrate-uptake",
                in -> ingredient(in).value(Property.HYDRATE_UPTAKE),
                in -> chemistryLibrary(in.word("hydrate")) / chemistryLibrary(in.word("formula")) - 1);
        bind("bound-water", in -> 100 * (1 - anhydrous(in) / ingredient(in).value(Property.MOLAR_MASS)));
        bind("true-density", in -> ingredient(in).value(Property.TRUE_DENSITY) / 1e3);
        bind("sorption", in -> Gab.of(ingredient(in)).orElseThrow().waterAt(in.number("activity")));
        bind("gas", in -> {
            Blend blend = Blend.of(new RecipeBuilder(TABLE, Measures.US_LEGAL)
                    .dry("sodium bicarbonate", in.word("bicarbonate_g") + " g")
                    .dry("citric acid", in.word("citric_g") + " g")
                    .build());
            return blend.moles().gas() * blend.dryMass();
        });
    }

    /** Molar mass of the same without its water, kg/mol. */
    private static double anhydrous(Inputs in) {
        return TABLE.require(in.word("anhydrous")).ingredient().value(Property.MOLAR_MASS);
    }

    private static Ingredient ingredient(Inputs in) {
        return TABLE.require(in.word("ingredient")).ingredient();
    }

    /** Sum of natural element masses, {@code C6 H8 O7}. */
    private static double chemistryLibrary(String formula) {
        try {
            double sum = 0;
            for (String atom : formula.split(" ", -1)) {
                int digits = 0;
                while (!Character.isDigit(atom.charAt(digits))) {
                    digits++;
                }
                int number = Elements.ofString(atom.substring(0, digits)).number();
                sum += Isotopes.getInstance().getNaturalMass(number) * Integer.parseInt(atom.substring(digits));
            }
            return sum;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
