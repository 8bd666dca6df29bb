package org.fizzhull.validation.table;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;

/** Reads the tables of checks and of sources. A row that cannot be read names its file and line. */
public final class CheckFiles {
    static final List<String> COLUMNS = List.of(
            "id",
            "what",
            "inputs",
            "expected",
            "unit",
            "tolerance",
            "why_tolerance",
            "origin",
            "source_key",
            "seen",
            "disagrees",
            "why_disagrees");

    private static final String SOURCES = "sources.csv";

    private CheckFiles() {}

    /** Every row of every table in a folder, tables by name, rows as they stand. */
    public static List<Check> checks(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<Check> checks = new ArrayList<>();
            files.filter(file -> file.getFileName().toString().endsWith(".csv"))
                    .filter(file -> !file.getFileName().toString().equals(SOURCES))
                    .sorted()
                    .forEach(file -> read(file, COLUMNS, row -> checks.add(check(file, row))));
            return checks;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every source, as it stands. */
    public static List<Source> sources(Path folder) {
        List<Source> sources = new ArrayList<>();
        read(
                folder.resolve(SOURCES),
                List.of("key", "citation", "seen"),
                row -> sources.add(new Source(text(row, "key"), text(row, "citation"), seen(row.getField("seen")))));
        return sources;
    }

    private static Check check(Path file, NamedCsvRecord row) {
        String name = file.getFileName().toString();
        String disagrees = row.getField("disagrees");
        String expected = row.getField("expected");
        return new Check(
                name.substring(0, name.length() - ".csv".length()),
                text(row, "id"),
                text(row, "what"),
                new Inputs(text(row, "inputs")),
                expected.equals("live") ? Double.NaN : finite(expected),
                text(row, "unit"),
                finite(row.getField("tolerance")),
                text(row, "why_tolerance"),
                Origin.of(row.getField("origin")),
                text(row, "source_key"),
                seen(row.getField("seen")),
                disagrees.isEmpty() ? Double.NaN : finite(disagrees),
                row.getField("why_disagrees"));
    }

    private static double finite(String text) {
        double value = Double.parseDouble(text);
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("not a finite number: " + text);
        }
        return value;
    }

    private static String text(NamedCsvRecord row, String column) {
        String text = row.getField(column);
        if (text.isBlank()) {
            throw new IllegalArgumentException("nothing in column " + column);
        }
        return text;
    }

    private static Seen seen(String words) {
        for (Seen seen : Seen.values()) {
            if (seen.words().equals(words)) {
                return seen;
            }
        }
        throw new IllegalArgumentException("unknown way a source was met: " + words);
    }

    private static void read(Path file, List<String> columns, Consumer<NamedCsvRecord> use) {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file)) {
            for (NamedCsvRecord row : rows) {
                try {
                    if (!row.getHeader().equals(columns)) {
                        throw new IllegalArgumentException("columns are " + row.getHeader() + ", not " + columns);
                    }
                    use.accept(row);
                } catch (RuntimeException e) {
                    throw new IllegalArgumentException(
                            file.getFileName() + ", line " + row.getStartingLineNumber() + ": " + e.getMessage(), e);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
