package org.fizzhull.recipe.change;

import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;

/**
 * Three recipes of the invented lighthouse workshop, for demonstrations, documentation and first tries. Each is of common
 * practice in its proportions (no source) and holds about half a kilogram of powder: {@link #lemon} is the plain mix, {@link #harbourClay} packs
 * denser, {@link #seaFoam} foams.
 */
public final class ExampleRecipes {
    private ExampleRecipes() {}

    /**
     * {@return two parts of bicarbonate to one of citric acid with some starch, oil and a little water: a plain mix}
     *
     * @param table ingredients known by name; the standard table has all that are named here
     */
    public static Recipe lemon(IngredientTable table) {
        return start(table, "Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .wet("lemon fragrance", "3 g")
                .build();
    }

    /**
     * {@return a mix with clay, salt and a butter that sets: heavier and harder than {@link #lemon}}
     *
     * @param table ingredients known by name; the standard table has all that are named here
     */
    public static Recipe harbourClay(IngredientTable table) {
        return start(table, "Harbour clay")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "150 g")
                .dry("kaolin", "30 g")
                .dry("table salt", "30 g")
                .wet("cocoa butter", "12 g")
                .wet("witch hazel", "5 g")
                .wet("sea breeze fragrance", "3 g")
                .build();
    }

    /**
     * {@return a light mix with foaming powder, milk powder and an emulsifier}
     *
     * @param table ingredients known by name; the standard table has all that are named here
     */
    public static Recipe seaFoam(IngredientTable table) {
        return start(table, "Sea foam")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "140 g")
                .dry("corn starch", "40 g")
                .dry("skimmed milk powder", "15 g")
                .dry("slsa", "25 g")
                .wet("sunflower oil", "8 g")
                .wet("polysorbate 80", "4 g")
                .wet("witch hazel", "8 g")
                .build();
    }

    /** A builder for amounts in grams; the measures of cup and spoon do not matter for those. */
    private static RecipeBuilder start(IngredientTable table, String name) {
        return new RecipeBuilder(table, Measures.US_LEGAL).name(name);
    }
}
