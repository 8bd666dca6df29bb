package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
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
import org.fizzhull.forecast.question.Question;
import org.fizzhull.learn.Trial;
import org.fizzhull.medium.Bath;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
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
public record TrialsFile(List<Trial> trials, List<String> unused) {
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

    private static final List<String> KEPT = List.of("dried_d", "room_C", "room_percent", "across_mm", "name", "note");

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
        return new Reader(files, option, file, shapes, cups, powders).parse(TextFile.read(files, option, file));
    }

    /** Reads one sheet. */
    private static final class Reader {
        private final FileAccess files;
        private final String option;
        private final String file;
        private final ShapeFiles shapes;
        private final Measures cups;
        private final List<OwnPowder> powders;
        private final Map<String, Integer> place = new HashMap<>();
        private final Map<String, Blend> recipes = new HashMap<>();
        private final Set<String> unused = new LinkedHashSet<>();
        private int columns;

        Reader(
                FileAccess files,
                String option,
                String file,
                ShapeFiles shapes,
                Measures cups,
                List<OwnPowder> powders) {
            this.files = files;
            this.option = option;
            this.file = file;
            this.shapes = shapes;
            this.cups = cups;
            this.powders = powders;
        }

        TrialsFile parse(String text) {
            String head = text.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .findFirst()
                    .orElse("");
            List<Trial> trials = new ArrayList<>();
            try (CsvReader<CsvRecord> reader = CsvReader.builder()
                    .fieldSeparator(head.indexOf(';') >= 0 ? ';' : ',')
                    .allowMissingFields(true)
                    .allowExtraFields(true)
                    .commentStrategy(CommentStrategy.SKIP)
                    .ofCsvRecord(text)) {
                for (CsvRecord row : reader) {
                    if (columns == 0) {
                        header(row);
                    } else {
                        trials.add(trial(row));
                    }
                }
            } catch (CsvParseException e) {
                throw refusal("unreadable", "trials", "a broken line", "a table", "Check the double quotes.", 0);
            } catch (IOException e) {
                throw refusal(
                        "cannot-read", "trials", file, "a file that can be read", "Check its name and its rights.", 0);
            }
            if (trials.isEmpty()) {
                throw refusal(
                        "empty",
                        "trials",
                        "no trials",
                        HEADER + "; then a piece in each line",
                        "Write a row for each piece you tried.",
                        1);
            }
            return new TrialsFile(trials, List.copyOf(unused));
        }

        private void header(CsvRecord row) {
            columns = row.getFieldCount();
            for (int i = 0; i < columns; i++) {
                String name = row.getField(i).strip();
                if (!READ.contains(name) && !KEPT.contains(name)) {
                    throw refusal(
                            "unknown-column",
                            "trials",
                            name,
                            String.join(", ", READ) + ", " + String.join(", ", KEPT),
                            "The unit stands in the name of the column.",
                            line(row));
                }
                if (place.put(name, i) != null) {
                    throw refusal(
                            "repeated",
                            name,
                            "twice",
                            "each column once",
                            "Leave one of the two columns away.",
                            line(row));
                }
            }
            boolean weight = place.containsKey("bath_g") || place.containsKey("fill_g");
            if (!place.containsKey("mould") || !place.containsKey("result") || !weight) {
                throw refusal(
                        "missing",
                        "trials",
                        String.join(", ", row.getFields()),
                        HEADER,
                        "mould, one of bath_g and fill_g, and result are needed.",
                        line(row));
            }
        }

        private Trial trial(CsvRecord row) {
            int line = line(row);
            if (row.getFieldCount() > columns) {
                throw refusal(
                        "too-many",
                        "row",
                        String.join(", ", row.getFields()),
                        columns + " cells",
                        "A shape with a comma stands in double quotes; a number has a decimal point, not a comma.",
                        line);
            }
            KEPT.stream()
                    .filter(name -> !name.equals("name")
                            && !name.equals("note")
                            && !cell(row, name).isEmpty())
                    .forEach(unused::add);
            try {
                Shape shape = ShapeText.read(needed(row, "mould"), shapes);
                String recipe = cell(row, "recipe");
                OptionalDouble bath = number(row, "bath_C");
                return new Trial(
                        "row in line " + line,
                        shape,
                        grams(row, "mould_water_g"),
                        recipe.isEmpty() ? Optional.empty() : Optional.of(blend(recipe)),
                        grams(row, "fill_g"),
                        pressure(cell(row, "press")),
                        grams(row, "bath_g"),
                        Bath.at(bath.isPresent() ? warm(bath.getAsDouble(), line) : Question.DEFAULT_TEMPERATURE),
                        result(needed(row, "result"), line),
                        number(row, "rose_after_s"),
                        millimetres(row, "left_mm"),
                        number(row, "fizz_s"),
                        grams(row, "lift_g"),
                        number(row, "lift_after_s"));
            } catch (Refusal refusal) {
                throw refusal.file() == null ? refusal.at(file, line) : refusal;
            }
        }

        private double warm(double celsius, int line) {
            if (!(celsius <= HOTTEST)) {
                throw refusal("out-of-range", "bath_C", celsius + "", "at most 60", "In degrees Celsius.", line);
            }
            return Units.celsius(celsius);
        }

        private Blend blend(String name) {
            return recipes.computeIfAbsent(name, recipe -> {
                Path beside = Path.of(file).resolveSibling(recipe);
                return Blend.of(RecipeFile.read(files, option, beside.toString(), cups, powders)
                        .recipe());
            });
        }

        private static OptionalDouble pressure(String word) {
            return word.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(PressWord.named(word).pressure());
        }

        private Trial.Result result(String word, int line) {
            for (Trial.Result result : Trial.Result.values()) {
                if (result.word().equals(word.toLowerCase(Locale.ROOT))) {
                    return result;
                }
            }
            throw refusal(
                    "unknown-word",
                    "result",
                    word,
                    "floated, rose or sank",
                    "floated: up within 20 s; rose: sank first and came up later.",
                    line);
        }

        private OptionalDouble grams(CsvRecord row, String column) {
            OptionalDouble value = number(row, column);
            return value.isPresent() ? OptionalDouble.of(Units.grams(value.getAsDouble())) : value;
        }

        private OptionalDouble millimetres(CsvRecord row, String column) {
            OptionalDouble value = number(row, column);
            return value.isPresent() ? OptionalDouble.of(Units.millimetres(value.getAsDouble())) : value;
        }

        private OptionalDouble number(CsvRecord row, String column) {
            String text = cell(row, column);
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            try {
                double value = Double.parseDouble(text);
                if (value > 0 && value < 1e6) {
                    return OptionalDouble.of(value);
                }
            } catch (NumberFormatException e) {
                // told below
            }
            throw refusal(
                    "not-a-number",
                    column,
                    text,
                    "a number above 0, without its unit",
                    text.indexOf(',') >= 0 ? "Write a decimal point: 141.5." : "The unit stands in the column's name.",
                    line(row));
        }

        private String needed(CsvRecord row, String column) {
            String text = cell(row, column);
            if (text.isEmpty()) {
                throw refusal("missing", column, "", "a value in every row", "Fill the cell.", line(row));
            }
            return text;
        }

        private String cell(CsvRecord row, String column) {
            Integer at = place.get(column);
            return at == null || at >= row.getFieldCount()
                    ? ""
                    : row.getField(at).strip();
        }

        private static int line(CsvRecord row) {
            return (int) row.getStartingLineNumber();
        }

        private Refusal refusal(String code, String field, String read, String allowed, String hint, int line) {
            return new Refusal(code, field, read, allowed, hint).at(file, line);
        }
    }
}
