package org.fizzhull.cli.deciding;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Adviser;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Lookup;
import org.fizzhull.text.NearName;
import org.fizzhull.uncertainty.Workers;

/** {@code advise}: what is the smallest change that makes it float? */
public final class AdviseCommand implements Command {
    private static final String GOAL = "--goal";

    /** The largest chance to ask for: the draws tell no larger one from certainty. */
    private static final double SUREST = 0.999;

    private static final String KEEP = "--keep";

    @Override
    public String purpose() {
        return "what is the smallest change that makes it float, and what does it cost?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull advise --shape \"sphere(diameter=65 mm)\" --mass 152 g +- 3 g",
            "fizzhull advise --shape \"sphere(diameter=65 mm)\" --recipe cli/src/doc/recipes/lemon.yaml --fill 152 g +- 2 g",
            "fizzhull advise --shape \"sphere(diameter=65 mm)\" --recipe cli/src/doc/recipes/lemon.yaml --press hard --goal"
                    + " \"8 of 10\" --keep \"lemon fragrance\"",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.add(spec);
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.value(
                spec, GOAL, "HOW MANY", "how many are to float to the end, such as \"9 of 10\" (the default)");
        CommonOptions.value(spec, KEEP, "NAME", "an ingredient that stays as it is; may be repeated");
        CommonOptions.value(
                spec, CommonOptions.CHART, "FILE", "writes the picture, a line for each change, .svg or .png");
        CommonOptions.drawing(spec);
        return spec;
    }

    @Override
    public List<String> repeatable() {
        return List.of(KEEP);
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Question question = QuestionOptions.read(arguments);
        Design design = DesignOptions.read(arguments, question);
        Adviser.Goal goal = goal(arguments);
        Sampling sampling = DrawOptions.sampling(arguments);
        Workers workers = DrawOptions.workers(arguments, sampling);
        drawn(sampling);
        FloatPredictor predictor = FloatPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(MeasuredOptions.read(arguments, question));
        IngredientTable table = MakingOptions.table(arguments);
        TypedLine line = arguments.typed().without(GOAL, KEEP);
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Advice advice = Adviser.standard()
                .with(table)
                .with(predictor)
                .with(sampling)
                .with(workers)
                .elsewhere(predictor.with(MeasuredOptions.elsewhere(arguments, question)))
                .keeping(kept(arguments, table, design))
                .with(steps(CommonOptions.units(arguments)))
                .advise(design, goal);
        CommonOptions.end(arguments, new AdviceText(advice, line), chart, () -> AdvicePicture.of(advice), out, err);
    }

    /** Those of the scale and the ruler that the text speaks of. */
    private static Adviser.KitchenSteps steps(ShownUnits units) {
        Adviser.KitchenSteps weights =
                units.mass() == Unit.OUNCE ? Adviser.KitchenSteps.US : Adviser.KitchenSteps.METRIC;
        return weights.across(units.length() == Unit.INCH ? Adviser.KitchenSteps.US : Adviser.KitchenSteps.METRIC);
    }

    static void drawn(Sampling sampling) {
        if (sampling.samples() == 0) {
            throw new Refusal(
                    "out-of-range", CommonOptions.SAMPLES, "0", "128 or more", "Without draws there are no chances.");
        }
    }

    /** Names as the table has them; a name that means nothing is refused. */
    private static Set<String> kept(Arguments arguments, IngredientTable table, Design design) {
        Set<String> names = new LinkedHashSet<>();
        for (String name : arguments.texts(KEEP)) {
            if (table.find(name) instanceof Lookup.Unknown) {
                throw unknown(name, table, design);
            }
            try {
                names.add(table.require(name).ingredient().name());
            } catch (Refusal refusal) {
                throw refusal.of(KEEP);
            }
        }
        return names;
    }

    /** The refusal of a name that nothing has, with those of the recipe. */
    private static Refusal unknown(String name, IngredientTable table, Design design) {
        List<String> own = design.recipe().stream()
                .flatMap(recipe -> recipe.parts().stream())
                .map(part -> part.ingredient().name())
                .toList();
        List<String> all = new ArrayList<>(own);
        table.all().forEach(ingredient -> all.add(ingredient.name()));
        String near = NearName.hint(name, all);
        return new Refusal(
                "unknown-ingredient",
                KEEP,
                name,
                (own.isEmpty() ? "" : NearName.list(own, "or") + " of the recipe, or ")
                        + "a name from the table (fizzhull ingredients lists it)",
                near.isEmpty() ? "Leave out " + KEEP + ", or name what is to stay as it is." : near);
    }

    /** {@code 9 of 10}, {@code 9/10} or {@code 90 %}. */
    private static Adviser.Goal goal(Arguments arguments) {
        String text = arguments.text(GOAL).orElse("9 of 10");
        String plain = text.strip();
        String counted = plain.endsWith("%") ? plain.substring(0, plain.length() - 1) + " of 100" : plain;
        List<String> parts = List.of(counted.split(" of |/", -1));
        if (parts.size() == 2) {
            double many = BareNumber.of(parts.get(0).strip()).orElse(0);
            double all = BareNumber.of(parts.get(1).strip()).orElse(0);
            if (many > 0 && many <= SUREST * all && all <= 1e6) {
                return new Adviser.Goal(many / all);
            }
        }
        throw notAGoal(text);
    }

    private static Refusal notAGoal(String text) {
        return new Refusal(
                "unreadable",
                GOAL,
                text,
                "so many of so many, or per cent, above 0 and at most 999 of 1000",
                "For example --goal \"9 of 10\". No forecast is surer than that of what all pieces do.");
    }
}
