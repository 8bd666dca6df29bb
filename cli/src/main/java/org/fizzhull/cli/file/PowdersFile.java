package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Measures;

/**
 * Cups of powders that were weighed: a table with commas or semicolons whose columns are {@code name, loose_cup_g} and, where
 * known, {@code tapped_cup_g, cup_mL, like}. What a row says goes the way of a recipe's own ingredient.
 */
public final class PowdersFile {
    private static final String NAME = "name";
    private static final String LOOSE = "loose_cup_g";
    private static final List<String> COLUMNS = List.of(NAME, LOOSE, "tapped_cup_g", "cup_mL", "like");
    private static final String HEADER = "a first line such as name, loose_cup_g, tapped_cup_g, cup_mL, like";

    private PowdersFile() {}

    /** Reads one; a cup without a size is of the chosen measures. */
    public static List<OwnPowder> read(FileAccess files, String option, String file, Measures cups) {
        CsvTable table = CsvTable.of(TextFile.read(files, option, file), file, "powders");
        table.only(COLUMNS, String.join(", ", COLUMNS), "The unit stands in the name of the column.");
        for (String column : List.of(NAME, LOOSE)) {
            table.needs(column, HEADER, "Weigh a cup of each, without the cup.");
        }
        List<OwnPowder> powders = new ArrayList<>();
        for (CsvTable.Row row : table.rows("powders", HEADER + "; then a powder in each line")) {
            powders.add(powder(row, file, cups));
        }
        return powders;
    }

    private static OwnPowder powder(CsvTable.Row row, String file, Measures cups) {
        Map<String, String> said = new LinkedHashMap<>();
        put(said, "like", row.cell("like"), "");
        put(said, "loose cup", row.needed(LOOSE), " g");
        put(said, "tapped cup", row.cell("tapped_cup_g"), " g");
        String size = row.cell("cup_mL");
        said.put("cup", (size.isEmpty() ? Decimals.text(cups.cupMillilitres(), 6) : size) + " mL");
        return new OwnPowder(row.needed(NAME), said, file, row.line());
    }

    private static void put(Map<String, String> said, String key, String value, String unit) {
        if (!value.isEmpty()) {
            said.put(key, value + unit);
        }
    }
}
