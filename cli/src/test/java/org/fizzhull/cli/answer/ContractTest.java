package org.fizzhull.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.SchemaKeys;
import org.junit.jupiter.api.Test;

/**
 * cli/docs/contract.md describes every key of every answer and no other. What is expected comes from the schemas in the
 * jar, which {@link AnswerJson#faults} holds against real answers, unnamed keys included.
 */
class ContractTest {
    private static final Path PAGE = Path.of("docs", "contract.md");
    private static final Path SCHEMAS = Path.of("src/main/resources/org/fizzhull/cli/schema");
    private static final String SUFFIX = ".schema.json";

    @Test
    void thePageDescribesEveryKeyInTheWordsOfItsSchema() throws IOException {
        assertThat(disagreements(Files.readString(PAGE))).isEmpty();
    }

    /** The check can fail: a row less, a row too many and another word are each told, and nothing else. */
    @Test
    void aDamagedPageIsTold() throws IOException {
        String page = Files.readString(PAGE);
        String row = page.lines()
                .filter(line -> line.startsWith("| `jar.all_kPa` | "))
                .findFirst()
                .orElseThrow();

        assertThat(disagreements(page.replace(row + "\n", ""))).containsExactly("dry: jar.all_kPa is not on the page");
        assertThat(disagreements(page.replace(row, row + "\n| `jar.lid_g` | g | mass of the lid |")))
                .containsExactly("dry: jar.lid_g is on the page, but not in the schema");
        assertThat(disagreements(page.replace(row, row.replace(" | kPa | ", " | kPa or null | "))))
                .containsExactlyInAnyOrder(
                        "dry: jar.all_kPa is described otherwise in the schema",
                        "dry: jar.all_kPa can be null on the page only");
    }

    /** Keys that only a pattern allows would have no name to be described by. */
    @Test
    void everySchemaNamesItsKeys() throws IOException {
        for (String name : schemas()) {
            assertThat(Files.readString(SCHEMAS.resolve(name + SUFFIX)))
                    .as(name)
                    .doesNotContain("\"additionalProperties\"", "\"patternProperties\"", "\"propertyNames\"");
        }
    }

    private static Set<String> disagreements(String text) throws IOException {
        ContractPage page = ContractPage.of(text);
        Set<String> found = new TreeSet<>();
        Map<String, List<SchemaKeys.Key>> shared = new TreeMap<>();
        List<String> schemas = schemas();
        for (String schema : schemas) {
            Map<String, SchemaKeys.Key> keys = SchemaKeys.of(schema(schema));
            keys.forEach((place, key) -> {
                String told = told(place, keys);
                ContractPage.Row row = page.section(schema).get(told);
                if (row != null) {
                    compare(schema + ": " + told, row, key, found);
                } else if (page.shared(told).isPresent()) {
                    String name = page.shared(told).get();
                    shared.computeIfAbsent(name, any -> new ArrayList<>()).add(key);
                    describe(
                            schema + ": " + place,
                            Objects.requireNonNull(
                                    page.section(ContractPage.SHARED).get(name)),
                            key,
                            found);
                } else {
                    found.add(schema + ": " + place + " is not on the page");
                }
            });
            for (String key : page.section(schema).keySet()) {
                if (!keys.containsKey(key)) {
                    found.add(schema + ": " + key + " is on the page, but not in the schema");
                }
            }
        }
        for (String section : page.names()) {
            if (!section.equals(ContractPage.SHARED) && !schemas.contains(section)) {
                found.add(section + " has a table of keys, but no schema");
            }
        }
        page.section(ContractPage.SHARED).forEach((name, row) -> {
            if (!shared.containsKey(name)) {
                found.add("shared: " + name + " is on the page, but in no schema");
                return;
            }
            // null in one of the answers is enough
            boolean orNull = shared.get(name).stream().anyMatch(SchemaKeys.Key::orNull);
            nulls("shared: " + name, row, orNull, found);
        });
        return found;
    }

    /** The points of every uncertain number are described once. */
    private static String told(String place, Map<String, SchemaKeys.Key> keys) {
        int dot = place.lastIndexOf('.');
        SchemaKeys.Key above = dot < 0 ? null : keys.get(place.substring(0, dot));
        boolean point = above != null && above.interval();
        return point ? place.substring(dot + 1) : place;
    }

    private static void compare(String key, ContractPage.Row row, SchemaKeys.Key schema, Set<String> found) {
        describe(key, row, schema, found);
        nulls(key, row, schema.orNull(), found);
    }

    private static void describe(String key, ContractPage.Row row, SchemaKeys.Key schema, Set<String> found) {
        if (schema.description().isEmpty()) {
            found.add(key + " has no description in the schema");
        } else if (!row.description().equals(schema.description())) {
            found.add(key + " is described otherwise in the schema");
        }
        if (row.value().startsWith("interval") != schema.interval()) {
            found.add(key + " is an interval in one of page and schema only");
        }
    }

    /** A key that can be null is marked, and its meaning says when. */
    private static void nulls(String key, ContractPage.Row row, boolean orNull, Set<String> found) {
        boolean marked = row.value().endsWith(" or null");
        if (marked != orNull) {
            found.add(key + " can be null " + (marked ? "on the page" : "in the schema") + " only");
        } else if (marked && !row.meaning().contains("null")) {
            found.add(key + " can be null, but the page does not say when");
        }
    }

    private static List<String> schemas() throws IOException {
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(0, name.length() - SUFFIX.length()))
                    .sorted()
                    .toList();
        }
    }

    private static JsonNode schema(String name) throws IOException {
        return AnswerJson.read(Files.readString(SCHEMAS.resolve(name + SUFFIX)));
    }
}
