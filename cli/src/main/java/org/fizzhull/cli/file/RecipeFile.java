package org.fizzhull.cli.file;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.jspecify.annotations.Nullable;

/**
 * A recipe file.
 *
 * @param recipe what it says
 * @param table the ingredient table with the file's own ingredients
 * @param own the file's own ingredients, in the order written
 */
public record RecipeFile(Recipe recipe, IngredientTable table, List<Ingredient> own) {
    private static final String KEYS = "recipe, dry, wet, total, acid last, prices, limits, own ingredients";

    /** Reads one; each refusal names the file and the line. */
    public static RecipeFile read(String option, String file, Measures measures) {
        return new Reader(YamlMap.read(file, TextFile.read(option, file)), measures).recipe();
    }

    /** One reading: own ingredients first, then the lines, then what speaks of the lines. */
    private static final class Reader {
        private final YamlMap file;
        private final RecipeBuilder builder;
        private final Map<String, YamlMap.Entry> sections = new HashMap<>();
        private final Map<String, Integer> lines = new HashMap<>();

        Reader(YamlMap file, Measures measures) {
            this.file = file;
            builder = new RecipeBuilder(IngredientTable.standard(), measures);
            for (YamlMap.Entry entry : file.entries()) {
                switch (entry.name()) {
                    case "recipe", "dry", "wet", "total", "acid last", "prices", "limits", "own ingredients" ->
                        sections.put(entry.name(), entry);
                    default ->
                        throw file.refusal(
                                new Refusal("unknown-key", entry.name(), entry.name(), KEYS, mend(entry.name())),
                                entry.line());
                }
            }
        }

        RecipeFile recipe() {
            YamlMap.Entry name = sections.get("recipe");
            builder.name(name == null ? "recipe" : file.text(name));
            own(sections.get("own ingredients"));
            YamlMap.Entry dry = sections.get("dry");
            if (dry == null) {
                throw file.refusal(
                        new Refusal(
                                "missing",
                                "dry",
                                "",
                                "the powders under dry:",
                                "Write dry: and below it lines such as   sodium bicarbonate: 300 g"),
                        file.line());
            }
            each(dry, (ingredient, text) -> line(ingredient, () -> builder.dry(ingredient.name(), text)));
            each(
                    sections.get("wet"),
                    (ingredient, text) -> line(ingredient, () -> builder.wet(ingredient.name(), text)));
            YamlMap.Entry total = sections.get("total");
            if (total != null) {
                at(total.line(), () -> builder.total(file.text(total)));
            }
            acidLast(sections.get("acid last"));
            each(
                    sections.get("prices"),
                    (ingredient, text) -> at(ingredient.line(), () -> builder.price(ingredient.name(), text)));
            each(
                    sections.get("limits"),
                    (ingredient, text) -> at(ingredient.line(), () -> builder.limit(ingredient.name(), text)));
            try {
                return new RecipeFile(builder.build(), builder.table(), builder.own());
            } catch (Refusal whole) {
                throw file.refusal(whole, lines.getOrDefault(whole.field(), dry.line()));
            }
        }

        private void own(YamlMap.@Nullable Entry section) {
            if (section == null) {
                return;
            }
            for (YamlMap.Entry ingredient : file.map(section).entries()) {
                YamlMap values = file.map(ingredient);
                Map<String, String> said = new LinkedHashMap<>();
                Map<String, Integer> places = new HashMap<>();
                Map<String, String> sources = new HashMap<>();
                for (YamlMap.Entry value : values.entries()) {
                    said.put(value.name(), values.text(value));
                    places.put(value.name(), value.line());
                    sources.put(value.name(), "your recipe, line " + value.line());
                    places.put(ingredient.name() + ", " + value.name(), value.line());
                }
                try {
                    builder.own(ingredient.name(), said, sources);
                } catch (Refusal refusal) {
                    int line = places.getOrDefault(
                            refusal.field(), places.getOrDefault(refusal.read(), ingredient.line()));
                    throw file.refusal(refusal, line);
                }
            }
        }

        private void acidLast(YamlMap.@Nullable Entry entry) {
            if (entry == null) {
                return;
            }
            switch (file.text(entry)) {
                case "true", "yes" -> builder.acidLast(true);
                case "false", "no" -> builder.acidLast(false);
                default ->
                    throw file.refusal(
                            new Refusal("unknown-word", "acid last", file.text(entry), "true or false", ""),
                            entry.line());
            }
        }

        private void line(YamlMap.Entry ingredient, Runnable put) {
            at(ingredient.line(), put);
            lines.put(builder.table().require(ingredient.name()).ingredient().name(), ingredient.line());
        }

        private void each(YamlMap.@Nullable Entry section, Use use) {
            if (section == null) {
                return;
            }
            YamlMap map = file.map(section);
            for (YamlMap.Entry entry : map.entries()) {
                use.of(entry, map.text(entry));
            }
        }

        private void at(int line, Runnable step) {
            try {
                step.run();
            } catch (Refusal refusal) {
                throw refusal.file() == null ? file.refusal(refusal, line) : refusal;
            }
        }

        private static String mend(String key) {
            return switch (key) {
                case "powders", "powder", "Dry" -> "Powders stand under dry:";
                case "liquids", "liquid", "Wet" -> "Liquids and melted fats stand under wet:";
                case "name", "Recipe", "title" -> "The name stands behind recipe:";
                case "own", "ingredients" -> "Your own stand under own ingredients:";
                default -> "Ingredients stand, indented, under dry: or wet:";
            };
        }
    }

    /** What is done with a line. */
    private interface Use {
        void of(YamlMap.Entry ingredient, String text);
    }
}
