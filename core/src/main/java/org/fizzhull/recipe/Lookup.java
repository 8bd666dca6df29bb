package org.fizzhull.recipe;

import java.util.List;

/**
 * What a name turned out to mean: the answer of {@link IngredientTable#find}, for callers that want to ask back instead of
 * being refused.
 */
public sealed interface Lookup {
    /**
     * One ingredient.
     *
     * @param ingredient the ingredient, under the name asked for where that is a family name ({@code lemon fragrance})
     * @param assumption sentence about what was taken for granted (which hydrate, which grade), to be told; or empty
     */
    record Found(Ingredient ingredient, String assumption) implements Lookup {}

    /**
     * A name that means several ingredients.
     *
     * @param meanings each of them, two or more
     */
    record Ambiguous(List<Ingredient> meanings) implements Lookup {}

    /**
     * Something that must not go in.
     *
     * @param name its usual name
     * @param reason why, a sentence or two
     */
    record Forbidden(String name, String reason) implements Lookup {}

    /**
     * Not in the table.
     *
     * @param nearest names that look alike, nearest first; may be empty
     */
    record Unknown(List<String> nearest) implements Lookup {}
}
