package org.fizzhull.cli.drying;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drying options in {@code press}, {@code batch} and {@code fizz}, the page of a batch, and the weight's interval. */
class BatchAndDryingTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String LEMON = Path.of("src/doc/recipes/lemon.yaml").toString();

    @TempDir
    Path folder;

    private static JsonNode answer(String command, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(command, "--recipe", LEMON, "--shape", BALL, "--json"));
        if (!List.of(more).contains("--samples")) {
            words.addAll(List.of("--samples", "256"));
        }
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults(command, run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    /** The same piece in the same air and draws is ready at the same time whoever is asked. */
    @Test
    void pressBatchAndDryAgree() throws IOException {
        String[] how = {"--fill", "146 g", "--air", "20 C, 55 %", "--dry-for", "3 d"};
        JsonNode dry = answer("dry", how);
        JsonNode press = answer("press", how);
        List<String> words = new ArrayList<>(List.of(how));
        words.addAll(List.of("--pieces", "12"));
        JsonNode batch = answer("batch", words.toArray(new String[0]));
        for (JsonNode other : List.of(press, batch)) {
            assertThat(other.get("ready_after_h")).isEqualTo(dry.get("ready_after_h"));
            assertThat(other.get("dried_mass_g")).isEqualTo(dry.get("final_mass_g"));
            assertThat(AnswerJson.codes(other)).doesNotContain("not-dried");
        }
    }

    /**
     * Air as damp as the mix's own films dries nothing, so no amount of liquid holds: reaction number of
     * core/docs/physics/drying.md, 7.
     */
    @Test
    void airDecidesHowMuchLiquidIsTooMuch() throws IOException {
        double usual = answer("press").get("liquid_window_g").get("high").asDouble();
        JsonNode damper = answer("press", "--air", "20 C, 69 %");
        assertThat(damper.get("liquid_window_g").get("high").asDouble()).isLessThan(usual);
        assertThat(AnswerJson.codes(damper)).contains("no-piece-to-dry");
        assertThat(answer("press", "--air", "20 C, 75 %").get("liquid_window_g").isNull())
                .isTrue();
    }

    /** Janssen: the deeper under the plunger, the less arrives; a ball in halves is half as deep. */
    @Test
    void onePlungerPressesLess() throws IOException {
        JsonNode halves = answer("press", "--press", "firm, two halves");
        JsonNode plunger = answer("press", "--press", "firm, one plunger");
        assertThat(AnswerJson.median(plunger, "damp_mass_g")).isLessThan(AnswerJson.median(halves, "damp_mass_g"));
        assertThat(AnswerJson.codes(halves)).contains("two-halves");
        assertThat(AnswerJson.codes(plunger)).contains("one-plunger");
        assertThat(answer("press", "--press", "firm").get("damp_mass_g")).isEqualTo(halves.get("damp_mass_g"));
    }

    /** A room that the pieces make damp dries slower than one that stays as it is; --pieces is the batch's own. */
    @Test
    void aBatchMakesItsRoomDamp() throws IOException {
        String[] open = {"--fill", "146 g", "--pieces", "200", "--air", "20 C, 55 %", "--dry-for", "3 d"};
        JsonNode batch = answer("batch", open);
        List<String> words = new ArrayList<>(List.of(open));
        words.addAll(List.of("--room", "10 m3, 0.2 changes/h"));
        JsonNode closed = answer("batch", words.toArray(new String[0]));
        assertThat(AnswerJson.median(closed, "dried_mass_g")).isGreaterThan(AnswerJson.median(batch, "dried_mass_g"));
        assertThat(closed.get("pieces").asInt()).isEqualTo(200);
    }

    @Test
    void storedInDampAirFizzesLessAndSaysSo() throws IOException {
        String[] fresh = {"--fill", "146 g", "--air", "20 C, 45 %", "--dry-for", "3 d"};
        JsonNode young = answer("fizz", fresh);
        List<String> words = new ArrayList<>(List.of(fresh));
        words.addAll(List.of("--stored", "200 d", "--stored-air", "25 C, 80 %"));
        JsonNode old = answer("fizz", words.toArray(new String[0]));
        assertThat(old.get("fizz_lost_percent").asDouble())
                .isGreaterThan(young.get("fizz_lost_percent").asDouble() + 2);
        assertThat(old.get("co2_max_mol").asDouble())
                .isLessThan(young.get("co2_max_mol").asDouble());
        assertThat(AnswerJson.median(old, "gas_peak_L_per_min"))
                .isLessThan(AnswerJson.median(young, "gas_peak_L_per_min"));
        assertThat(AnswerJson.codes(old)).contains("fizz-lost", "sealed-jars-burst", "jar-pressure");
    }

    /** IDENTITY: what is lost is lost, small or large, whoever is asked; the cells differ, coarse for one and fine for all. */
    @Test
    void fizzAndDryTellTheSameLoss() throws IOException {
        for (String change : List.of("water +0 g", "water +10 g")) {
            String[] words = {
                "--fill", "146 g", "--change", change, "--air", "20 C, 45 %", "--dry-for", "3 d", "--samples", "0"
            };
            double dry = AnswerJson.median(answer("dry", words), "fizz_lost_percent");
            double fizz = answer("fizz", words).get("fizz_lost_percent").asDouble();
            assertThat(dry).isGreaterThan(1);
            assertThat(fizz).isCloseTo(dry, within(1e-3 * dry));
            words[words.length - 1] = "256";
            // the draws are the same ones, so their bands are the same to the last digit
            assertThat(answer("fizz", words).get("fizz_lost_band_percent"))
                    .isEqualTo(answer("dry", words).get("fizz_lost_percent"));
        }
    }

    /** By hand: what the powder of 146 g damp can give, 510 of 527 parts of it dry, 300 g bicarbonate and 150 g acid in 510. */
    @Test
    void gasOfAMadePiece() throws IOException {
        JsonNode fizz = answer("fizz", "--fill", "146 g", "--air", "20 C, 45 %");
        double dry = 146.0 * 510 / 527;
        double acidGroups = dry * 150 / 510 * 3 / 192.124;
        double most = acidGroups * (1 - fizz.get("fizz_lost_percent").asDouble() / 100);
        assertThat(fizz.get("co2_max_mol").asDouble()).isCloseTo(most, within(1e-4 * most));
    }

    @Test
    void theWeightsIntervalIsThatOfPress() throws IOException {
        JsonNode press = answer("press", "--press", "firm");
        JsonNode floats = answer("float", "--press", "firm");
        JsonNode interval = floats.get("mass_interval_g");
        assertThat(interval.get("low").asDouble())
                .isLessThan(floats.get("mass_g").asDouble());
        assertThat(interval.get("high").asDouble())
                .isGreaterThan(floats.get("mass_g").asDouble());
        // other columns of the same points: the medians of 256 draws of a spread of 15 % differ by 2 % or so
        assertThat(AnswerJson.median(floats, "mass_interval_g"))
                .isCloseTo(
                        AnswerJson.median(press, "damp_mass_g"),
                        within(0.05 * AnswerJson.median(press, "damp_mass_g")));
        JsonNode still = answer("float", "--press", "firm", "--no-fizz");
        assertThat(still.get("mass_interval_g").get("low").asDouble()).isLessThan(130);
        JsonNode certain = answer("float", "--press", "firm", "--samples", "0");
        assertThat(certain.get("mass_interval_g").get("low")).isEqualTo(certain.get("mass_g"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "48", "900"})
    void thePageIsWrittenTheSameTwice(String pieces) throws IOException {
        String[] pages = new String[2];
        for (int i = 0; i < 2; i++) {
            Path page = folder.resolve("plan" + i + ".svg");
            assertThat(CommandRun.of(
                                    "batch",
                                    "--recipe",
                                    LEMON,
                                    "--shape",
                                    BALL,
                                    "--press",
                                    "firm",
                                    "--pieces",
                                    pieces,
                                    "--chart",
                                    page.toString())
                            .status())
                    .isZero();
            pages[i] = Files.readString(page);
        }
        assertThat(pages[0])
                .isEqualTo(pages[1])
                .contains("Lighthouse lemon", "Order of mixing", "sodium bicarbonate", "mask", "you may stop here")
                .doesNotContain("NaN", "null", "\u00A0");
    }

    @Test
    void explained() {
        String page = CommandRun.of(
                        "batch", "--recipe", LEMON, "--shape", BALL, "--press", "firm", "--pieces", "3", "--explain")
                .out();
        assertThat(page).contains("Behind it", "no source", "assumed", "30 kPa");
    }

    /** What a person gave is named as the person gave it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "--fill|press|--fill|400 g",
                "--fill|fizz|--fill|400 g",
                "--fill|dry|--fill|400 g|--air|20 C, 50 %",
                "--mix-size|batch|--press|firm|--pieces|3|--mix-size|5 kg",
                "--pieces|batch|--press|firm|--pieces|0",
                "--press|press|--press|firm, three halves",
                "--room|press|--press|firm|--pieces|3",
                "--bath|fizz|--mass|138 g|--bath|38 C, 35 m",
            })
    void refusedByItsOption(String line) throws IOException {
        String[] parts = line.split("\\|");
        List<String> words = new ArrayList<>(List.of(parts[1], "--recipe", LEMON, "--shape", BALL, "--json"));
        words.addAll(List.of(parts).subList(2, parts.length));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(line).isEqualTo(2);
        assertThat(AnswerJson.read(run.out()).get("error").get("field").asText())
                .isEqualTo(parts[0]);
    }
}
