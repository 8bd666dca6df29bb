package org.fizzhull.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Reads answers as JSON and holds them against the schemas in the jar (other program: networknt json-schema-validator). */
public final class AnswerJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final Map<String, Schema> SCHEMAS = new ConcurrentHashMap<>();

    private static final Map<String, Set<String>> NAMED = new ConcurrentHashMap<>();

    private AnswerJson() {}

    public static JsonNode read(String text) throws IOException {
        return MAPPER.readTree(text);
    }

    /** Codes of the notices of an answer, in order. */
    public static List<String> codes(JsonNode answer) {
        List<String> codes = new ArrayList<>();
        answer.get("notices").forEach(notice -> codes.add(notice.get("code").asText()));
        return codes;
    }

    /** Median of an interval of an answer. */
    public static double median(JsonNode answer, String key) {
        return answer.get(key).get("median").asDouble();
    }

    /** What is wrong with an answer: faults by its schema, and keys that the schema does not name. */
    public static List<String> faults(String schema, String text) {
        List<String> faults = new ArrayList<>(schemaFaults(schema, text));
        try {
            Set<String> unnamed = SchemaKeys.ofAnswer(read(text));
            unnamed.removeAll(NAMED.computeIfAbsent(schema, AnswerJson::named));
            unnamed.forEach(place -> faults.add(place + " is not named by the schema of " + schema));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return faults;
    }

    /** What is wrong with a text by a schema, which allows further keys; empty where nothing is. */
    public static List<String> schemaFaults(String schema, String text) {
        return SCHEMAS.computeIfAbsent(schema, AnswerJson::schema).validate(text, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static Schema schema(String name) {
        try (InputStream in = stream(name)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> named(String name) {
        try (InputStream in = stream(name)) {
            return SchemaKeys.of(MAPPER.readTree(in)).keySet();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream stream(String name) {
        return Objects.requireNonNull(
                AnswerJson.class.getResourceAsStream("/org/fizzhull/cli/schema/" + name + ".schema.json"));
    }
}
