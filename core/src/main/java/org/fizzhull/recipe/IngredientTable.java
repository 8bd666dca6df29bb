package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fizzhull.quantity.NearName;
import org.fizzhull.quantity.Refusal;

/**
 * The ingredients known by name. Immutable; {@link #standard()} reads the table in the jar anew each time, so its
 * caller keeps it and hands it on.
 */
public final class IngredientTable {
    private static final int NEAREST = 3;

    private final Map<String, Ingredient> byName;
    private final Map<String, List<Ingredient>> meanings;
    private final Map<String, Ingredient> families;
    private final Set<String> kept = new HashSet<>();
    private final Map<String, Lookup.Forbidden> forbidden;
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
     * @param ingredients each once
     * @param forbidden what must not go in, by every name it has
     * @param assumptions what to say aloud when an ingredient is called by its own short name
     */
    public static IngredientTable of(
            List<Ingredient> ingredients, Map<String, Lookup.Forbidden> forbidden, Map<String, String> assumptions) {
        Map<String, Ingredient> byName = new LinkedHashMap<>();
        for (Ingredient ingredient : ingredients) {
            if (byName.put(Names.plain(ingredient.name()), ingredient) != null) {
                throw new IllegalArgumentException(ingredient.name() + " stands twice in the table");
            }
        }
        Map<String, Lookup.Forbidden> plain = new LinkedHashMap<>();
        for (Map.Entry<String, Lookup.Forbidden> entry : forbidden.entrySet()) {
            plain.put(Names.plain(entry.getKey()), entry.getValue());
        }
        Map<String, String> said = new LinkedHashMap<>();
        for (Map.Entry<String, String> entry : assumptions.entrySet()) {
            said.put(Names.plain(entry.getKey()), entry.getValue());
        }
        return new IngredientTable(byName, plain, said);
    }

    /** {@return the table in the jar} */
    public static IngredientTable standard() {
        return TableReader.read();
    }

    /**
     * {@return this table with one more ingredient, or another in place of the one of that name or one of its other
     * names}
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
     * {@return whether an ingredient stands in it under this very name}
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
        List<Lookup.Forbidden> once = new ArrayList<>();
        for (Lookup.Forbidden f : forbidden.values()) {
            if (!once.contains(f)) {
                once.add(f);
            }
        }
        return once;
    }

    /**
     * {@return what a name means: its own name first, then what must not go in, other names, family names, and what
     * looks alike}
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
                    ? new Lookup.Found(
                            kept.contains(plain) ? known.get(0).named(plain) : known.get(0),
                            assumed(plain, known.get(0)))
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
     * {@return the one ingredient of that name} Refuses what is unknown, forbidden or means two things, and says how to
     * mend it.
     *
     * @param name name as the person wrote it
     * @throws Refusal which says what the name may have meant
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
                    "one of: " + String.join(", ", names(two.meanings())),
                    "This name means more than one thing; write which. " + told(two.meanings()));
        }
        List<String> near = ((Lookup.Unknown) found).nearest();
        throw new Refusal(
                "unknown-ingredient",
                "ingredient",
                name,
                "a name from the table or from own ingredients",
                (near.isEmpty()
                                ? "Describe it"
                                : "Did you mean " + String.join(", ", near) + "? If it is another thing, describe it")
                        + " under own ingredients: " + name + ": {like: kaolin, loose cup: 95 g} for a powder, " + name
                        + ": {like: sunflower oil} or {liquid density: 0.92 g/cm3} for a liquid.");
    }

    /**
     * {@return the ingredients whose name, other names or role hold all the words, for a search; in the order of the
     * table}
     *
     * @param words one or more words
     */
    public List<Ingredient> search(String words) {
        String plain = Names.plain(words);
        List<Ingredient> found = new ArrayList<>();
        for (Ingredient ingredient : byName.values()) {
            boolean hit = Names.plain(ingredient.name()).contains(plain)
                    || ingredient.role().words().contains(plain);
            for (String alias : ingredient.aliases()) {
                hit = hit || Names.plain(alias).contains(plain);
            }
            if (hit) {
                found.add(ingredient);
            }
        }
        return found;
    }

    /**
     * Plain loops here and in the reader: a lambda or the equality of a record costs a short command 30 ms of start.
     */
    private void add(String plain, Ingredient ingredient) {
        List<Ingredient> same = meanings.get(plain);
        if (same == null) {
            same = new ArrayList<>();
            meanings.put(plain, same);
        }
        for (Ingredient other : same) {
            if (other.name().equals(ingredient.name())) {
                return;
            }
        }
        same.add(ingredient);
    }

    /** "citric" is as unspecific as "citric acid"; a longer name says which. */
    private String assumed(String plain, Ingredient ingredient) {
        String own = Names.plain(ingredient.name());
        return plain.length() <= own.length() ? assumptions.getOrDefault(own, "") : "";
    }

    private List<String> nearest(String plain) {
        List<String> candidates = new ArrayList<>();
        candidates.addAll(byName.keySet());
        candidates.addAll(meanings.keySet());
        return NearName.among(plain, candidates, NEAREST);
    }

    private static List<String> names(List<Ingredient> ingredients) {
        List<String> names = new ArrayList<>();
        for (Ingredient ingredient : ingredients) {
            names.add(ingredient.name());
        }
        return names;
    }

    private static String told(List<Ingredient> ingredients) {
        StringBuilder text = new StringBuilder();
        for (Ingredient ingredient : ingredients) {
            if (!ingredient.remark().isEmpty()) {
                text.append(text.length() > 0 ? " " : "")
                        .append(ingredient.name())
                        .append(": ")
                        .append(ingredient.remark());
            }
        }
        return text.toString();
    }
}
