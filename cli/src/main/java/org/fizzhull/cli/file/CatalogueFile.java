package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.fizzhull.decide.Mould;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.shape.text.ShapeText;

/**
 * A catalogue of moulds: a table with the columns {@code name, shape} and, where known, {@code cavities, price, material,
 * note}, with commas or semicolons. In a table with commas a shape stands in double quotes. Lines that are empty or begin
 * with # are passed over.
 */
public final class CatalogueFile {
    private static final List<String> COLUMNS = List.of("name", "shape", "cavities", "price", "material", "note");
    private static final String HEADER = "a first line: name, shape and, where known, cavities, price, material, note";
    private static final int MOST_CAVITIES = 10_000;

    private CatalogueFile() {}

    /** Reads one; each refusal names the file, the line and the column. */
    public static List<Mould> read(FileAccess files, String option, String file, ShapeFiles shapes) {
        CsvTable table = CsvTable.of(TextFile.read(files, option, file), file, "catalogue");
        table.only(COLUMNS, HEADER, "Leave this column out.");
        table.needs("name", HEADER, "The first line names the columns.");
        table.needs("shape", HEADER, "The first line names the columns.");
        List<Mould> moulds = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (CsvTable.Row row : table.rows("moulds", HEADER + "; then a mould in each line")) {
            Mould mould = mould(row, shapes);
            if (!names.add(mould.name())) {
                throw row.refusal(
                        "repeated", "name", mould.name(), "each name once", "Tell the two apart by their names.");
            }
            moulds.add(mould);
        }
        return moulds;
    }

    private static Mould mould(CsvTable.Row row, ShapeFiles shapes) {
        try {
            return new Mould(
                    row.needed("name"),
                    ShapeText.read(row.needed("shape"), shapes),
                    cavities(row),
                    price(row),
                    row.cell("material"),
                    row.cell("note"));
        } catch (Refusal refusal) {
            throw row.placed(refusal);
        }
    }

    private static int cavities(CsvTable.Row row) {
        String text = row.cell("cavities");
        if (text.isEmpty()) {
            return 1;
        }
        boolean digits = text.length() <= 5 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        int count = digits ? Integer.parseInt(text) : 0;
        if (count < 1 || count > MOST_CAVITIES) {
            throw row.refusal(
                    "out-of-range",
                    "cavities",
                    text,
                    "a whole number from 1 to " + MOST_CAVITIES,
                    "Count the hollows.");
        }
        return count;
    }

    private static OptionalDouble price(CsvTable.Row row) {
        String text = row.cell("price");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble price = BareNumber.of(text);
        if (price.isPresent() && price.getAsDouble() >= 0) {
            return price;
        }
        String hint = text.indexOf(',') >= 0 ? "Write a decimal point: 12.50." : "Write the number alone: no currency.";
        throw row.refusal("not-a-number", "price", text, "a price of 0 or more in your own money, such as 12.50", hint);
    }
}
