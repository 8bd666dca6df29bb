package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;
import org.fizzhull.shape.load.Topping;

/**
 * Reads what lies on top: {@code 6 g coarse salt, 1 tsp dried petals}. The table gives its densities; a scoop is turned
 * into mass by the loose one, as in a recipe.
 */
final class ToppingText {
    private static final String ALLOWED = "an amount and an ingredient, such as 6 g coarse salt";

    private final String field;
    private final IngredientTable table;
    private final Measures cups;

    ToppingText(String field, IngredientTable table, Measures cups) {
        this.field = field;
        this.table = table;
        this.cups = cups;
    }

    /** One layer for each part between commas. */
    List<Topping> read(String text) {
        List<Topping> all = new ArrayList<>();
        for (String part : QuantityText.parts(text)) {
            all.add(one(part, text));
        }
        return all;
    }

    private Topping one(String part, String text) {
        String[] words = part.split("\\s+");
        int amount = amountWords(words);
        if (amount == 0 || amount == words.length) {
            throw new Refusal(
                    "unreadable",
                    field,
                    part.isEmpty() ? text : part,
                    ALLOWED,
                    amount == 0
                            ? "The amount comes first, then the name; a comma stands between two toppings."
                            : "Say what it is as well; fizzhull ingredients lists what is known.");
        }
        Amount measured = QuantityText.parseAny(
                field, String.join(" ", List.of(words).subList(0, amount)), cups, Dimension.MASS, Dimension.VOLUME);
        if (!measured.isExact()) {
            throw new Refusal(
                    "spread-not-allowed",
                    field,
                    part,
                    ALLOWED,
                    "Write one amount; a spread of the whole piece belongs to --mass.");
        }
        if (!(measured.value() > 0)) {
            throw new Refusal("out-of-range", field, part, "more than 0 g", "Leave out " + field + " for none.");
        }
        Ingredient ingredient = ingredient(String.join(" ", List.of(words).subList(amount, words.length)));
        double mass = Recipe.Part.of(ingredient, measured).mass();
        double solid = ingredient.value(Property.TRUE_DENSITY);
        return new Topping(ingredient.name(), mass, solid, ingredient.value(Property.LOOSE_DENSITY) / solid);
    }

    private Ingredient ingredient(String name) {
        Ingredient found;
        try {
            found = table.require(name).ingredient();
        } catch (Refusal refusal) {
            throw refusal.of(field);
        }
        Role role = found.role();
        if (role == Role.BICARBONATE || role == Role.CARBONATE || role == Role.ACID) {
            throw new Refusal(
                    "fizzing-topping",
                    field,
                    name,
                    "a topping that does not fizz, such as salt, petals or sugar",
                    "What fizzes belongs into the recipe.");
        }
        if (role.mayBeWet()) {
            throw new Refusal(
                    "wet-topping",
                    field,
                    name,
                    "something dry and loose, such as salt, petals or sugar",
                    "A layer of oil or butter is not computed in this version.");
        }
        return found;
    }

    /** Number of leading words that make the amount: numbers, each followed by or joined to its unit. */
    private static int amountWords(String[] words) {
        int at = 0;
        while (at < words.length && (numeric(words[at]) || (at > 0 && words[at].equals("to")))) {
            at += words[at].equals("to") ? 1 : 0;
            while (at < words.length && numeric(words[at]) && !joined(words[at])) {
                at++;
            }
            if (at < words.length && numeric(words[at])) {
                at++; // 6g
            } else if (at < words.length) {
                boolean two = at + 1 < words.length && QuantityText.isUnit(words[at] + ' ' + words[at + 1]);
                at += two ? 2 : QuantityText.isUnit(words[at]) ? 1 : 0;
            }
        }
        return at;
    }

    private static boolean numeric(String word) {
        return !word.isEmpty() && ("+-.±½¼¾".indexOf(word.charAt(0)) >= 0 || Character.isDigit(word.charAt(0)));
    }

    private static boolean joined(String word) {
        return Character.isLetter(word.charAt(word.length() - 1));
    }
}
