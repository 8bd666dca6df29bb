package org.fizzhull.drying.mix;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.recipe.Recipe;

/** Collects what holds water in a recipe: the ingredients with a sorption isotherm. */
final class Sorbents {
    /**
     * Water activity that powders as bought have come to in air (assumed; docs/physics/drying.md, 2). Their moisture is weighed
     * with them, so that the water-free mass is less than the weighed one.
     */
    private static final double AS_BOUGHT = 0.50;

    private Sorbents() {}

    /**
     * {@return the sorbents of a recipe, powders first}
     *
     * @param recipe recipe with a dry mass above 0
     */
    static List<Sorbent> of(Recipe recipe) {
        List<Sorbent> found = new ArrayList<>();
        int powders = recipe.dry().size();
        List<Recipe.Part> parts = recipe.parts();
        for (int i = 0; i < parts.size(); i++) {
            Gab isotherm = Gab.of(parts.get(i).ingredient()).orElse(null);
            if (isotherm != null) {
                boolean powder = i < powders;
                double weighed = parts.get(i).mass() / recipe.dryMass();
                double bought = powder ? isotherm.waterAt(AS_BOUGHT) : 0;
                found.add(new Sorbent(weighed / (1 + bought), isotherm, powder));
            }
        }
        return List.copyOf(found);
    }
}
