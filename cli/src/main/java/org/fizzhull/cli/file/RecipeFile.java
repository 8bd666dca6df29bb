package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.jspecify.annotations.Nullable;

/**
 * A recipe file. Everything that is wrong in it is told at once, each with its line; what only follows from another mistake
 * (a price of a line that could not be read) is not.
 *
 * @param recipe what it says
 * @param table the ingredient table with the file's own ingredients
 * @param own the file's own ingredients, in the order written
 * @param weighed pieces of this mix that were weighed, as written
 * @param described names under the file's own ingredients, which come before those of a bench
 */
public record RecipeFile(
        Recipe recipe, IngredientTable table, List<Ingredient> own, List<WrittenLine> weighed, Set<String> described) {
    private static final List<String> KEYS =
            List.of("recipe", "dry", "wet", "total", "acid last", "prices", "limits", "own ingredients", "weighed");

    /** Whether a line of the recipe is made of a powder of the bench. */
    public boolean takes(OwnPowder powder) {
        return !described.contains(powder.name())
                && recipe.parts().stream()
                        .anyMatch(part -> part.ingredient().name().equals(powder.name()));
    }

    /** Reads one; each refusal names the file and the line. */
    public static RecipeFile read(FileAccess files, String option, String file, Measures measures) {
        return read(files, option, file, measures, List.of());
    }

    /** With powders that were weighed for the whole bench; where the file describes one of them too, the file counts. */
    public static RecipeFile read(
            FileAccess files, String option, String file, Measures measures, List<OwnPowder> powders) {
        YamlMap lines = YamlMap.read(file, TextFile.read(files, option, file));
        return new Reader(file, lines, new RecipeBuilder(IngredientTable.standard(), measures)).recipe(powders);
    }

    /** One reading: own ingredients first, then the lines, then what speaks of the lines. */
    private static final class Reader {
        private final Set<String> described = new HashSet<>();
        private final String name;
        private final YamlMap file;
        private final RecipeBuilder builder;
        private final Map<String, YamlMap.Entry> sections = new HashMap<>();
        private final Map<String, Integer> lines = new HashMap<>();
        private final List<Refusal> wrong = new ArrayList<>();
        private final Set<String> unreadable = new HashSet<>();

        Reader(String name, YamlMap file, RecipeBuilder builder) {
            this.name = name;
            this.file = file;
            this.builder = builder;
            for (YamlMap.Entry entry : file.entries()) {
                if (KEYS.contains(entry.name())) {
                    sections.put(entry.name(), entry);
                } else {
                    wrong.add(file.refusal(
                            new Refusal(
                                    "unknown-key",
                                    entry.name(),
                                    entry.name(),
                                    String.join(", ", KEYS),
                                    mend(entry.name())),
                            entry.line()));
                }
            }
        }

        RecipeFile recipe(List<OwnPowder> powders) {
            YamlMap.Entry called = sections.get("recipe");
            if (called == null) {
                builder.name("recipe");
            } else {
                at(called.line(), () -> builder.name(file.text(called)));
            }
            bench(powders, sections.get("own ingredients"));
            own(sections.get("own ingredients"));
            YamlMap.Entry dry = sections.get("dry");
            if (dry == null) {
                wrong.add(file.refusal(
                        new Refusal(
                                "missing",
                                "dry",
                                "",
                                "the powders under dry:",
                                "Write dry: and below it lines such as   sodium bicarbonate: 300 g"),
                        file.line()));
            }
            each("dry");
            each("wet");
            YamlMap.Entry total = sections.get("total");
            if (total != null) {
                at(total.line(), () -> builder.total(file.text(total)));
            }
            acidLast(sections.get("acid last"));
            each("prices");
            each("limits");
            List<WrittenLine> weighed = weighed(sections.get("weighed"));
            if (!wrong.isEmpty() || dry == null) {
                throw all();
            }
            try {
                return new RecipeFile(builder.build(), builder.table(), builder.own(), weighed, Set.copyOf(described));
            } catch (Refusal whole) {
                int section = sections.getOrDefault(whole.field(), dry).line();
                throw file.refusal(whole, lines.getOrDefault(whole.field(), section));
            }
        }

        /** Everything that is wrong, in the order of the lines. */
        private Refusal all() {
            List<Refusal> sorted = new ArrayList<>(wrong);
            sorted.sort(Comparator.comparingInt(Refusal::line));
            return sorted.get(0).and(sorted.subList(1, sorted.size()));
        }

        private void bench(List<OwnPowder> powders, YamlMap.@Nullable Entry section) {
            if (section != null) {
                map(section).entries().forEach(entry -> described.add(entry.name()));
            }
            for (OwnPowder powder : powders) {
                if (!described.contains(powder.name())) {
                    try {
                        builder.own(powder.name(), powder.said(), powder.places());
                    } catch (Refusal refusal) {
                        wrong.add(refusal.at(powder.file(), powder.line()));
                    }
                }
            }
        }

        private void own(YamlMap.@Nullable Entry section) {
            if (section == null) {
                return;
            }
            for (YamlMap.Entry ingredient : map(section).entries()) {
                Map<String, Integer> places = new HashMap<>();
                try {
                    described(ingredient, places);
                } catch (Refusal refusal) {
                    int line = places.getOrDefault(
                            refusal.field(), places.getOrDefault(refusal.read(), ingredient.line()));
                    wrong(refusal, line);
                    unreadable.add(ingredient.name());
                }
            }
        }

        private void described(YamlMap.Entry ingredient, Map<String, Integer> places) {
            YamlMap values = file.map(ingredient);
            Map<String, String> said = new LinkedHashMap<>();
            Map<String, String> sources = new HashMap<>();
            for (YamlMap.Entry value : values.entries()) {
                said.put(value.name(), values.text(value));
                places.put(value.name(), value.line());
                sources.put(value.name(), "your recipe, line " + value.line());
                places.put(ingredient.name() + ", " + value.name(), value.line());
            }
            builder.own(ingredient.name(), said, sources);
        }

        private void acidLast(YamlMap.@Nullable Entry entry) {
            if (entry == null) {
                return;
            }
            at(entry.line(), () -> {
                switch (file.text(entry)) {
                    case "true", "yes" -> builder.acidLast(true);
                    case "false", "no" -> builder.acidLast(false);
                    default ->
                        throw new Refusal(
                                "unknown-word",
                                "acid last",
                                file.text(entry),
                                "true or false",
                                "Write   acid last: true   where the acid goes in after the liquids.");
                }
            });
        }

        private List<WrittenLine> weighed(YamlMap.@Nullable Entry section) {
            List<WrittenLine> pieces = new ArrayList<>();
            if (section != null) {
                at(section.line(), () -> pieces.addAll(WrittenLine.list(file, section, name)));
            }
            return pieces;
        }

        /** Takes the lines of a section, one for each ingredient; of one that could not be read before no more is told. */
        private void each(String section) {
            YamlMap.Entry written = sections.get(section);
            if (written == null) {
                return;
            }
            YamlMap map = map(written);
            for (YamlMap.Entry entry : map.entries()) {
                try {
                    String text = map.text(entry);
                    if (!unreadable.contains(entry.name())) {
                        take(section, entry, text);
                    }
                } catch (Refusal refusal) {
                    wrong(refusal, entry.line());
                    unreadable.add(entry.name());
                }
            }
        }

        private void take(String section, YamlMap.Entry entry, String text) {
            String ingredient = entry.name();
            switch (section) {
                case "dry" -> builder.dry(ingredient, text);
                case "wet" -> builder.wet(ingredient, text);
                case "prices" -> builder.price(ingredient, text);
                default -> builder.limit(ingredient, text);
            }
            if (section.equals("dry") || section.equals("wet")) {
                lines.put(builder.ingredient(ingredient).name(), entry.line());
            }
        }

        /** The lines of a section; none where they cannot be read, which is told. */
        private YamlMap map(YamlMap.Entry section) {
            try {
                return file.map(section);
            } catch (Refusal refusal) {
                wrong.add(refusal);
                return file.without();
            }
        }

        private void at(int line, Runnable step) {
            try {
                step.run();
            } catch (Refusal refusal) {
                wrong(refusal, line);
            }
        }

        private void wrong(Refusal refusal, int line) {
            wrong.add(refusal.file() == null ? file.refusal(refusal, line) : refusal);
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
}
