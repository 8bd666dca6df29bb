package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;

/**
 * One change to a recipe in words: {@code kaolin +20 g}, {@code water -2 g}, {@code corn starch = 5 g}. What is not in
 * the recipe yet is put in; what is changed to nothing is taken out. Used for "what if" questions, so that a recipe need
 * not be written anew.
 *
 * @param ingredient name as written
 * @param sign {@code +} for more, {@code -} for less, {@code =} for a new amount
 * @param amount mass or volume, 0 or more, with its spread
 */
public record RecipeChange(String ingredient, char sign, Amount amount) {
    /** Field of a refusal. */
    private static final String FIELD = "change";
    /** Mass below which an ingredient counts as taken out, kg: rounding of a difference. */
    private static final double NOTHING = 1e-9;

    /**
     * Reads several, with commas between them, {@code kaolin +20 g, water -1 g}.
     *
     * @param text the changes as written
     * @param measures what a cup and the spoons hold
     * @return the changes in the order written, one at least
     * @throws Refusal {@code unreadable} for what is no change, or as an amount is refused
     */
    public static List<RecipeChange> readAll(String text, Measures measures) {
        List<RecipeChange> changes = new ArrayList<>();
        int from = 0;
        for (int comma = text.indexOf(','); comma >= 0; comma = text.indexOf(',', comma + 1)) {
            // a comma may stand in a name; what stands before one that separates is a whole change
            if (signAt(text.substring(from, comma)) >= 0) {
                changes.add(read(text.substring(from, comma).strip(), measures));
                from = comma + 1;
            }
        }
        changes.add(read(text.substring(from).strip(), measures));
        return changes;
    }

    /**
     * Reads one change. A minus sign (U+2212) counts as a hyphen.
     *
     * @param text one change as written
     * @param measures what a cup and the spoons hold
     * @return the change
     * @throws Refusal {@code unreadable} for what is no change, or as an amount is refused
     */
    public static RecipeChange read(String text, Measures measures) {
        int at = signAt(text);
        if (at < 0 || text.substring(0, at).isBlank()) {
            throw new Refusal(
                    "unreadable",
                    FIELD,
                    text,
                    "an ingredient, then +, - or = and an amount",
                    "For example: kaolin +20 g.");
        }
        char sign = text.charAt(at) == '\u2212' ? '-' : text.charAt(at);
        Amount amount = RecipeBuilder.amount(FIELD, text.substring(at + 1).strip(), measures);
        return new RecipeChange(text.substring(0, at).strip(), sign, amount);
    }

    /** Index of the sign, -1 where there is none. Plus and minus stand behind a blank, so that a hyphen in a name is none. */
    private static int signAt(String text) {
        for (int i = 1; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean spaced = text.charAt(i - 1) == ' ';
            if (c == '=' || (spaced && (c == '+' || c == '-' || c == '\u2212'))) {
                return i;
            }
        }
        return -1;
    }

    /**
     * {@return the changed recipe; the mass, spread, prices and limits of other lines stay}
     *
     * @param recipe the recipe before
     * @param table ingredients known by name, the user's own among them
     * @throws Refusal {@code not-in-recipe} for {@code -} or {@code = 0 g} of what is not there, {@code out-of-range} where more
     *     is taken away than there is, {@code
     *     too-much-liquid}, {@code empty} where no powder is left, or as a name is refused
     */
    public Recipe applyTo(Recipe recipe, IngredientTable table) {
        Ingredient which = meant(recipe, table);
        Recipe.Part change = Recipe.Part.of(which, amount);
        List<Recipe.Part> dry = new ArrayList<>();
        List<Recipe.Part> wet = new ArrayList<>();
        boolean inDry = changed(recipe.dry(), dry, change);
        boolean inWet = changed(recipe.wet(), wet, change);
        if (!inDry && !inWet) {
            if (sign == '-' || (sign == '=' && change.mass() <= NOTHING)) {
                throw new Refusal(
                        "not-in-recipe",
                        FIELD,
                        ingredient,
                        "an ingredient of the recipe",
                        "There is none to take away.");
            }
            // a butter, which may be either, goes to the liquids
            if (change.mass() > NOTHING) {
                (which.role().mayBeWet() ? wet : dry).add(change);
            }
        }
        return RecipeBuilder.checkedLiquid(recipe.withLines(dry, wet));
    }

    /** Copies lines, changing the one that has the ingredient; whether there was one. The spreads of a sum add as squares. */
    private boolean changed(List<Recipe.Part> from, List<Recipe.Part> to, Recipe.Part change) {
        boolean found = false;
        for (Recipe.Part part : from) {
            if (!part.ingredient().name().equals(change.ingredient().name())) {
                to.add(part);
                continue;
            }
            found = true;
            double mass = switch (sign) {
                case '+' -> part.mass() + change.mass();
                case '-' -> part.mass() - change.mass();
                default -> change.mass();
            };
            if (mass < -NOTHING) {
                throw new Refusal(
                        "out-of-range",
                        FIELD,
                        ingredient + " -" + RecipeBuilder.grams(change.mass()),
                        "up to " + RecipeBuilder.grams(part.mass()) + " less",
                        "There is no more of it in the recipe.");
            }
            if (mass > NOTHING) {
                double sigma = sign == '=' ? change.sigma() : Math.hypot(part.sigma(), change.sigma());
                to.add(new Recipe.Part(part.ingredient(), mass, sigma));
            }
        }
        return found;
    }

    /** The ingredient that the name means; one of two meanings where only that one is in the recipe. */
    private Ingredient meant(Recipe recipe, IngredientTable table) {
        if (table.find(ingredient) instanceof Lookup.Ambiguous two) {
            List<Ingredient> present = new ArrayList<>();
            for (Ingredient meaning : two.meanings()) {
                recipe.part(meaning.name()).ifPresent(p -> present.add(p.ingredient()));
            }
            if (present.size() == 1) {
                return present.get(0);
            }
        }
        return table.require(ingredient).ingredient();
    }
}
