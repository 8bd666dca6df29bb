package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.quantity.check.Given;
import org.jspecify.annotations.Nullable;

/**
 * Puts a recipe together from names and amounts as a person writes them: masses, cups and spoons, drops, or parts of a
 * total. An example stands at {@link Blend}.
 *
 * <p>The order of the calls matters: own ingredients first, then lines, then prices and limits, which must name an
 * ingredient of the recipe. A line that cannot be used is refused as it comes, so that the caller can add the file and
 * line. {@link #build()} checks the whole. Limits and prices are the user's own; nothing is judged. Not thread-safe.
 */
public final class RecipeBuilder {
    /** Lines of a recipe, and own ingredients: far more than a mix has, few enough to stay fast. */
    static final int MOST_LINES = 100;

    /** Heaviest line, kg: beyond any workshop. */
    private static final double HEAVIEST = 1e4;

    /** Most liquid, kg per kg of powder: with more it is a batter, outside the models of pressing and drying. */
    private static final double MOST_LIQUID = 0.5;

    /** Relative difference up to which a total and the sum of the lines are one: rounded amounts. */
    private static final double SAME_TOTAL = 0.01;

    /** Standard deviations of the liquid up to which {@link #MOST_LIQUID} must hold, so that no draw of a forecast exceeds it. */
    private static final double TAIL = 6;

    private final Measures measures;
    /** Lines so far, powders and liquids in the order they came. */
    private final List<Line> lines = new ArrayList<>();
    /** Ingredients of the lines, by the plain form of the names that the lines have. */
    private final Map<String, Ingredient> written = new HashMap<>();

    private final Map<String, Price> prices = new LinkedHashMap<>();
    /** Largest share of the piece, 0 to 1, by the name of the ingredient. */
    private final Map<String, Double> limits = new LinkedHashMap<>();

    private final List<Notice> notices = new ArrayList<>();
    private final List<Ingredient> own = new ArrayList<>();
    /** The table, with the own ingredients so far. */
    private IngredientTable table;

    private String name = "recipe";
    private boolean acidLast;
    /** Mass of all lines in parts together, kg; of all lines where none is in parts; NaN while none is given. */
    private double total = Double.NaN;

    /**
     * Starts an empty recipe.
     *
     * @param table ingredients known by name
     * @param measures what a cup and the spoons hold
     */
    public RecipeBuilder(IngredientTable table, Measures measures) {
        Given.all("table, measures", table, measures);
        this.table = table;
        this.measures = measures;
    }

    /**
     * Sets the maker's name for the recipe.
     *
     * @param text name to be shown
     * @return this builder
     * @throws Refusal {@code bad-name} for one that is too long or cannot be shown
     */
    public RecipeBuilder name(String text) {
        name = Names.visible("recipe", text);
        return this;
    }

    /**
     * Sets whether the acid goes in after the liquids, which slows the reaction in the bowl (docs/physics/drying.md, 7).
     * Without a call it does not.
     *
     * @param last true where the acid goes in after the liquids
     * @return this builder
     */
    public RecipeBuilder acidLast(boolean last) {
        acidLast = last;
        return this;
    }

    /**
     * Sets the mass that all lines in parts make together: {@code 500 g}. Lines with a mass of their own are not in it; in a
     * recipe without parts it must be the mass of all lines, to 1 %.
     *
     * @param text a mass above 0, at most 10 t, without a spread
     * @return this builder
     * @throws Refusal {@code out-of-range}, or as {@link QuantityText#parseExact}
     */
    public RecipeBuilder total(String text) {
        total = QuantityText.parseExact("total", text, Dimension.MASS);
        if (!(total > 0 && total <= HEAVIEST)) {
            throw new Refusal(
                    "out-of-range", "total", text, "more than 0 g, at most 10 t", "Check the number and its unit.");
        }
        return this;
    }

    /**
     * Adds an ingredient of the user's own, described as {@code true density: 1.42 g/cm3}, {@code like: kaolin} or
     * {@code loose cup: 95 g}; what is not said comes from the table, or from the ingredient it is like.
     *
     * @param ingredient what the user calls it
     * @param values values by key, as written: the names of {@link Property}, {@code like}, {@code sheet}, {@code role},
     *     {@code grain}, {@code caution}, {@code allergen}, {@code loose cup}, {@code tapped cup}, {@code cup}
     * @return this builder
     * @throws Refusal for a key that is none, a value out of range or without unit, or more than 100 own ingredients
     */
    public RecipeBuilder own(String ingredient, Map<String, String> values) {
        return own(ingredient, values, Map.of());
    }

    /**
     * Adds an ingredient of the user's own, with the place of each value for its source.
     *
     * @param ingredient what the user calls it
     * @param values values by key, as written; keys as in {@link #own(String, Map)}
     * @param places where each value stands, by its key: {@code your recipe, line 12}; may be empty
     * @return this builder
     * @throws Refusal for a key that is none, a value out of range or without unit, or more than 100 own ingredients
     */
    public RecipeBuilder own(String ingredient, Map<String, String> values, Map<String, String> places) {
        if (own.size() >= MOST_LINES) {
            throw tooMany("own ingredients", ingredient);
        }
        Ingredient described = OwnIngredient.read(ingredient, values, table, measures, places);
        table = table.with(described);
        own.add(described);
        notices.addAll(OwnIngredient.assumed(described, values));
        return this;
    }

    /** {@return the user's own ingredients, in the order written} */
    public List<Ingredient> own() {
        return List.copyOf(own);
    }

    /**
     * Adds a powder.
     *
     * @param ingredient name as written
     * @param amount mass, volume or parts, as written; a range or {@code +-} gives it a spread
     * @return this builder
     * @throws Refusal for a name that is not one ingredient, an ingredient that stands in the recipe already, an unreadable
     *     or negative amount, more than 10 t or 10 m3, or more than 100 lines
     */
    public RecipeBuilder dry(String ingredient, String amount) {
        return line(ingredient, amount, true);
    }

    /**
     * Adds a liquid or melted fat.
     *
     * @param ingredient name as written
     * @param amount mass, volume, drops or parts, as written; a range or {@code +-} gives it a spread
     * @return this builder
     * @throws Refusal as for {@link #dry}
     */
    public RecipeBuilder wet(String ingredient, String amount) {
        return line(ingredient, amount, false);
    }

    /**
     * Sets what an ingredient costs, in the user's own money: {@code 3.10 / kg}, {@code 4.50 / 500 g}, {@code 2 / 250
     * mL}.
     *
     * @param ingredient name of one in the recipe
     * @param text money for an amount
     * @return this builder
     * @throws Refusal {@code not-in-recipe}, or as the text of a price is refused
     */
    public RecipeBuilder price(String ingredient, String text) {
        Ingredient of = inRecipe(ingredient, "prices");
        prices.put(of.name(), Price.read(of, text, measures));
        return this;
    }

    /**
     * Sets the largest share of the piece that the supplier's sheet allows: {@code 1 %}.
     *
     * @param ingredient name of one in the recipe
     * @param text a share above 0 and up to 100 %
     * @return this builder
     * @throws Refusal {@code out-of-range} for any other share, {@code not-in-recipe} for an ingredient without a line
     */
    public RecipeBuilder limit(String ingredient, String text) {
        Ingredient of = inRecipe(ingredient, "limits");
        double share = QuantityText.parseExact("limits, " + ingredient, text, Dimension.FRACTION);
        if (!(share > 0 && share <= 1)) {
            throw new Refusal(
                    "out-of-range",
                    "limits, " + ingredient,
                    text,
                    "above 0 % up to 100 %",
                    "Copy the share that the supplier's sheet allows.");
        }
        limits.put(of.name(), share);
        return this;
    }

    /** {@return the table with the user's own ingredients} */
    public IngredientTable table() {
        return table;
    }

    /**
     * {@return the recipe} It has a notice for each own ingredient that no line uses.
     *
     * @throws Refusal {@code missing} for parts without a total, {@code conflict} for a total that lines without parts do not
     *     make, {@code too-much-liquid}, {@code misplaced} for a liquid under dry or a powder under wet, {@code empty} for no
     *     powder
     */
    public Recipe build() {
        double parts = 0;
        for (Line line : lines) {
            parts += line.parts;
        }
        if (parts > 0 && Double.isNaN(total)) {
            throw new Refusal(
                    "missing", "total", "", "a mass such as 500 g", "Amounts in parts need a total: total: 500 g.");
        }
        List<Recipe.Part> dry = new ArrayList<>();
        List<Recipe.Part> wet = new ArrayList<>();
        for (Line line : lines) {
            (line.dry ? dry : wet).add(line.part(parts > 0 ? total / parts : 0));
        }
        List<Notice> told = new ArrayList<>(notices);
        for (Ingredient described : own) {
            if (lines.stream().noneMatch(line -> line.ingredient.name().equals(described.name()))) {
                told.add(new Notice(
                        "own-unused",
                        described.name()
                                + " stands under own ingredients and is not in the recipe: it changes nothing."));
            }
        }
        Recipe recipe = new Recipe(name, dry, wet, acidLast, prices, limits, told);
        if (parts == 0 && Math.abs(recipe.mass() - total) > SAME_TOTAL * total) {
            throw new Refusal(
                    "conflict",
                    "total",
                    grams(total),
                    "the " + grams(recipe.mass()) + " that the lines make together",
                    "A total shares out amounts in parts, and no line here is in parts: leave the total out, or correct the lines.");
        }
        return checkedLiquid(recipe);
    }

    /** Refuses more liquid than a damp powder holds, also at the far end of its spread. */
    static Recipe checkedLiquid(Recipe recipe) {
        double variance = recipe.wet().stream()
                .mapToDouble(part -> part.sigma() * part.sigma())
                .sum();
        double most = recipe.wetMass() + TAIL * Math.sqrt(variance);
        if (most > MOST_LIQUID * recipe.dryMass()) {
            throw new Refusal(
                    "too-much-liquid",
                    "wet",
                    grams(most) + " of liquid for " + grams(recipe.dryMass()) + " of powder",
                    "at most half the weight of the powder",
                    "A mix to be pressed takes some 2 to 5 parts of liquid to 100 of powder: check the numbers and their units.");
        }
        return recipe;
    }

    /** For messages: a mass in grams to a tenth. */
    static String grams(double kilograms) {
        return Math.round(kilograms * 1e4) / 10.0 + " g";
    }

    /** For one line or own ingredient more than {@link #MOST_LINES}. */
    private static Refusal tooMany(String section, String ingredient) {
        return new Refusal(
                "too-long",
                section,
                ingredient,
                "at most " + MOST_LINES + " of them in a recipe",
                "Leave out what is not in the bowl, or join what is alike.");
    }

    /** Reads and adds one line: name, amount or parts. Refuses an ingredient that has a line already. */
    private RecipeBuilder line(String ingredient, String text, boolean dry) {
        if (lines.size() >= MOST_LINES) {
            throw tooMany(dry ? "dry" : "wet", ingredient);
        }
        Lookup.Found found = table.require(ingredient, dry);
        if (!found.assumption().isEmpty()) {
            notices.add(new Notice("assumed-ingredient", ingredient + ": " + found.assumption()));
        }
        for (Line other : lines) {
            if (other.ingredient.name().equals(found.ingredient().name())) {
                throw new Refusal(
                        "repeated",
                        ingredient,
                        text,
                        "each ingredient once",
                        "It stands in the recipe already as " + other.ingredient.name() + "; add the two amounts.");
            }
        }
        String field = (dry ? "dry, " : "wet, ") + ingredient;
        String parts = partsOf(text);
        if (parts != null) {
            lines.add(new Line(found.ingredient(), dry, null, BareNumber.read(field, parts)));
        } else {
            lines.add(new Line(found.ingredient(), dry, amount(field, text, measures), 0));
        }
        written.put(Names.plain(ingredient), found.ingredient());
        return this;
    }

    /**
     * {@return the ingredient of the line of that name}
     *
     * @param ingredient name as the line has it, or another that means one ingredient
     * @throws Refusal for a name that is not one ingredient
     */
    public Ingredient ingredient(String ingredient) {
        Ingredient line = written.get(Names.plain(ingredient));
        return line == null ? table.require(ingredient).ingredient() : line;
    }

    /** A mass or a volume of 0 or more, with its spread. */
    static Amount amount(String field, String text, Measures measures) {
        Amount amount = QuantityText.parseAny(field, text, measures, Dimension.MASS, Dimension.VOLUME);
        double most = amount.dimension() == Dimension.MASS ? HEAVIEST : HEAVIEST / 1e3;
        if (!(amount.value() >= 0 && amount.value() <= most)) {
            throw new Refusal(
                    "out-of-range",
                    field,
                    text,
                    amount.value() >= 0 ? "at most 10 t or 10 m3" : "0 g or more",
                    "Check the number and its unit.");
        }
        return amount;
    }

    /** The number before "parts" or "part", as text; null where the amount is in another unit. */
    private static @Nullable String partsOf(String text) {
        String t = text.strip();
        for (String word : new String[] {"parts", "part"}) {
            if (t.endsWith(word)) {
                return t.substring(0, t.length() - word.length()).strip();
            }
        }
        return null;
    }

    /** The ingredient of the line that a price or limit names; refuses where there is no such line. */
    private Ingredient inRecipe(String ingredient, String section) {
        Ingredient wanted = ingredient(ingredient);
        for (Line line : lines) {
            if (line.ingredient.name().equals(wanted.name())) {
                return line.ingredient;
            }
        }
        throw new Refusal(
                "not-in-recipe",
                section + ", " + ingredient,
                ingredient,
                "an ingredient of this recipe",
                "Write it under dry or wet first, by the same name.");
    }

    /** One line: an amount, or, where that is null, a number of parts. */
    private record Line(
            Ingredient ingredient, boolean dry, @Nullable Amount amount, double parts) {
        /** {@return the line as a mass; one part has {@code partMass} kg} */
        Recipe.Part part(double partMass) {
            return amount == null
                    ? new Recipe.Part(ingredient, parts * partMass, 0)
                    : Recipe.Part.of(ingredient, amount);
        }
    }
}
