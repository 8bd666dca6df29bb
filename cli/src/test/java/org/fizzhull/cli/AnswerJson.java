package org.fizzhull.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;

/** Reads answers as JSON and holds them against the schemas in the jar (other program: networknt json-schema-validator). */
final class AnswerJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private AnswerJson() {}

    static JsonNode read(String text) throws IOException {
        return MAPPER.readTree(text);
    }

    /** What is wrong with a text by a schema; empty where nothing is. */
    static List<String> faults(String schema, String text) throws IOException {
        try (InputStream in = Objects.requireNonNull(
                AnswerJson.class.getResourceAsStream("/org/fizzhull/cli/schema/" + schema + ".schema.json"))) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in)
                    .validate(text, InputFormat.JSON)
                    .stream()
                    .map(Object::toString)
                    .toList();
        }
    }
}
