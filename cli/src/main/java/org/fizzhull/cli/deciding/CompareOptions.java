package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.CatalogueFile;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.OpenedFiles;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.decide.Mould;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.text.ShapeText;

/** The options that say what is compared, and by what. */
public final class CompareOptions {
    static final String MOULDS = "--moulds";
    public static final String SORT = "--sort";
    private static final String BUILT_IN = "built-in";
    private static final String HOMES = "homes";

    private CompareOptions() {}

    static void add(Options spec) {
        QuestionOptions.addShape(spec);
        CommonOptions.value(
                spec,
                MOULDS,
                "FILE.csv",
                "your catalogue: name, shape, cavities, price, material, note; or built-in: 63 usual sizes");
        CommonOptions.value(
                spec,
                QuestionOptions.BATHS,
                "PANEL",
                "homes: a shallow, deep, cool, hot and salted bath; the worst counts");
        CommonOptions.value(spec, SORT, "WHAT", "what matters to you: float (default), fizz, dry, cost");
        QuestionOptions.addMaking(spec);
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.value(spec, QuestionOptions.MASS, "WEIGHT", "not here: each mould has a weight of its own");
    }

    /** What is compared: every recipe in every mould. */
    static List<Comparison.Candidate> candidates(Arguments arguments) {
        if (arguments.has(QuestionOptions.MASS)) {
            throw arguments.refusal(
                    "no-one-weight",
                    QuestionOptions.MASS,
                    "--recipe lemon.yaml with --press firm, or --density 0.95 g/cm3",
                    "Each mould has a weight of its own: it follows from the mix and how hard it is pressed.");
        }
        if (arguments.has(QuestionOptions.BATH) && arguments.has(QuestionOptions.BATHS)) {
            throw new Refusal(
                    "conflict",
                    QuestionOptions.BATHS,
                    arguments.text(QuestionOptions.BATHS).orElse("") + " and a bath of "
                            + arguments.text(QuestionOptions.BATH).orElse(""),
                    "one of the two",
                    "The panel brings its own baths: leave out --bath.");
        }
        List<Recipe> recipes = MakingOptions.recipes(arguments);
        if (!recipes.isEmpty()
                && !arguments.has(MakingOptions.FILL)
                && !arguments.has(MakingOptions.PRESS)
                && !arguments.has(QuestionOptions.DENSITY)) {
            throw new Refusal(
                    "missing-option",
                    MakingOptions.PRESS,
                    "",
                    "--press firm, --fill 146 g for one mould, or --density 0.95 g/cm3",
                    "Say how hard you press: then each mould's own weight follows. One weight for all moulds says nothing.");
        }
        if (recipes.isEmpty() && !arguments.has(QuestionOptions.DENSITY)) {
            throw new Refusal(
                    "missing-option",
                    MakingOptions.RECIPE,
                    "",
                    "--recipe lemon.yaml with --press firm, or --density 0.95 g/cm3",
                    "A mould alone does not float: say what goes into it.");
        }
        List<Mould> moulds = moulds(arguments);
        if (arguments.has(MakingOptions.FILL) && moulds.size() > 1) {
            throw new Refusal(
                    "conflict",
                    MakingOptions.FILL,
                    arguments.text(MakingOptions.FILL).orElse("") + " for " + moulds.size() + " moulds",
                    "a fill for one mould, or --press firm for several",
                    "Each mould takes a weight of its own; how hard you press is what they share.");
        }
        List<Comparison.Candidate> candidates = new ArrayList<>();
        for (Mould mould : moulds) {
            for (Optional<Blend> blend : blends(recipes)) {
                candidates.add(new Comparison.Candidate(
                        mould,
                        QuestionOptions.read(arguments, QuestionOptions.loaded(arguments, mould.shape()), blend)));
            }
        }
        return candidates;
    }

    private static List<Optional<Blend>> blends(List<Recipe> recipes) {
        List<Optional<Blend>> blends = new ArrayList<>();
        for (Recipe recipe : recipes) {
            blends.add(Optional.of(Blend.of(recipe)));
        }
        return blends.isEmpty() ? List.of(Optional.empty()) : blends;
    }

    private static List<Mould> moulds(Arguments arguments) {
        List<Mould> moulds = new ArrayList<>();
        for (String text : arguments.texts(QuestionOptions.SHAPE)) {
            moulds.add(Mould.of(ShapeText.read(text, new OpenedFiles(arguments.files()))));
        }
        Optional<String> catalogue = arguments.text(MOULDS);
        if (catalogue.isPresent()) {
            moulds.addAll(
                    catalogue.get().equals(BUILT_IN)
                            ? Mould.catalogue()
                            : CatalogueFile.read(
                                    arguments.files(), MOULDS, catalogue.get(), new OpenedFiles(arguments.files())));
        }
        if (moulds.isEmpty()) {
            throw new Refusal(
                    "missing-option",
                    MOULDS,
                    "",
                    "--shape once for each mould, --moulds FILE.csv or --moulds built-in",
                    "Name the moulds to choose from.");
        }
        return moulds;
    }

    /** The baths of the panel; none without the option. */
    static List<Comparison.NamedBath> panel(Arguments arguments) {
        Optional<String> word = arguments.text(QuestionOptions.BATHS);
        if (word.isEmpty()) {
            return List.of();
        }
        if (!word.get().equals(HOMES)) {
            throw new Refusal(
                    "unknown-word",
                    QuestionOptions.BATHS,
                    word.get(),
                    HOMES,
                    "For one bath of your own there is --bath.");
        }
        return Comparison.NamedBath.homes();
    }

    /** What it is sorted by. */
    static Comparison.SortBy sort(Arguments arguments) {
        return arguments
                .word(SORT, Comparison.SortBy.values(), Comparison.SortBy::word, "float, fizz, dry or cost")
                .orElse(Comparison.SortBy.FLOAT);
    }
}
