package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;

/**
 * Cups of powders that were weighed: a table with commas or semicolons whose columns are {@code name, loose_cup_g} and, where
 * known, {@code tapped_cup_g, cup_mL, like}. What a row says goes the way of a recipe's own ingredient.
 */
public final class PowdersFile {
    private static final String NAME = "name";
    private static final String LOOSE = "loose_cup_g";
    private static final List<String> COLUMNS = List.of(NAME, LOOSE, "tapped_cup_g", "cup_mL", "like");

    private PowdersFile() {}

    /** Reads one; a cup without a size is of the chosen measures. */
    public static List<OwnPowder> read(FileAccess files, String option, String file, Measures cups) {
        String text = TextFile.read(files, option, file);
        String head = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        List<OwnPowder> powders = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .fieldSeparator(head.indexOf(';') >= 0 ? ';' : ',')
                .commentStrategy(CommentStrategy.SKIP)
                .allowMissingFields(true)
                .ofNamedCsvRecord(text)) {
            for (NamedCsvRecord row : reader) {
                powders.add(powder(row, file, cups));
            }
        } catch (CsvParseException | IOException e) {
            throw new Refusal("unreadable", option, "a broken line", "a table", "Check the double quotes.").at(file, 0);
        }
        if (powders.isEmpty()) {
            throw new Refusal(
                            "empty",
                            option,
                            "no powders",
                            "a first line such as name, loose_cup_g, tapped_cup_g, cup_mL, like; then a powder in each line",
                            "Weigh a cup of each, without the cup.")
                    .at(file, 1);
        }
        return powders;
    }

    private static OwnPowder powder(NamedCsvRecord row, String file, Measures cups) {
        int line = (int) row.getStartingLineNumber();
        for (String column : row.getHeader()) {
            if (!COLUMNS.contains(column.strip())) {
                throw new Refusal(
                                "unknown-column",
                                "powders",
                                column,
                                String.join(", ", COLUMNS),
                                "The unit stands in the name of the column.")
                        .at(file, 1);
            }
        }
        Map<String, String> said = new LinkedHashMap<>();
        put(said, "like", cell(row, "like"), "");
        put(said, "loose cup", cell(row, LOOSE), " g");
        put(said, "tapped cup", cell(row, "tapped_cup_g"), " g");
        String size = cell(row, "cup_mL");
        said.put("cup", (size.isEmpty() ? Decimals.text(cups.cupMillilitres(), 6) : size) + " mL");
        for (String needed : List.of(NAME, LOOSE)) {
            if (cell(row, needed).isEmpty()) {
                throw new Refusal("missing", needed, "", "a value in every row", "Fill the cell.").at(file, line);
            }
        }
        return new OwnPowder(cell(row, NAME), said, file, line);
    }

    private static void put(Map<String, String> said, String key, String value, String unit) {
        if (!value.isEmpty()) {
            said.put(key, value + unit);
        }
    }

    private static String cell(NamedCsvRecord row, String column) {
        for (int i = 0; i < Math.min(row.getHeader().size(), row.getFieldCount()); i++) {
            if (row.getHeader().get(i).strip().equals(column)) {
                return row.getField(i).strip();
            }
        }
        return "";
    }
}
