package org.fizzhull.recipe.change;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.recipe.Liquid;
import org.fizzhull.recipe.Recipe;

/**
 * How an ingredient stands to the largest share of the piece that the user copied from a supplier's sheet. The share is that
 * of the finished piece, which has lost its water and alcohol:
 *
 * <pre>  share = m_i/(m_dry + sum over liquids of m_j (1 - water_j - alcohol_j))</pre>
 *
 * <p>m masses as weighed in (kg). Of a piece that is still damp it is less. Left out: gas lost in the bowl, which makes the
 * piece a little lighter, and scent that evaporates. Nothing is judged: whether a limit is the right one is for the
 * supplier's sheet and local rules. Immutable.
 *
 * @param part the line of the recipe
 * @param share of the dried piece, 0 to 1
 * @param limit largest share that the user allows, 0 to 1
 */
public record LimitedShare(Recipe.Part part, double share, double limit) {
    /** Relative difference that is rounding: 1 g in 100 g is 1 %. */
    private static final double ROUNDING = 1e-9;

    /**
     * {@return every ingredient for which the recipe has a limit, in the order of the recipe}
     *
     * @param recipe a recipe with or without limits
     */
    public static List<LimitedShare> of(Recipe recipe) {
        double dried = recipe.dryMass();
        for (Recipe.Part part : recipe.wet()) {
            dried += Liquid.staying(part);
        }
        List<LimitedShare> limited = new ArrayList<>();
        for (Recipe.Part part : recipe.parts()) {
            Double limit = recipe.limits().get(part.ingredient().name());
            if (limit != null) {
                limited.add(new LimitedShare(part, part.mass() / dried, limit));
            }
        }
        return limited;
    }

    /** {@return whether the piece keeps to the limit, also once it is dry} */
    public boolean kept() {
        return share <= limit * (1 + ROUNDING);
    }
}
