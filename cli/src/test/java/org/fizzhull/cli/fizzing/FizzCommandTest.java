package org.fizzhull.cli.fizzing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
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

    /** By the central values alone, on one line. */
    private static String central(String... more) {
        return withSamples("0", more);
    }

    private static String withSamples(String samples, String... more) {
        List<String> words = new ArrayList<>(List.of("fizz", "--recipe", LEMON, "--shape", "sphere(diameter=65 mm)"));
        words.addAll(List.of("--samples", samples));
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        return run.out().replaceAll("\\s+", " ");
    }

    /**
     * By hand: of 523 g without water 300 g are bicarbonate (84.007 g/mol) and 150 g citric acid (192.12, three groups); the
     * 4 g of water set 7 mol/kg of gas free as they go in (assumed, core/docs/physics/drying.md, 7), which is gone
     * before the piece is weighed.
     */
    @Test
    void theChemistryIsThatOfTheRecipe() throws IOException {
        CommandRun run = run("--recipe", LEMON, "--mass", "130.75 g", "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("fizz", run.out())).isEmpty();
        JsonNode answer = AnswerJson.read(run.out());
        double gone = 4e-3 * 7;
        double part = 130.75 / (523 - gone * 44.01);
        double bicarbonate = part * 300 / 84.007;
        double groups = part * 3 * 150 / 192.12;
        double gas = groups - part * gone;
        assertThat(bicarbonate).isGreaterThan(groups);
        assertThat(answer.get("fizz_lost_percent").asDouble()).isCloseTo(100 * part * gone / groups, within(1e-3));
        assertThat(answer.get("limiting").asText()).isEqualTo("acid");
        assertThat(answer.get("co2_max_mol").asDouble()).isCloseTo(gas, within(2e-4));
        assertThat(answer.get("co2_max_g").asDouble()).isCloseTo(gas * 44.01, within(0.01));
        // ideal gas at 38 C and 1 atm
        assertThat(answer.get("gas_max_L").asDouble()).isCloseTo(gas * 8.314463 * 311.15 / 101.325, within(0.01));
        assertThat(answer.get("in_the_bath").get("oil_g").asDouble()).isCloseTo(10 * part, within(1e-3));
        JsonNode limit = answer.get("in_the_bath").get("limits").get(0);
        assertThat(limit.get("mass_g").asDouble()).isCloseTo(3 * part, within(1e-3));
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
                .contains("Air the room", "closed bottle", "bleach", "see --tap-alkalinity", "your limit")
                .doesNotContain("pH", "NaN", "null");
        assertThat(Files.readString(picture))
                .contains("gas, L a minute", "depth under the water line in cm", "in the middle case it bobs")
                .doesNotContain("NaN", "Infinity");
    }

    /** Alkalinity counts like so much dissolved bicarbonate: 100.0869/2 mg of chalk take up the acid of one millimole. */
    @Test
    void tapWaterOfAnAlkalinityIsLessSour() throws IOException {
        JsonNode soft = answer();
        JsonNode hard = answer("--tap-alkalinity", "2 mmol/L");
        JsonNode chalk = answer("--tap-alkalinity", "100.0869 mg/L as CaCO3");
        assertThat(soft.get("tap_alkalinity_mmol_per_L").asDouble()).isZero();
        assertThat(hard.get("tap_alkalinity_mmol_per_L").asDouble()).isCloseTo(2, within(1e-9));
        assertThat(chalk.get("bath_ph_closed")).isEqualTo(hard.get("bath_ph_closed"));
        assertThat(chalk.get("bath_ph_open")).isEqualTo(hard.get("bath_ph_open"));
        for (String ph : List.of("bath_ph_closed", "bath_ph_open")) {
            assertThat(hard.get(ph).asDouble()).isGreaterThan(soft.get(ph).asDouble() + 0.01);
        }
        assertThat(central("--mass", "138 g", "--tap-alkalinity", "2 mmol/L", "--explain"))
                .contains("with the alkalinity of your tap", "2 mmol/L total alkalinity");
    }

    private static JsonNode answer(String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of("--mass", "138 g", "--json"));
        words.addAll(List.of(more));
        String out = central(words.toArray(new String[0]));
        assertThat(AnswerJson.faults("fizz", out)).isEmpty();
        return AnswerJson.read(out);
    }

    @Test
    void anAlkalinityThatIsNoneIsRefusedWithAMend() {
        assertThat(alkalinity("120 mg/L")).contains("--tap-alkalinity", "mg/L as CaCO3");
        assertThat(alkalinity("8 dH")).contains("dKH");
        assertThat(alkalinity("200 mmol/L")).contains("between 0 mmol/L and 100 mmol/L", "mg/L as CaCO3");
        assertThat(alkalinity("-1 mmol/L")).contains("Did you mean 1 mmol/L?");
        assertThat(alkalinity("nan mmol/L")).contains("--tap-alkalinity");
        assertThat(CommandRun.of(
                                "float",
                                "--shape",
                                "sphere(diameter=65 mm)",
                                "--mass",
                                "138 g",
                                "--tap-alkalinity",
                                "2 mmol/L")
                        .status())
                .isEqualTo(2);
    }

    private static String alkalinity(String text) {
        CommandRun run = run("--recipe", LEMON, "--mass", "138 g", "--tap-alkalinity", text);
        assertThat(run.status()).as(text).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        return run.err();
    }

    @Test
    void theDrawsThatAreSaidAreThoseThatWereWalked() {
        String[] ask = {"--mass", "138 g", "--explain"};
        assertThat(withSamples("160", ask)).contains("128 of the 160 draws", "entering water", "fizzes at 77 %");
        assertThat(central(ask)).contains("the middle case alone").doesNotContain("128");
    }

    /** A piece that bobs is said to bob, once; one that sinks and comes up is told without its bobbing. */
    @Test
    void theWayIsToldInOnePhrase() {
        assertThat(way("138 g")).startsWith("bobs for ").contains(", then floats, is gone after ");
        assertThat(way("150 g"))
                .startsWith("sinks to the bottom at once, comes up after ")
                .contains(" and floats, is gone after ")
                .doesNotContain("bobs", "after 0 s");
        assertThat(way("180 g")).startsWith("sinks to the bottom at once, is gone after ");
    }

    private static String way(String mass) {
        String out = central("--mass", mass);
        int from = out.indexOf("in the tub ") + 11;
        return out.substring(from, out.indexOf(" (middle case)", from));
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
