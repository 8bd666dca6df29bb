package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.fizzhull.decide.Mould;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.shape.text.ShapeText;

/**
 * A catalogue of moulds: a table with the columns {@code name, shape} and, where known, {@code cavities, price, material,
 * note}, with commas or semicolons. In a table with commas a shape stands in double quotes. Lines that are empty or begin
 * with # are passed over.
 */
public final class CatalogueFile {
    private static final String[] COLUMNS = {"name", "shape", "cavities", "price", "material", "note"};
    private static final String HEADER = "a first line: name, shape and, where known, cavities, price, material, note";
    private static final int MOST_CAVITIES = 10_000;

    private final String file;
    private final ShapeFiles shapes;
    private final int[] place = {-1, -1, -1, -1, -1, -1};
    private final List<Mould> moulds = new ArrayList<>();
    private int columns;

    private CatalogueFile(String file, ShapeFiles shapes) {
        this.file = file;
        this.shapes = shapes;
    }

    /** Reads one; each refusal names the file, the line and the column. */
    public static List<Mould> read(FileAccess files, String option, String file, ShapeFiles shapes) {
        return new CatalogueFile(file, shapes).parse(TextFile.read(files, option, file));
    }

    private List<Mould> parse(String text) {
        String head = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        char separator = head.indexOf(';') >= 0 ? ';' : ',';
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .commentStrategy(CommentStrategy.SKIP)
                .ofCsvRecord(text)) {
            for (CsvRecord row : reader) {
                if (columns == 0) {
                    header(row);
                } else {
                    moulds.add(mould(row));
                }
            }
        } catch (CsvParseException e) {
            throw refusal("unreadable", "catalogue", "a broken line", "a table", "Check the double quotes.", 0);
        } catch (IOException e) {
            throw refusal("cannot-read", "catalogue", file, "a file that can be read", "", 0);
        }
        if (moulds.isEmpty()) {
            throw refusal("empty", "catalogue", "no moulds", HEADER + "; then a mould in each line", "", 1);
        }
        return moulds;
    }

    private void header(CsvRecord row) {
        columns = row.getFieldCount();
        for (int i = 0; i < columns; i++) {
            String name = row.getField(i).strip().toLowerCase(Locale.ROOT);
            int column = List.of(COLUMNS).indexOf(name);
            if (column < 0) {
                throw refusal(
                        "unknown-column", "header", row.getField(i), HEADER, "Leave this column away.", line(row));
            }
            if (place[column] >= 0) {
                throw refusal("repeated", name, "twice", "each column once", "", line(row));
            }
            place[column] = i;
        }
        for (int column = 0; column < 2; column++) {
            if (place[column] < 0) {
                String read = String.join(", ", row.getFields());
                throw refusal("missing", COLUMNS[column], read, HEADER, "The first line names the columns.", line(row));
            }
        }
    }

    private Mould mould(CsvRecord row) {
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
        String name = cell(row, 0);
        for (Mould other : moulds) {
            if (other.name().equals(name)) {
                throw refusal("repeated", "name", name, "each name once", "Tell the two apart by their names.", line);
            }
        }
        try {
            return new Mould(
                    name,
                    ShapeText.read(cell(row, 1), shapes),
                    cavities(cell(row, 2), line),
                    price(cell(row, 3), line),
                    cell(row, 4),
                    cell(row, 5));
        } catch (Refusal refusal) {
            throw refusal.file() == null ? refusal.at(file, line) : refusal;
        }
    }

    private int cavities(String text, int line) {
        if (text.isEmpty()) {
            return 1;
        }
        boolean digits = text.length() <= 5 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        int count = digits ? Integer.parseInt(text) : 0;
        if (count < 1 || count > MOST_CAVITIES) {
            throw refusal("out-of-range", "cavities", text, "a whole number from 1 to " + MOST_CAVITIES, "", line);
        }
        return count;
    }

    private OptionalDouble price(String text, int line) {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double price = Double.parseDouble(text);
            if (price >= 0 && Double.isFinite(price)) {
                return OptionalDouble.of(price);
            }
        } catch (NumberFormatException e) {
            // told below
        }
        String hint = text.indexOf(',') >= 0 ? "Write a decimal point: 12.50." : "Write the number alone: no currency.";
        throw refusal(
                "not-a-number", "price", text, "a price of 0 or more in your own money, such as 12.50", hint, line);
    }

    private String cell(CsvRecord row, int column) {
        int at = place[column];
        String text =
                at < 0 || at >= row.getFieldCount() ? "" : row.getField(at).strip();
        if (text.isEmpty() && column < 2) {
            throw refusal("missing", COLUMNS[column], "", "a value in every row", "Fill the cell.", line(row));
        }
        return text;
    }

    private static int line(CsvRecord row) {
        return (int) row.getStartingLineNumber();
    }

    private Refusal refusal(String code, String field, String read, String allowed, String hint, int line) {
        return new Refusal(code, field, read, allowed, hint).at(file, line);
    }
}
