package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BathedPieces;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.DryingLogs;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.cli.option.Unfit;
import org.fizzhull.cli.option.WeighedOptions;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * What was measured on pieces of a mould that each names, {@code --measured-lift "151 g after 5 s at 142 g in
 * sphere(diameter=65 mm)"}: it informs what all rows of a comparison share.
 */
final class CompareMeasured {
    private final Arguments arguments;
    private final List<Comparison.Candidate> candidates;
    private final List<Recipe> recipes;
    private final List<Shape> moulds;
    private final List<Notice> notices = new ArrayList<>();

    private CompareMeasured(Arguments arguments, List<Comparison.Candidate> candidates) {
        this.arguments = arguments;
        this.candidates = candidates;
        recipes = MakingOptions.recipes(arguments);
        moulds = candidates.stream()
                .map(candidate -> candidate.question().shape().bare())
                .distinct()
                .toList();
    }

    /**
     * What was measured, for the predictor of the candidates.
     *
     * @param told takes what is to be said of it
     */
    static List<Observations.MeasuredPieces> read(
            Arguments arguments, List<Comparison.Candidate> candidates, List<Notice> told) {
        CompareMeasured measured = new CompareMeasured(arguments, candidates);
        List<Observations.MeasuredPieces> pieces = measured.pieces();
        told.addAll(measured.notices);
        return pieces;
    }

    private List<Observations.MeasuredPieces> pieces() {
        BenchOption.asked(arguments, moulds);
        BathedPieces bathed = BathedPieces.walk(arguments, moulds, true);
        if (bathed.passed() > 0) {
            notices.add(new Notice(
                    "bathed-of-several",
                    bathed.passed() + (bathed.passed() > 1 ? " measurements" : " measurement")
                            + " in the bath of the bench file cannot count here: one is of one recipe, one bath that fizzes and"
                            + " one mould, which stands behind it, as in 95 s at 150 g in sphere(diameter=65 mm)."));
        }
        if (recipes.size() > 1) {
            arguments.texts(MeasuredOptions.WEIGHED).forEach(text -> {
                throw Unfit.severalRecipes(recipes.size()).refusal(MeasuredOptions.WEIGHED, text);
            });
            return ofRecipes();
        }
        Map<Shape, Observations> byMould = new LinkedHashMap<>(bathed.byMould());
        weighed().ifPresent(pieces -> {
            Shape first = byMould.isEmpty()
                    ? moulds.get(0)
                    : byMould.keySet().iterator().next();
            byMould.put(first, byMould.getOrDefault(first, Observations.none()).weighed(pieces));
        });
        Question first = candidates.get(0).question();
        Observations logs = DryingLogs.and(arguments, first, byMould.getOrDefault(moulds.get(0), Observations.none()));
        if (!logs.isEmpty()) {
            byMould.put(moulds.get(0), logs);
        }
        List<Observations.MeasuredPieces> pieces = new ArrayList<>();
        byMould.forEach((mould, seen) -> pieces.add(new Observations.MeasuredPieces(like(mould), seen)));
        return pieces;
    }

    /** The question whose pieces were measured: that of the row of the mould, or the same in another mould. */
    private Question like(Shape mould) {
        Optional<Blend> blend = recipes.isEmpty() ? Optional.empty() : Optional.of(Blend.of(recipes.get(0)));
        return candidates.stream()
                .map(Comparison.Candidate::question)
                .filter(question -> question.shape().bare().equals(mould))
                .findFirst()
                .orElseGet(() -> QuestionOptions.read(arguments, QuestionOptions.loaded(arguments, mould), blend));
    }

    /** Pieces on the scale that say which mould they came from, or came from the only one. */
    private Optional<WeighedPiece> weighed() {
        if (!arguments.has(MakingOptions.PRESS)
                && arguments.texts(MeasuredOptions.WEIGHED).isEmpty()) {
            WeighedOptions.passed(arguments, "they tell how a press answers, and these pieces are not pressed");
            return Optional.empty();
        }
        return WeighedOptions.weighed(arguments, () -> QuestionOptions.shape(arguments))
                .flatMap(first -> named(first, ""));
    }

    /** Of several recipes each brings the pieces that its own file has. */
    private List<Observations.MeasuredPieces> ofRecipes() {
        if (!BenchOption.of(arguments).weighed().isEmpty()) {
            WeighedOptions.passed(arguments, "several recipes are compared");
            notices.add(
                    new Notice(
                            "weighed-of-several",
                            "The weighed pieces of the bench file do not count: nobody knows of which of these recipes they are."));
        }
        List<Observations.MeasuredPieces> pieces = new ArrayList<>();
        List<String> files = arguments.texts(MakingOptions.RECIPE);
        for (int i = 0; i < files.size() && arguments.has(MakingOptions.PRESS); i++) {
            String name = recipes.get(i).name();
            Question like = candidates.get(i).question(); // those of the first mould stand first, in their order
            WeighedOptions.ofRecipe(arguments, files.get(i), () -> QuestionOptions.shape(arguments))
                    .flatMap(first -> named(first, name))
                    .ifPresent(piece -> pieces.add(new Observations.MeasuredPieces(
                            like, Observations.none().weighed(piece))));
        }
        return pieces;
    }

    private Optional<WeighedPiece> named(WeighedPiece first, String recipe) {
        List<WeighedPiece> all = new ArrayList<>(List.of(first.and(List.of())));
        all.addAll(first.others());
        boolean one = moulds.size() == 1;
        List<WeighedPiece> kept =
                all.stream().filter(piece -> one || piece.shape().isPresent()).toList();
        if (kept.size() < all.size()) {
            arguments.texts(MeasuredOptions.WEIGHED).stream().findFirst().ifPresent(text -> {
                throw Unfit.withoutMould(text).refusal(MeasuredOptions.WEIGHED, text);
            });
            notices.add(new Notice(
                    "weighed-without-mould",
                    (all.size() - kept.size()) + " weighed piece" + (all.size() - kept.size() > 1 ? "s" : "")
                            + (recipe.isEmpty() ? "" : " of " + recipe)
                            + " of no named mould do not count: several moulds are compared. Write the mould behind the"
                            + " weight, as in 146 g at firm in sphere(diameter=65 mm)."));
        }
        return kept.isEmpty() ? Optional.empty() : Optional.of(kept.get(0).and(kept.subList(1, kept.size())));
    }
}
