package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fizzhull.quantity.Refusal;

/**
 * A table that a person wrote: a first line that names the columns, then a row in each line, with commas or semicolons.
 * Lines that are empty or begin with # are passed over. Each refusal names the file and the line.
 */
final class CsvTable {
    private final String file;
    private final String subject;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<Row> rows = new ArrayList<>();
    private List<String> heading = List.of();
    private int headingLine = 1;

    private CsvTable(String file, String subject) {
        this.file = file;
        this.subject = subject;
    }

    /** Reads the text of a file; its subject is what refusals call it: catalogue, log, trials. */
    static CsvTable of(String text, String file, String subject) {
        CsvTable table = new CsvTable(file, subject);
        table.parse(text);
        return table;
    }

    private void parse(String text) {
        String head = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(head.indexOf(';') >= 0 ? ';' : ',')
                .allowMissingFields(true)
                .allowExtraFields(true)
                .commentStrategy(CommentStrategy.SKIP)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                int line = (int) record.getStartingLineNumber();
                if (heading.isEmpty()) {
                    head(record, line);
                } else {
                    rows.add(row(record, line));
                }
            }
        } catch (CsvParseException e) {
            throw refusal("unreadable", subject, "a broken line", "a table", "Check the double quotes.", 0);
        } catch (IOException e) {
            throw refusal("cannot-read", subject, file, "a file that can be read", "Check the file.", 0);
        }
    }

    private void head(CsvRecord record, int line) {
        heading = record.getFields().stream().map(String::strip).toList();
        headingLine = line;
        for (int i = 0; i < heading.size(); i++) {
            if (heading.get(i).isEmpty()) {
                String mend = "Name the column, or take it out in every line.";
                throw refusal("missing", "header", "no name over column " + (i + 1), "a name", mend, line);
            }
            String name = heading.get(i).toLowerCase(Locale.ROOT);
            if (places.put(name, i) != null) {
                throw refusal("repeated", heading.get(i), "twice", "each column once", "Leave one of them out.", line);
            }
        }
    }

    private Row row(CsvRecord record, int line) {
        if (record.getFieldCount() > heading.size()) {
            throw refusal(
                    "too-many",
                    "row",
                    String.join(", ", record.getFields()),
                    heading.size() + " cells",
                    "A text with a comma stands in double quotes; a number has a decimal point, not a comma.",
                    line);
        }
        return new Row(record.getFields(), line);
    }

    /** Refuses columns that are none of these, small letters or not. */
    void only(List<String> known, String allowed, String hint) {
        for (String name : heading) {
            if (known.stream().noneMatch(name::equalsIgnoreCase)) {
                throw refusal("unknown-column", "header", name, allowed, hint, headingLine);
            }
        }
    }

    /** Refuses a table without a column. */
    void needs(String column, String allowed, String hint) {
        if (!has(column)) {
            throw refusal("missing", column, String.join(", ", heading), allowed, hint, headingLine);
        }
    }

    boolean has(String column) {
        return places.containsKey(column.toLowerCase(Locale.ROOT));
    }

    /** The rows below the heading; refused where there are none. */
    List<Row> rows(String what, String allowed) {
        if (rows.isEmpty()) {
            throw refusal("empty", subject, "no " + what, allowed, "Write one row for each.", headingLine);
        }
        return rows;
    }

    Refusal refusal(String code, String field, String read, String allowed, String hint, int line) {
        return new Refusal(code, field, read, allowed, hint).at(file, line);
    }

    /** One row. */
    final class Row {
        private final List<String> cells;
        private final int line;

        private Row(List<String> cells, int line) {
            this.cells = cells;
            this.line = line;
        }

        int line() {
            return line;
        }

        /** The text of a cell without the space around it; empty where the row or the table has none. */
        String cell(String column) {
            Integer place = places.get(column.toLowerCase(Locale.ROOT));
            return place == null || place >= cells.size()
                    ? ""
                    : cells.get(place).strip();
        }

        /** The text of a cell that must not be empty. */
        String needed(String column) {
            String text = cell(column);
            if (text.isEmpty()) {
                throw refusal("missing", column, "", "a value in every row", "Fill the cell.");
            }
            return text;
        }

        /** A refusal of something in this row. */
        Refusal refusal(String code, String field, String read, String allowed, String hint) {
            return CsvTable.this.refusal(code, field, read, allowed, hint, line);
        }

        /** The same refusal with the place of this row, where it names none. */
        Refusal placed(Refusal refusal) {
            return refusal.file() == null ? refusal.at(file, line) : refusal;
        }
    }
}
