package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.text.NearName;

/**
 * The ingredients known by name, and what a name as a person writes it may mean.
 *
 * <p>A name is looked up in this order, the first that fits wins: the ingredient's own name; what must not go in
 * ({@link Lookup.Forbidden}); other names, which may mean several ingredients ({@link Lookup.Ambiguous}); family names,
 * where {@code lemon fragrance} is the ingredient fragrance under that name; else the names that look alike
 * ({@link Lookup.Unknown}). Case, hyphens and the two spellings of sulfur do not matter. Nothing is guessed: {@link #require}
 * refuses whatever is not one ingredient.
 *
 * <p>Immutable and safe to share between threads. {@link #standard()} reads the table in the jar anew each time, so its
 * caller keeps it and hands it on.
 *
 * <pre>{@code
 * IngredientTable table = IngredientTable.standard();
 * Ingredient clay = table.require("kaolin").ingredient();
 * double density = clay.value(Property.TRUE_DENSITY); // kg/m3
 * }</pre>
 */
public final class IngredientTable {
    /** Names that look alike, offered at most. */
    private static final int NEAREST = 3;

    /** Ingredients by their own name in plain form ({@link Names#plain}), in the order of the table. */
    private final Map<String, Ingredient> byName;
    /** What each other name means, by its plain form; more than one where it is ambiguous. */
    private final Map<String, List<Ingredient>> meanings;
    /** Ingredient of each family name: the last words of a name, any word before them. */
    private final Map<String, Ingredient> families;
    /**
     * Plain names that stay as a recipe writes them (aliases marked {@code ~}): lavender oil and lemon oil are both essential
     * oil, and may stand in one recipe.
     */
    private final Set<String> kept = new HashSet<>();
    /** What must not go in, by the plain form of each of its names. */
    private final Map<String, Lookup.Forbidden> forbidden;
    /** What is taken for granted of an ingredient called by its own short name, by the plain form of that name. */
    private final Map<String, String> assumptions;

    private IngredientTable(
            Map<String, Ingredient> byName, Map<String, Lookup.Forbidden> forbidden, Map<String, String> assumptions) {
        this.byName = byName;
        this.forbidden = forbidden;
        this.assumptions = assumptions;
        this.meanings = new LinkedHashMap<>();
        this.families = new LinkedHashMap<>();
        for (Ingredient ingredient : byName.values()) {
            for (String alias : ingredient.aliases()) {
                if (alias.startsWith("* ")) {
                    families.put(Names.plain(alias.substring(1)), ingredient);
                } else if (alias.startsWith("~ ")) {
                    String plain = Names.plain(alias.substring(1));
                    kept.add(plain);
                    add(plain, ingredient);
                } else {
                    add(Names.plain(alias), ingredient);
                }
            }
        }
    }

    /**
     * {@return a table of ingredients}
     *
     * @param ingredients the ingredients, each name once
     * @param forbidden what must not go in, by every name it has
     * @param assumptions sentence to be told when an ingredient is called by its own short name, by that name
     * @throws IllegalArgumentException for two ingredients of one name
     */
    public static IngredientTable of(
            List<Ingredient> ingredients, Map<String, Lookup.Forbidden> forbidden, Map<String, String> assumptions) {
        Map<String, Ingredient> byName = new LinkedHashMap<>();
        for (Ingredient ingredient : ingredients) {
            if (byName.put(Names.plain(ingredient.name()), ingredient) != null) {
                throw new IllegalArgumentException(ingredient.name() + " stands twice in the table");
            }
        }
        return new IngredientTable(byName, plainly(forbidden), plainly(assumptions));
    }

    /** The same by the plain form of each name. */
    private static <T> Map<String, T> plainly(Map<String, T> named) {
        Map<String, T> plain = new LinkedHashMap<>();
        named.forEach((name, value) -> plain.put(Names.plain(name), value));
        return plain;
    }

    /** {@return the table in the jar: ingredients, values with spread and source, what is refused; read anew at each call} */
    public static IngredientTable standard() {
        return TableReader.read();
    }

    /**
     * {@return this table with one more ingredient} It takes the place of the ingredient of the same name, and of any whose own
     * name is among its other names.
     *
     * @param own the ingredient to add
     */
    public IngredientTable with(Ingredient own) {
        Map<String, Ingredient> more = new LinkedHashMap<>(byName);
        for (String alias : own.aliases()) {
            more.remove(Names.plain(alias));
        }
        more.put(Names.plain(own.name()), own);
        return new IngredientTable(more, forbidden, assumptions);
    }

    /**
     * {@return whether an ingredient has this very name, other names not counted}
     *
     * @param name name as written; capitals and blanks do not matter
     */
    public boolean holds(String name) {
        return byName.containsKey(Names.plain(name));
    }

    /** {@return all ingredients, in the order of the table} */
    public List<Ingredient> all() {
        return List.copyOf(byName.values());
    }

    /** {@return all names that must not go in, once each} */
    public List<Lookup.Forbidden> forbidden() {
        return forbidden.values().stream().distinct().toList();
    }

    /**
     * {@return what a name means, in the order that the class names}
     *
     * @param name name as the person wrote it
     */
    public Lookup find(String name) {
        String plain = Names.plain(name);
        Ingredient exact = byName.get(plain);
        if (exact != null) {
            return new Lookup.Found(exact, assumptions.getOrDefault(plain, ""));
        }
        Lookup.Forbidden no = forbidden.get(plain);
        if (no != null) {
            return no;
        }
        List<Ingredient> known = meanings.get(plain);
        if (known != null) {
            return known.size() == 1
                    ? new Lookup.Found(called(plain, known.get(0)), assumed(plain, known.get(0)))
                    : new Lookup.Ambiguous(List.copyOf(known));
        }
        for (Map.Entry<String, Ingredient> family : families.entrySet()) {
            if (plain.endsWith(" " + family.getKey())) {
                return new Lookup.Found(family.getValue().named(plain), "");
            }
        }
        return new Lookup.Unknown(nearest(plain));
    }

    /**
     * {@return the one ingredient of that name, with what was taken for granted}
     *
     * @param name name as the person wrote it
     * @throws Refusal {@code forbidden-ingredient}, {@code ambiguous-ingredient} or {@code unknown-ingredient}, which says
     *     what the name may have meant and how to mend it
     */
    public Lookup.Found require(String name) {
        Lookup found = find(name);
        if (found instanceof Lookup.Found one) {
            return one;
        }
        if (found instanceof Lookup.Forbidden no) {
            throw new Refusal("forbidden-ingredient", "ingredient", name, "anything but " + no.name(), no.reason());
        }
        if (found instanceof Lookup.Ambiguous two) {
            throw new Refusal(
                    "ambiguous-ingredient",
                    "ingredient",
                    name,
                    "one of: " + two.meanings().stream().map(Ingredient::name).collect(Collectors.joining(", ")),
                    "This name means more than one thing; write which. " + told(two.meanings()));
        }
        List<String> near = ((Lookup.Unknown) found).nearest();
        // a line is proposed with the name only where it can stand in a recipe file as it is
        String key = name.matches("\\p{L}[\\p{L}\\p{N} .'()-]*") ? name.strip() : "its name";
        throw new Refusal(
                "unknown-ingredient",
                "ingredient",
                name,
                "a name from the table (fizzhull ingredients lists it) or from own ingredients",
                (near.isEmpty()
                                ? "Describe it"
                                : "Did you mean " + String.join(", ", near) + "? If it is another thing, describe it")
                        + " under own ingredients: " + key + ": {like: kaolin, loose cup: 95 g} for a powder, " + key
                        + ": {like: sunflower oil} or {liquid density: 0.92 g/cm3} for a liquid.");
    }

    /**
     * {@return the one ingredient of that name that may stand in a section of a recipe, with what was taken for granted}
     * Where a name means several and one alone of them is a powder, or a liquid, it is that one, and that is told.
     *
     * @param name name as the person wrote it
     * @param dry true for a powder, false for a liquid or a melted fat
     * @throws Refusal as {@link #require(String)}
     */
    Lookup.Found require(String name, boolean dry) {
        if (find(name) instanceof Lookup.Ambiguous several) {
            List<Ingredient> fit = several.meanings().stream()
                    .filter(meaning ->
                            dry ? meaning.role().mayBeDry() : meaning.role().mayBeWet())
                    .toList();
            if (fit.size() == 1) {
                String told = "Taken as " + fit.get(0).name() + ", the only " + (dry ? "powder" : "liquid")
                        + " of that name.";
                return new Lookup.Found(called(Names.plain(name), fit.get(0)), told);
            }
        }
        return require(name);
    }

    /**
     * {@return the ingredients whose name, another name or role contains the text, in the order of the table; empty where
     * none does}
     *
     * @param words part of a name or role; looked for as one piece, not word by word
     */
    public List<Ingredient> search(String words) {
        Given.all("words", words);
        String plain = Names.plain(words);
        return byName.values().stream()
                .filter(ingredient -> Names.plain(ingredient.name()).contains(plain)
                        || ingredient.role().words().contains(plain)
                        || ingredient.aliases().stream()
                                .anyMatch(alias -> Names.plain(alias).contains(plain)))
                .toList();
    }

    /** Adds a meaning to a name, once for each ingredient. */
    private void add(String plain, Ingredient ingredient) {
        List<Ingredient> same = meanings.computeIfAbsent(plain, name -> new ArrayList<>());
        if (same.stream().noneMatch(other -> other.name().equals(ingredient.name()))) {
            same.add(ingredient);
        }
    }

    /** The ingredient, under the name it was called by where that name stays as written. */
    private Ingredient called(String plain, Ingredient ingredient) {
        return kept.contains(plain) ? ingredient.named(plain) : ingredient;
    }

    /** The sentence to be told, or empty: "citric" is as unspecific as "citric acid"; a longer name says which. */
    private String assumed(String plain, Ingredient ingredient) {
        String own = Names.plain(ingredient.name());
        return plain.length() <= own.length() ? assumptions.getOrDefault(own, "") : "";
    }

    /** Names of ingredients that look like this one, nearest first. */
    private List<String> nearest(String plain) {
        List<String> candidates = new ArrayList<>(byName.keySet());
        candidates.addAll(meanings.keySet());
        return NearName.among(plain, candidates, NEAREST);
    }

    /** The remarks of all meanings, each behind its ingredient's name, to help with the choice. */
    private static String told(List<Ingredient> ingredients) {
        return ingredients.stream()
                .filter(ingredient -> !ingredient.remark().isEmpty())
                .map(ingredient -> ingredient.name() + ": " + ingredient.remark())
                .collect(Collectors.joining(" "));
    }
}
