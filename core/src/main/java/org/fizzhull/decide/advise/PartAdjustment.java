package org.fizzhull.decide.advise;

import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeChange;

/**
 * More or less of one ingredient of the mix, by grams for a liquid and by five grams for a powder. A powder that is taken
 * out may be made up by another, gram for gram.
 *
 * @param table table that names the ingredients
 * @param kind what the change counts as
 * @param ingredient what is changed
 * @param grams mass of a level, g; more than 0 to put in, less than 0 to take out
 * @param levels largest number of levels
 * @param other what makes up for it; empty for nothing
 * @param nuisance effort of a level
 */
record PartAdjustment(
        IngredientTable table,
        Change.Step.Kind kind,
        Ingredient ingredient,
        double grams,
        int levels,
        Optional<Ingredient> other,
        double nuisance)
        implements Adjustment {
    /** Kilograms in a gram. */
    private static final double GRAM = 1e-3;

    @Override
    public double effort(int level) {
        return nuisance * level;
    }

    @Override
    public Changed at(Design design, int level) {
        Recipe recipe = design.recipe().orElseThrow();
        // never more out than there is
        double from = mass(recipe, ingredient);
        double change = Math.max(-from, level * grams * GRAM);
        Recipe changed = changed(recipe, ingredient, change);
        if (other.isPresent()) {
            changed = changed(changed, other.get(), -change);
        }
        Setting before = new Setting.Amount(from, Unit.GRAM);
        Setting after = new Setting.Amount(from + change, Unit.GRAM);
        Design mixed = design.of(changed);
        // refuses a mix that does not go into the mould
        mixed.question();
        String replacement = other.isPresent() ? other.get().name() : "";
        return new Changed(mixed, new Change.Step(kind, ingredient.name(), replacement, before, after));
    }

    /** The recipe with a change in kg, made as a maker writes it down: what is changed to nothing is taken out. */
    private Recipe changed(Recipe recipe, Ingredient which, double change) {
        Amount amount = Amount.exact(Dimension.MASS, Math.abs(change));
        return new RecipeChange(which.name(), change < 0 ? '-' : '+', amount).applyTo(recipe, table);
    }

    /** {@return the mass of an ingredient in one mix, kg; 0 where there is none} */
    static double mass(Recipe recipe, Ingredient ingredient) {
        Optional<Recipe.Part> part = recipe.part(ingredient.name());
        return part.isPresent() ? part.get().mass() : 0;
    }
}
