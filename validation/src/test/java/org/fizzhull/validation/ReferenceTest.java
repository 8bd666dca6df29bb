package org.fizzhull.validation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fizzhull.validation.table.Check;
import org.junit.jupiter.api.Test;

/**
 * The rows whose source is a script of {@code validation/reference} against the data file that the script wrote: each row
 * has its value there, and says the same to within its tolerance; no value is left over.
 */
class ReferenceTest {
    private static final Path FOLDER =
            Path.of(System.getProperty("basedir", ".")).resolve("reference");

    @Test
    void everyRowOfAScriptStandsInItsData() throws IOException {
        List<Check> checks = Catalogue.checks();
        for (Path script : files(".py")) {
            Path data = FOLDER.resolve(name(script) + ".csv");
            if (!Files.exists(data)) {
                continue; // helpers without rows of their own
            }
            Map<String, Double> values = read(data);
            List<Check> rows = checks.stream()
                    .filter(check -> check.sourceKey().equals(name(script)))
                    .toList();
            assertThat(values.keySet())
                    .as("run validation/reference/%s.py", name(script))
                    .containsExactlyInAnyOrderElementsOf(
                            rows.stream().map(Check::id).toList());
            for (Check row : rows) {
                if (!row.isDisagreement()) {
                    assertThat(row.expected())
                            .as("%s, expected column against %s", row.id(), data)
                            .isCloseTo(values.getOrDefault(row.id(), Double.NaN), within(row.tolerance()));
                }
            }
        }
    }

    @Test
    void everyDataFileHasItsScriptAndItsRows() throws IOException {
        List<String> sources =
                Catalogue.checks().stream().map(Check::sourceKey).distinct().toList();
        assertThat(files(".csv")).isNotEmpty().allSatisfy(data -> {
            assertThat(FOLDER.resolve(name(data) + ".py")).exists();
            assertThat(sources).contains(name(data));
        });
    }

    private static List<Path> files(String end) throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(end)).sorted().toList();
        }
    }

    private static String name(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.'));
    }

    /** Value by id; the first line names the tools, the second the columns. */
    private static Map<String, Double> read(Path data) throws IOException {
        Map<String, Double> values = new LinkedHashMap<>();
        List<String> lines = Files.readAllLines(data, UTF_8);
        for (String line : lines.subList(2, lines.size())) {
            int comma = line.lastIndexOf(',');
            values.put(line.substring(0, comma), Double.parseDouble(line.substring(comma + 1)));
        }
        return values;
    }
}
