package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.OpenedFiles;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.decide.compare.Candidate;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.MeasuredPieces;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.text.ShapeText;

/**
 * What was measured on pieces of a mould that each names, {@code --measured-lift "151 g after 5 s at 142 g in
 * sphere(diameter=65 mm)"}: it informs what all rows of a comparison share.
 */
final class CompareMeasured {
    private final Arguments arguments;
    private final List<Candidate> candidates;
    private final List<Recipe> recipes;

    /** By the mould that was named; empty for the only mould there is. */
    private final Map<String, Observations> byMould = new LinkedHashMap<>();

    private final List<Notice> notices = new ArrayList<>();

    private CompareMeasured(Arguments arguments, List<Candidate> candidates) {
        this.arguments = arguments;
        this.candidates = candidates;
        recipes = MakingOptions.recipes(arguments);
    }

    /**
     * What was measured, for the predictor of the candidates.
     *
     * @param told takes what is to be said of it
     */
    static List<MeasuredPieces> read(Arguments arguments, List<Candidate> candidates, List<Notice> told) {
        CompareMeasured measured = new CompareMeasured(arguments, candidates);
        List<MeasuredPieces> pieces = measured.pieces();
        told.addAll(measured.notices);
        return pieces;
    }

    private List<MeasuredPieces> pieces() {
        for (String option : MeasuredOptions.BATHED) {
            for (String text : arguments.texts(option)) {
                oneMix(option, text);
                oneBath(option, text);
                add(option, text);
            }
        }
        ofBench();
        arguments.texts(MeasuredOptions.WEIGHED).forEach(text -> oneMix(MeasuredOptions.WEIGHED, text));
        if (recipes.size() > 1) {
            return ofRecipes();
        }
        Optional<WeighedPiece> weighed = weighed();
        if (weighed.isPresent()) {
            String first = byMould.isEmpty() ? "" : byMould.keySet().iterator().next();
            byMould.put(first, byMould.getOrDefault(first, Observations.none()).weighed(weighed.get()));
        }
        List<MeasuredPieces> pieces = new ArrayList<>();
        byMould.forEach((mould, seen) -> pieces.add(new MeasuredPieces(like(mould), seen)));
        return pieces;
    }

    /** One measurement of a piece in the bath, of the mould it names or of the only one. */
    private void add(String option, String text) {
        int in = MeasuredOptions.mouldAt(text);
        String mould = in == text.length()
                ? only(option, text)
                : text.substring(in + MeasuredOptions.IN.length()).strip();
        Observations before = byMould.getOrDefault(mould, Observations.none());
        byMould.put(mould, MeasuredOptions.bathed(before, option, text.substring(0, in)));
    }

    /** What the bench file has of pieces in the bath, where it can be known of which mix, mould and bath it is. */
    private void ofBench() {
        int unused = 0;
        for (BenchFile.Measured measured : BenchOption.of(arguments).measured()) {
            String text = measured.piece().text();
            boolean ofMould = moulds() == 1 || MeasuredOptions.mouldAt(text) < text.length();
            if (!ofMould || recipes.size() > 1 || arguments.has(CompareOptions.BATHS)) {
                unused++;
            } else if (!arguments.has(QuestionOptions.NO_FIZZ)) {
                try {
                    add(MeasuredOptions.option(measured.key()), text);
                } catch (Refusal refusal) {
                    throw measured.here(refusal);
                }
            }
        }
        if (unused > 0) {
            notices.add(new Notice(
                    "bathed-of-several",
                    unused + (unused > 1 ? " measurements" : " measurement")
                            + " in the bath of the bench file cannot count here: one is of one recipe, one bath and one mould,"
                            + " which stands behind it, as in 95 s at 150 g in sphere(diameter=65 mm)."));
        }
    }

    /** The question whose pieces were measured: that of the row of the mould, or the same in another mould. */
    private Question like(String mould) {
        Question first = candidates.get(0).question();
        if (mould.isEmpty()) {
            return first;
        }
        Optional<Blend> blend = recipes.isEmpty() ? Optional.empty() : Optional.of(Blend.of(recipes.get(0)));
        return QuestionOptions.read(
                arguments,
                QuestionOptions.loaded(arguments, ShapeText.read(mould, new OpenedFiles(arguments.files()))),
                blend);
    }

    /** Pieces on the scale that say which mould they came from, or came from the only one. */
    private Optional<WeighedPiece> weighed() {
        if (!arguments.has(MakingOptions.PRESS)
                && arguments.texts(MeasuredOptions.WEIGHED).isEmpty()) {
            return Optional.empty();
        }
        return MeasuredOptions.weighed(arguments).flatMap(first -> named(first, ""));
    }

    /** Of several recipes each brings the pieces that its own file has. */
    private List<MeasuredPieces> ofRecipes() {
        if (!BenchOption.of(arguments).weighed().isEmpty()) {
            notices.add(
                    new Notice(
                            "weighed-of-several",
                            "The weighed pieces of the bench file do not count: nobody knows of which of these recipes they are."));
        }
        List<MeasuredPieces> pieces = new ArrayList<>();
        List<String> files = arguments.texts(MakingOptions.RECIPE);
        for (int i = 0; i < files.size() && arguments.has(MakingOptions.PRESS); i++) {
            String name = recipes.get(i).name();
            Question like = candidates.get(i).question(); // those of the first mould stand first, in their order
            MeasuredOptions.weighed(arguments, files.get(i))
                    .flatMap(first -> named(first, name))
                    .ifPresent(piece -> pieces.add(
                            new MeasuredPieces(like, Observations.none().weighed(piece))));
        }
        return pieces;
    }

    private Optional<WeighedPiece> named(WeighedPiece first, String recipe) {
        List<WeighedPiece> all = new ArrayList<>(List.of(first.and(List.of())));
        all.addAll(first.others());
        boolean one = moulds() == 1;
        List<WeighedPiece> kept =
                all.stream().filter(piece -> one || piece.shape().isPresent()).toList();
        if (kept.size() < all.size()) {
            if (!arguments.texts(MeasuredOptions.WEIGHED).isEmpty()) {
                only(
                        MeasuredOptions.WEIGHED,
                        arguments.texts(MeasuredOptions.WEIGHED).get(0));
            }
            notices.add(new Notice(
                    "weighed-without-mould",
                    (all.size() - kept.size()) + " weighed piece" + (all.size() - kept.size() > 1 ? "s" : "")
                            + (recipe.isEmpty() ? "" : " of " + recipe)
                            + " of no named mould do not count: several moulds are compared. Write the mould behind the"
                            + " weight, as in 146 g at firm in sphere(diameter=65 mm)."));
        }
        return kept.isEmpty() ? Optional.empty() : Optional.of(kept.get(0).and(kept.subList(1, kept.size())));
    }

    private long moulds() {
        return candidates.stream()
                .map(candidate -> candidate.question().shape().text())
                .distinct()
                .count();
    }

    /** A measurement without a mould is that of the only one; refused where there are several. */
    private String only(String option, String text) {
        if (moulds() > 1) {
            throw new Refusal(
                    "missing-value",
                    option,
                    text,
                    "the mould of that piece behind it, such as " + text + " in sphere(diameter=65 mm)",
                    "Several moulds are compared: say which of them, or which other mould, it came from.");
        }
        return "";
    }

    private void oneMix(String option, String text) {
        if (recipes.size() > 1) {
            throw new Refusal(
                    "conflict",
                    option,
                    text + " for " + recipes.size() + " recipes",
                    "one recipe",
                    "A measurement is of one mix. Compare the moulds of one recipe, or write it into a sheet of trials and"
                            + " learn from that: --bench bench.yaml.");
        }
    }

    private void oneBath(String option, String text) {
        if (arguments.has(CompareOptions.BATHS)) {
            throw new Refusal(
                    "conflict",
                    option,
                    text + " and several baths",
                    "one of the two",
                    "A measurement is of one bath: leave --baths away, or learn from it (--bench bench.yaml).");
        }
        if (arguments.has(QuestionOptions.NO_FIZZ)) {
            throw new Refusal(
                    "conflict",
                    option,
                    text + " and " + QuestionOptions.NO_FIZZ,
                    "one of the two",
                    "Still water neither fizzes nor lifts a sunk piece: leave one of them away.");
        }
    }
}
