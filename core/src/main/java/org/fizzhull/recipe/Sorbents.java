package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.List;

/** Finds what holds water in a recipe. */
final class Sorbents {
    /**
     * Powders as bought sit in air of this activity, and their moisture is weighed with them (docs/physics/drying.md,
     * 2).
     */
    private static final double AS_BOUGHT = 0.50;

    private Sorbents() {}

    static List<Sorbent> of(Recipe recipe) {
        List<Sorbent> found = new ArrayList<>();
        for (Part part : recipe.dry()) {
            Gab isotherm = part.ingredient().isotherm().orElse(null);
            if (isotherm != null) {
                double weighed = part.mass() / recipe.dryMass();
                found.add(new Sorbent(weighed / (1 + isotherm.waterAt(AS_BOUGHT)), isotherm, true));
            }
        }
        for (Part part : recipe.wet()) {
            Gab isotherm = part.ingredient().isotherm().orElse(null);
            if (isotherm != null) {
                found.add(new Sorbent(part.mass() / recipe.dryMass(), isotherm, false));
            }
        }
        return List.copyOf(found);
    }
}
