package org.fizzhull.cli.making;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.IngredientsAnswer;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.ReportFile;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Lookup;
import org.fizzhull.text.PrintableText;

/** {@code ingredients}: the table of ingredients, or what is known of one and where it is from. */
public final class IngredientsCommand implements Command {
    @Override
    public String purpose() {
        return "the ingredients it knows, or every value of one with its source.";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull ingredients",
            "fizzhull ingredients kaolin",
            "fizzhull ingredients clay --json",
            "fizzhull ingredients --recipe cli/src/doc/recipes/lemon.yaml"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CommonOptions.value(spec, MakingOptions.RECIPE, "FILE", "recipe file: its own ingredients too, line by line");
        CommonOptions.value(
                spec, CommonOptions.CUPS, "WHOSE", "cups of that file: us-legal (default), metric, us-customary");
        CommonOptions.reporting(spec);
        return spec;
    }

    @Override
    public String free() {
        return "NAME";
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<RecipeFile> recipe = arguments
                .text(MakingOptions.RECIPE)
                .map(file ->
                        RecipeFile.read(arguments.files(), MakingOptions.RECIPE, file, MakingOptions.cups(arguments)));
        if (recipe.isEmpty() && arguments.has(CommonOptions.CUPS)) {
            throw new Refusal(
                    "missing-option",
                    MakingOptions.RECIPE,
                    CommonOptions.CUPS + " without a recipe",
                    "a recipe file, such as --recipe lemon.yaml",
                    "The table itself holds no cups.");
        }
        IngredientTable table = recipe.map(RecipeFile::table).orElseGet(IngredientTable::standard);
        Optional<String> name = arguments.free();
        List<Notice> notices =
                new ArrayList<>(recipe.map(read -> read.recipe().notices()).orElse(List.of()));
        List<Ingredient> rows = name.isPresent() ? named(table, name.get(), notices) : table.all();
        Function<Boolean, String> text = sources -> name.isPresent()
                ? IngredientsText.of(rows, notices, sources)
                : recipe.map(read -> IngredientsText.ofRecipe(read.recipe(), read.own(), notices, sources))
                        .orElseGet(() -> IngredientsText.list(rows));
        ReportFile.of(arguments).ifPresent(file -> file.write(arguments, text.apply(true), "", ""));
        if (arguments.has(CommonOptions.JSON)) {
            JsonSink.write(out, new IngredientsAnswer(rows, notices));
        } else {
            out.print(CommonOptions.units(arguments).in(text.apply(arguments.has(CommonOptions.EXPLAIN))));
        }
    }

    /** The one of that name, all its meanings, or all whose names or roles hold the words. */
    private static List<Ingredient> named(IngredientTable table, String name, List<Notice> notices) {
        Lookup found = table.find(name);
        if (found instanceof Lookup.Found one) {
            if (!one.assumption().isEmpty()) {
                notices.add(new Notice("assumed-ingredient", one.assumption()));
            }
            return List.of(one.ingredient());
        } else if (found instanceof Lookup.Ambiguous two) {
            notices.add(new Notice(
                    "ambiguous-ingredient", "This name means more than one thing; a recipe must say which."));
            return two.meanings();
        } else if (found instanceof Lookup.Forbidden no) {
            notices.add(new Notice("forbidden-ingredient", "Not for this: " + no.name() + ". " + no.reason()));
            return List.of();
        }
        List<Ingredient> hits = table.search(name);
        if (hits.isEmpty()) {
            table.require(name);
        }
        notices.add(new Notice(
                "found-by-part",
                "No ingredient is called " + PrintableText.of(name)
                        + ": what stands here has these letters in a name or a role, and may be another substance."));
        return hits;
    }
}
