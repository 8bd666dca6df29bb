package org.fizzhull.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas in the jar hold: a real answer damaged in any one key no longer meets them, one with more keys does. */
class SchemaTest {
    private static final String BOWL = "bowl(diameter=90 mm, wall=15 mm)";

    record Answer(String schema, List<String> words) {}

    static List<Answer> answers() {
        return List.of(
                new Answer("float", List.of("float", "--shape", BOWL, "--mass", "140 g +- 3 g", "--samples", "128")),
                new Answer(
                        "float",
                        List.of(
                                "float",
                                "--shape",
                                "puck(diameter=70 mm, height=30 mm)",
                                "--mass",
                                "100 g",
                                "--on-top",
                                "6 g coarse salt",
                                "--inside",
                                "8 g, 10 mL",
                                "--samples",
                                "128")),
                new Answer(
                        "float",
                        List.of(
                                "float",
                                "--shape",
                                "sphere(diameter=65 mm)",
                                "--mass",
                                "142 g",
                                "--samples",
                                "256",
                                "--measured-rise",
                                "95 s at 150 g")),
                new Answer(
                        "compare",
                        List.of(
                                "compare",
                                "--density",
                                "1.0 g/cm3",
                                "--shape",
                                BOWL,
                                "--shape",
                                "puck(diameter=70 mm, height=30 mm)",
                                "--baths",
                                "homes",
                                "--samples",
                                "128")),
                new Answer(
                        "advise",
                        List.of(
                                "advise",
                                "--shape",
                                "sphere(diameter=65 mm)",
                                "--recipe",
                                "src/doc/recipes/lemon.yaml",
                                "--fill",
                                "160 g",
                                "--samples",
                                "128")),
                new Answer(
                        "why",
                        List.of(
                                "why",
                                "--saw",
                                "sank",
                                "--shape",
                                "sphere(diameter=65 mm)",
                                "--recipe",
                                "src/doc/recipes/lemon.yaml",
                                "--fill",
                                "145 g",
                                "--samples",
                                "128")),
                new Answer("shapes", List.of("shapes", BOWL)),
                new Answer("shapes", List.of("shapes")),
                new Answer("error", List.of("float", "--shape", BOWL, "--mass", "140")));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void damagedAnswersAreCaught(Answer answer) throws IOException {
        ObjectNode whole = real(answer);
        assertThat(AnswerJson.faults(answer.schema(), whole.toString())).isEmpty();
        for (String key : keys(whole)) {
            ObjectNode without = whole.deepCopy();
            without.remove(key);
            assertThat(AnswerJson.schemaFaults(answer.schema(), without.toString()))
                    .as("without " + key)
                    .isNotEmpty();
            ObjectNode wrong = whole.deepCopy();
            wrong.putObject(key).put("no", "such thing");
            assertThat(AnswerJson.schemaFaults(answer.schema(), wrong.toString()))
                    .as("wrong " + key)
                    .isNotEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("answers")
    void damageFurtherInIsCaught(Answer answer) throws IOException {
        ObjectNode whole = real(answer);
        for (String outer : keys(whole)) {
            JsonNode child = whole.get(outer);
            boolean rows = child.isArray() && !child.isEmpty() && child.get(0).isObject();
            if (!rows && !child.isObject()) {
                continue;
            }
            for (String key : keys(rows ? child.get(0) : child)) {
                ObjectNode damaged = whole.deepCopy();
                JsonNode inner = damaged.get(outer);
                ((ObjectNode) (rows ? inner.get(0) : inner)).remove(key);
                assertThat(AnswerJson.schemaFaults(answer.schema(), damaged.toString()))
                        .as("without " + outer + "." + key)
                        .isNotEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("answers")
    void moreKeysMayCome(Answer answer) throws IOException {
        ObjectNode more = real(answer);
        more.put("a_later_key_g", 3);

        assertThat(AnswerJson.schemaFaults(answer.schema(), more.toString())).isEmpty();
        // but a test of a real answer notices it
        assertThat(AnswerJson.faults(answer.schema(), more.toString()))
                .singleElement()
                .asString()
                .contains("a_later_key_g");
    }

    private static ObjectNode real(Answer answer) throws IOException {
        List<String> words = new java.util.ArrayList<>(answer.words());
        words.add("--json");
        return (ObjectNode)
                AnswerJson.read(CommandRun.of(words.toArray(new String[0])).out());
    }

    private static Set<String> keys(JsonNode node) {
        Set<String> names = new TreeSet<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
