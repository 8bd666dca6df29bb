package org.fizzhull.recipe;

import org.fizzhull.quantity.Measures;

/** The lighthouse workshop's own recipes, for demonstrations and first tries. */
public final class ExampleRecipes {
    private ExampleRecipes() {}

    /**
     * {@return the two parts bicarbonate, one part acid, some starch: the default recipe}
     *
     * @param table ingredients known by name
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
     * {@return the clay, salt and a fat that sets: heavier and harder}
     *
     * @param table ingredients known by name
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
     * {@return the foaming and light, with milk}
     *
     * @param table ingredients known by name
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

    private static RecipeBuilder start(IngredientTable table, String name) {
        return new RecipeBuilder(table, Measures.US_LEGAL).name(name);
    }
}
