package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.OwnPowder;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeChange;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;

/** The options of what is mixed and how it is put into the mould. */
public final class MakingOptions {
    public static final String RECIPE = "--recipe";
    public static final String FILL = "--fill";
    public static final String PRESS = "--press";
    public static final String CHANGE = "--change";

    private MakingOptions() {}

    public static void add(Options spec) {
        CommonOptions.value(spec, RECIPE, "FILE", "recipe file, such as lemon.yaml");
        CommonOptions.value(spec, CHANGE, "CHANGE", "changes the recipe: kaolin +20 g, water -1 g, corn starch = 30 g");
        CommonOptions.value(spec, FILL, "WEIGHT", "damp mix pressed into one mould, such as 146 g or 146 g +- 3 g");
        CommonOptions.value(
                spec,
                PRESS,
                "HOW",
                "how hard instead: light, firm, hard, the weight you lean on it such as 12 kg, or a pressure such as"
                        + " 30 kPa; say   firm, one plunger   or   firm, two halves   where it is not the usual way of"
                        + " the shape");
        CommonOptions.value(
                spec, CommonOptions.CUPS, "WHOSE", "cups and spoons: us-legal (default), metric, us-customary");
    }

    /** The cups that were chosen. */
    public static Measures cups(Arguments arguments) {
        Optional<String> text = arguments.text(CommonOptions.CUPS);
        return text.isPresent() ? Measures.named(CommonOptions.CUPS, text.get()) : Measures.US_LEGAL;
    }

    /** A recipe file, with the cups of the bench. */
    public static RecipeFile read(Arguments arguments, String file) {
        List<OwnPowder> powders = BenchOption.of(arguments).powders();
        RecipeFile read = RecipeFile.read(arguments.files(), RECIPE, file, cups(arguments), powders);
        for (OwnPowder powder : powders) {
            if (read.takes(powder)) {
                arguments.benchUse().counts(powder);
            } else {
                arguments.benchUse().passed(powder, "not in the recipe, or the recipe describes it itself");
            }
        }
        return read;
    }

    /** The recipe with its changes, if one was named. */
    static Optional<Recipe> recipe(Arguments arguments) {
        List<Recipe> recipes = recipes(arguments);
        return recipes.isEmpty() ? Optional.empty() : Optional.of(recipes.get(0));
    }

    /** The ingredients that the recipe may name, its own among them; the table of the library without a recipe. */
    public static IngredientTable table(Arguments arguments) {
        Optional<String> file = arguments.text(RECIPE);
        return file.isPresent() ? read(arguments, file.get()).table() : IngredientTable.standard();
    }

    /** Every recipe that was named, the changes made to each. */
    public static List<Recipe> recipes(Arguments arguments) {
        List<String> files = arguments.texts(RECIPE);
        List<String> changes = new ArrayList<>();
        for (String text : arguments.texts(CHANGE)) {
            changes.addAll(QuantityText.parts(text));
        }
        if (files.isEmpty() && (!changes.isEmpty() || arguments.has(FILL) || arguments.has(PRESS))) {
            throw missing(!changes.isEmpty() ? CHANGE : arguments.has(FILL) ? FILL : PRESS);
        }
        List<Recipe> recipes = new ArrayList<>();
        for (String file : files) {
            recipes.add(changed(read(arguments, file), changes, cups(arguments)));
        }
        return recipes;
    }

    private static Recipe changed(RecipeFile read, List<String> changes, Measures cups) {
        Recipe recipe = read.recipe();
        for (String change : changes) {
            try {
                for (RecipeChange one : RecipeChange.readAll(change, cups)) {
                    recipe = one.applyTo(recipe, read.table());
                }
            } catch (Refusal refusal) {
                throw refusal.of(CHANGE);
            }
        }
        return recipe;
    }

    /** The recipe of a command that needs one. */
    public static Recipe required(Arguments arguments) {
        return recipe(arguments).orElseThrow(() -> missing(RECIPE));
    }

    /** How the piece was made from a blend, by fill or by press; empty where neither is given. */
    public static Optional<Making> making(Arguments arguments, Blend blend, Shape shape, DryingPlan plan) {
        Optional<String> fill = arguments.text(FILL);
        Optional<String> press = arguments.text(PRESS);
        if (fill.isPresent() && press.isPresent()) {
            throw new Refusal(
                    "conflict",
                    FILL,
                    fill.get() + " and a press of " + press.get(),
                    "either a fill (--fill 146 g) or a press (--press firm)",
                    "Leave out one of the two: each follows from the other.");
        }
        if (fill.isPresent()) {
            Amount mass = Allowed.above(0, Unit.GRAM).parse(FILL, fill.get());
            return Optional.of(new Moulded.Filled(blend, mass.value(), around(mass), plan));
        }
        if (press.isPresent()) {
            return Optional.of(pressed(press.get(), blend, shape, plan));
        }
        return Optional.empty();
    }

    /** Spread of an amount around its value. */
    static Optional<Prior> around(Amount mass) {
        return switch (mass.spread()) {
            case NONE -> Optional.empty();
            case NORMAL -> Optional.of(Priors.normal(0, mass.standardDeviation()));
            case RECTANGULAR -> Optional.of(Priors.uniform(mass.low() - mass.value(), mass.high() - mass.value()));
        };
    }

    private static Moulded.Pressed pressed(String words, Blend blend, Shape shape, DryingPlan plan) {
        List<String> parts = QuantityText.parts(words);
        int last = parts.size() - 1;
        MouldDimensions.Filling filling =
                last == 0 ? MouldDimensions.Filling.usual(shape) : filling(words, parts.get(last));
        String text = last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last));
        PressText press = PressText.read(PRESS, text);
        return new Moulded.Pressed(blend, press.pressure(() -> shape), press.factor(), filling, plan);
    }

    private static MouldDimensions.Filling filling(String words, String how) {
        return switch (how) {
            case "two halves", "2 halves" -> MouldDimensions.Filling.TWO_HALVES;
            case "one plunger", "1 plunger" -> MouldDimensions.Filling.ONE_PLUNGER;
            default ->
                throw new Refusal(
                        "unknown-word",
                        PRESS,
                        words,
                        "behind the comma: two halves or one plunger",
                        "Two halves are each filled and closed on one another; one plunger presses from the open side.");
        };
    }

    private static Refusal missing(String option) {
        return new Refusal(
                "missing-option",
                RECIPE,
                option.equals(RECIPE) ? "" : option + " without a recipe",
                "a recipe file, such as --recipe lemon.yaml",
                "A recipe is a small text file: dry: and below it lines such as   sodium bicarbonate: 300 g");
    }
}
