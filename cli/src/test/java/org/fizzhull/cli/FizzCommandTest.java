package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fizz} on the workshop's lemon ball. */
class FizzCommandTest {
    private static final String LEMON = Path.of("src/doc/recipes/lemon.yaml").toString();

    @TempDir
    Path folder;

    private static CommandRun run(String... more) {
        List<String> words = new ArrayList<>(List.of("fizz", "--shape", "sphere(diameter=65 mm)"));
        words.addAll(List.of("--samples", "128"));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(new String[0]));
    }

    /** By hand: of 523 g without water 300 g are bicarbonate (84.007 g/mol) and 150 g citric acid (192.12, three groups). */
    @Test
    void theChemistryIsThatOfTheRecipe() throws IOException {
        CommandRun run = run("--recipe", LEMON, "--mass", "130.75 g", "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("fizz", run.out())).isEmpty();
        JsonNode answer = AnswerJson.read(run.out());
        double bicarbonate = 75 / 84.007;
        double groups = 3 * 37.5 / 192.12;
        assertThat(bicarbonate).isGreaterThan(groups);
        assertThat(answer.get("limiting").asText()).isEqualTo("acid");
        assertThat(answer.get("co2_max_mol").asDouble()).isCloseTo(groups, within(2e-4));
        assertThat(answer.get("co2_max_g").asDouble()).isCloseTo(groups * 44.01, within(0.01));
        // ideal gas at 38 C and 1 atm
        assertThat(answer.get("gas_max_L").asDouble()).isCloseTo(groups * 8.314463 * 311.15 / 101.325, within(0.01));
        assertThat(answer.get("in_the_bath").get("oil_g").asDouble()).isCloseTo(2.5, within(1e-3));
        JsonNode limit = answer.get("in_the_bath").get("limits").get(0);
        assertThat(limit.get("mass_g").asDouble()).isCloseTo(0.75, within(1e-3));
        assertThat(limit.get("kept").asBoolean()).isTrue();
        // carbon dioxide only ever leaves: what was seen grows and stays below the most
        double before = 0;
        for (JsonNode row : answer.get("series")) {
            assertThat(row.get("gas_L").asDouble()).isGreaterThanOrEqualTo(before);
            before = row.get("gas_L").asDouble();
        }
        assertThat(before).isPositive().isLessThan(answer.get("gas_max_L").asDouble());
        assertThat(answer.get("bath_ph_open").asDouble())
                .isGreaterThan(answer.get("bath_ph_closed").asDouble());
    }

    @Test
    void threadsChangeNothing() {
        String one = run("--recipe", LEMON, "--mass", "138 g", "--json", "--threads", "1")
                .out();
        assertThat(run("--recipe", LEMON, "--mass", "138 g", "--json", "--threads", "2")
                        .out())
                .isEqualTo(one);
    }

    @Test
    void theTextWarnsAndThePictureIsWritten() throws IOException {
        Path picture = folder.resolve("fizz.svg");
        CommandRun run = run("--recipe", LEMON, "--mass", "138 g", "--chart", picture.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("Air the room", "closed bottle", "bleach", "depends on your tap", "your limit")
                .doesNotContain("pH", "NaN", "null");
        assertThat(Files.readString(picture))
                .contains("gas, L a minute", "height of the piece")
                .doesNotContain("NaN", "Infinity");
    }

    @Test
    void badInputIsRefused() {
        refused("--recipe", run("--mass", "138 g"));
        refused("--fill", run("--recipe", LEMON, "--fill", "900 g"));
        refused("--mass", run("--recipe", LEMON));
        refused("--no-fizz", run("--recipe", LEMON, "--mass", "138 g", "--no-fizz"));
        refused("--mass", run("--recipe", LEMON, "--mass", "900 g"));
    }

    private static void refused(String field, CommandRun run) {
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(field);
        assertThat(run.out()).isEmpty();
    }
}
