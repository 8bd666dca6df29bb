package org.fizzhull.batch;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;

/**
 * The order of mixing (common practice, no source): fats melted, oils and scents stirred together, powders sifted
 * without the acid, acid, oils, and the watery liquids last of all by spray; foaming powder late, since it dusts. Where
 * the recipe says acid last it follows the liquids.
 *
 * <p>A step without ingredients is left out. Cautions stand at the step where the ingredient is handled; the last step
 * warns of a tight lid where acid meets a carbonate, since a damp mix of both gives off gas.
 */
public final class MixingOrder {
    /** Powders of the first bowl. */
    private static final Set<Role> POWDERS = EnumSet.of(
            Role.BICARBONATE, Role.CARBONATE, Role.STARCH, Role.CLAY, Role.SALT, Role.FOOD_POWDER, Role.COLOUR);
    /** Liquids that are stirred together and drizzled over the powder. */
    private static final Set<Role> OILY = EnumSet.of(Role.OIL, Role.EMULSIFIER, Role.FRAGRANCE, Role.HUMECTANT);
    /** Liquids that start the fizz, and so go in last. */
    private static final Set<Role> WATERY = EnumSet.of(Role.WATER, Role.LIQUID_SURFACTANT);

    /** What gives off gas with an acid. */
    private static final Set<Role> GASSY = EnumSet.of(Role.BICARBONATE, Role.CARBONATE);

    private static final String LID = "Never cover the bowl with a tight lid: it gives off gas.";

    private final Recipe recipe;
    /** Steps so far. */
    private final List<MixingStep> steps = new ArrayList<>();

    private MixingOrder(Recipe recipe) {
        this.recipe = recipe;
    }

    /**
     * {@return the steps for one mix, in order}
     *
     * @param recipe the recipe that is mixed
     */
    public static List<MixingStep> of(Recipe recipe) {
        MixingOrder order = new MixingOrder(recipe);
        // liquids that must be ready, then the powders
        order.step("Melt gently, no hotter than your hand bears", EnumSet.of(Role.BUTTER), false);
        boolean one = order.parts(OILY).size() == 1;
        order.step(one ? "Weigh into a small bowl" : "Stir together in a small bowl", OILY, false);
        order.step("Sift into a wide bowl and whisk", POWDERS, true);
        if (!recipe.acidLast()) {
            order.step("Whisk in the acid, in moving air", EnumSet.of(Role.ACID), false);
        }
        // oils coat the grains before water comes
        order.pour();
        order.step("Spray on a little at a time, whisking at once", EnumSet.of(Role.ALCOHOL), false);
        order.step("Spray on last, a little at a time, whisking at once", WATERY, false);
        if (recipe.acidLast()) {
            order.step("Whisk in the acid, in moving air", EnumSet.of(Role.ACID), false);
        }
        order.step(
                "Fold in slowly, without dust", EnumSet.of(Role.SURFACTANT, Role.BOTANICAL, Role.STEAM_SCENT), false);
        boolean gas = !order.parts(GASSY).isEmpty()
                && !order.parts(EnumSet.of(Role.ACID)).isEmpty();
        order.steps.add(new MixingStep("Press without waiting", List.of(), gas ? LID : "", false));
        return List.copyOf(order.steps);
    }

    /** Adds a caution unless another one of the same step contains it. */
    private static void addNew(List<String> cautions, String caution) {
        String said = caution.endsWith(".") ? caution.substring(0, caution.length() - 1) : caution;
        if (said.isEmpty()) {
            return;
        }
        for (String other : cautions) {
            if (other.contains(said)) {
                return;
            }
        }
        cautions.add(caution);
    }

    /** Adds the step in which the oily liquids go over the powder, where there are any. */
    private void pour() {
        for (Recipe.Part part : recipe.wet()) {
            Role role = part.ingredient().role();
            if (part.mass() > 0 && (OILY.contains(role) || role == Role.BUTTER)) {
                steps.add(new MixingStep(
                        "Drizzle the oily mix over the powder and rub out every lump", List.of(), "", false));
                return;
            }
        }
    }

    /** Adds a step for all ingredients of some roles, with their cautions. */
    private void step(String text, Set<Role> roles, boolean mayStop) {
        List<String> names = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (Recipe.Part part : parts(roles)) {
            names.add(part.ingredient().name());
            addNew(cautions, part.ingredient().caution());
        }
        if (!names.isEmpty()) {
            steps.add(new MixingStep(text, List.copyOf(names), String.join(" ", cautions), mayStop));
        }
    }

    /** What has one of some roles; butters may stand on either side of the recipe. */
    private List<Recipe.Part> parts(Set<Role> roles) {
        List<Recipe.Part> found = new ArrayList<>();
        for (Recipe.Part part : recipe.parts()) {
            if (part.mass() > 0 && roles.contains(part.ingredient().role())) {
                found.add(part);
            }
        }
        return found;
    }
}
