package org.fizzhull.cli.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.fizzhull.answer.body.LearnAnswer.Unused;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.learn.Trial;
import org.fizzhull.medium.Bath;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.shape.text.ShapeText;

/**
 * A trials sheet: a table whose first line names columns and units, with commas or semicolons. Only mould, one weight and
 * result must be filled. In a table with commas a shape stands in double quotes; a recipe file is looked for beside the
 * sheet. Lines that are empty or begin with # are passed over.
 *
 * @param trials one of each row
 * @param unused columns that are filled but tell the learning nothing
 */
public record TrialsFile(List<Trial> trials, List<Unused> unused) {
    private static final List<String> READ = List.of(
            "mould",
            "recipe",
            "fill_g",
            "bath_g",
            "bath_C",
            "result",
            "rose_after_s",
            "fizz_s",
            "press",
            "lift_g",
            "lift_after_s",
            "left_mm",
            "mould_water_g");

    /** Columns that a maker may keep for herself. */
    private static final List<String> KEPT = List.of("name", "note");

    private static final String WEIGH_LATE =
            "weigh each piece just before it goes into the bath and write bath_g, which has in it what drying left.";

    /** Columns that are of no use, and what to write in their place. */
    private static final List<Unused> USELESS = List.of(
            new Unused("dried_d", WEIGH_LATE),
            new Unused("room_C", WEIGH_LATE),
            new Unused("room_percent", WEIGH_LATE),
            new Unused("across_mm", "fill the mould with water, weigh that, and write it as mould_water_g."));

    private static final String HEADER =
            "a first line such as mould, bath_g, result, bath_C, fizz_s, lift_g, lift_after_s";

    private static final double HOTTEST = 60;

    /** Copies the lists. */
    public TrialsFile {
        trials = List.copyOf(trials);
        unused = List.copyOf(unused);
    }

    /** Reads one, its recipes with the cups of the bench; each refusal names the file, the line and the column. */
    public static TrialsFile read(
            FileAccess files, String option, String file, ShapeFiles shapes, Measures cups, List<OwnPowder> powders) {
        Map<String, Blend> recipes = new HashMap<>();
        return new Reader(
                        shapes,
                        name -> recipes.computeIfAbsent(name, recipe -> {
                            Path beside = Path.of(file).resolveSibling(recipe);
                            return Blend.of(RecipeFile.read(files, option, beside.toString(), cups, powders)
                                    .recipe());
                        }))
                .read(CsvTable.of(TextFile.read(files, option, file), file, "trials"));
    }

    /** Reads one sheet. */
    private static final class Reader {
        private final ShapeFiles shapes;
        private final Function<String, Blend> blends;
        private final Set<Unused> unused = new LinkedHashSet<>();

        Reader(ShapeFiles shapes, Function<String, Blend> blends) {
            this.shapes = shapes;
            this.blends = blends;
        }

        TrialsFile read(CsvTable table) {
            List<String> known = new ArrayList<>(READ);
            USELESS.forEach(column -> known.add(column.name()));
            known.addAll(KEPT);
            table.only(known, String.join(", ", known), "The unit stands in the name of the column.");
            String needed = "mould, one of bath_g and fill_g, and result are needed.";
            table.needs("mould", HEADER, needed);
            table.needs("result", HEADER, needed);
            if (!table.has("fill_g")) {
                table.needs("bath_g", HEADER, needed);
            }
            List<Trial> trials = new ArrayList<>();
            for (CsvTable.Row row : table.rows("trials", HEADER + "; then a piece in each line")) {
                trials.add(trial(row));
            }
            return new TrialsFile(trials, List.copyOf(unused));
        }

        private Trial trial(CsvTable.Row row) {
            USELESS.stream()
                    .filter(column -> !row.cell(column.name()).isEmpty())
                    .forEach(unused::add);
            try {
                Shape shape = ShapeText.read(row.needed("mould"), shapes);
                String recipe = row.cell("recipe");
                return new Trial(
                        "row in line " + row.line(),
                        shape,
                        grams(row, "mould_water_g"),
                        recipe.isEmpty() ? Optional.empty() : Optional.of(blends.apply(recipe)),
                        grams(row, "fill_g"),
                        pressure(row),
                        grams(row, "bath_g"),
                        bath(row),
                        result(row),
                        number(row, "rose_after_s"),
                        millimetres(row, "left_mm"),
                        number(row, "fizz_s"),
                        grams(row, "lift_g"),
                        number(row, "lift_after_s"));
            } catch (Refusal refusal) {
                throw row.placed(refusal);
            }
        }

        private static Bath bath(CsvTable.Row row) {
            OptionalDouble celsius = number(row, "bath_C");
            if (celsius.isEmpty()) {
                return Bath.at(Question.DEFAULT_TEMPERATURE);
            }
            if (!(celsius.getAsDouble() <= HOTTEST)) {
                throw row.refusal(
                        "out-of-range", "bath_C", celsius.getAsDouble() + "", "at most 60", "In degrees Celsius.");
            }
            return Bath.at(Units.celsius(celsius.getAsDouble()));
        }

        /** Pressure that the word of a hand stands for; the learner takes every press as one of that hand. */
        private static OptionalDouble pressure(CsvTable.Row row) {
            String word = row.cell("press");
            if (word.isEmpty()) {
                return OptionalDouble.empty();
            }
            try {
                return OptionalDouble.of(PressWord.named(word).pressure());
            } catch (Refusal refusal) {
                throw row.refusal(
                        refusal.code(),
                        "press",
                        word,
                        "light, firm or hard",
                        "Of a known weight or pressure write under weighed in the recipe file: 60 g at 30 kPa in"
                                + " puck(diameter=40 mm, height=47 mm).");
            }
        }

        private static DroppedPiece.Result result(CsvTable.Row row) {
            String word = row.needed("result");
            return DroppedPiece.Result.named(word.toLowerCase(Locale.ROOT))
                    .orElseThrow(() -> row.refusal(
                            "unknown-word",
                            "result",
                            word,
                            "floated, rose or sank",
                            "floated: up within 20 s; rose: sank first and came up later."));
        }

        private static OptionalDouble grams(CsvTable.Row row, String column) {
            OptionalDouble value = number(row, column);
            return value.isPresent() ? OptionalDouble.of(Units.grams(value.getAsDouble())) : value;
        }

        private static OptionalDouble millimetres(CsvTable.Row row, String column) {
            OptionalDouble value = number(row, column);
            return value.isPresent() ? OptionalDouble.of(Units.millimetres(value.getAsDouble())) : value;
        }

        private static OptionalDouble number(CsvTable.Row row, String column) {
            String text = row.cell(column);
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            OptionalDouble value = BareNumber.of(text);
            if (value.isPresent() && value.getAsDouble() > 0 && value.getAsDouble() < 1e6) {
                return value;
            }
            throw row.refusal(
                    "not-a-number",
                    column,
                    text,
                    "a number above 0, without its unit",
                    text.indexOf(',') >= 0 ? "Write a decimal point: 141.5." : "The unit stands in the column's name.");
        }
    }
}
