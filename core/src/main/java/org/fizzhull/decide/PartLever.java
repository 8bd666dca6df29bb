package org.fizzhull.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Step.Setting;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Part;
import org.fizzhull.recipe.Recipe;

/**
 * More or less of one ingredient of the mix, by grams for a liquid and by five grams for a powder. A powder that is taken
 * out may be made up by another, gram for gram.
 *
 * @param kind what the change counts as
 * @param ingredient what is changed
 * @param grams of a rung, more than 0 to put in, less than 0 to take out
 * @param rungs largest number of rungs
 * @param other what makes up for it; empty for nothing
 * @param nuisance effort of a rung
 */
record PartLever(
        Step.Kind kind, Ingredient ingredient, double grams, int rungs, Optional<Ingredient> other, double nuisance)
        implements Lever {
    private static final double GRAM = 1e-3;

    @Override
    public double effort(int rung) {
        return nuisance * rung;
    }

    @Override
    public Optional<Changed> at(Design design, int rung) {
        Recipe recipe = design.recipe().orElseThrow();
        double from = mass(recipe, ingredient);
        double change = Math.max(-from, rung * grams * GRAM);
        try {
            Recipe changed = with(recipe, ingredient, change);
            if (other.isPresent()) {
                changed = with(changed, other.get(), -change);
            }
            Setting before = new Setting.Amount(from, Unit.GRAM);
            Setting after = new Setting.Amount(from + change, Unit.GRAM);
            String subject =
                    other.isPresent() ? ingredient.name() + " -> " + other.get().name() : ingredient.name();
            Design design2 = design.of(changed);
            design2.question();
            return Optional.of(new Changed(design2, new Step(kind, subject, before, after)));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    static double mass(Recipe recipe, Ingredient ingredient) {
        Optional<Part> part = recipe.part(ingredient.name());
        return part.isPresent() ? part.get().mass() : 0;
    }

    private static Recipe with(Recipe recipe, Ingredient which, double change) {
        boolean liquid = !which.role().mayBeDry();
        return new Recipe(
                recipe.name(),
                liquid ? recipe.dry() : changed(recipe.dry(), which, change),
                liquid ? changed(recipe.wet(), which, change) : recipe.wet(),
                recipe.acidLast(),
                recipe.prices(),
                recipe.limits(),
                recipe.notices());
    }

    private static List<Part> changed(List<Part> parts, Ingredient which, double change) {
        List<Part> changed = new ArrayList<>();
        boolean found = false;
        for (Part part : parts) {
            if (!part.ingredient().name().equals(which.name())) {
                changed.add(part);
                continue;
            }
            found = true;
            if (part.mass() + change > GRAM / 100) {
                changed.add(new Part(which, part.mass() + change, part.sigma()));
            }
        }
        if (!found && change > 0) {
            changed.add(new Part(which, change, 0));
        }
        return changed;
    }
}
