package org.fizzhull.cli.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a window shows of {@code compare}: its first words and its widest table. */
class CompareWindowTest {
    private static final String CLAY = "src/doc/recipes/harbour-clay.yaml";
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String DOME = "dome(diameter=80 mm)";

    private static CommandRun clay(String... words) {
        List<String> all = new ArrayList<>(List.of("compare", "--recipe", CLAY, "--shape", BALL, "--shape", DOME));
        all.addAll(Arrays.asList(words));
        return CommandRun.of(all.toArray(new String[0]));
    }

    /** Recipes times moulds over baths, dried: the widest table there is fits a window of 25 lines of 80. */
    @Test
    void recipesTimesMouldsOverBathsFitAWindow() {
        CommandRun run = clay(
                "--recipe",
                "src/doc/recipes/lemon.yaml",
                "--press",
                "light",
                "--baths",
                "homes",
                "--air",
                "21 C, 50 %",
                "--dry-for",
                "3 d",
                "--samples",
                "128");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out().lines().count()).as(run.out()).isLessThanOrEqualTo(25);
        assertThat(run.out().lines()).as(run.out()).allMatch(line -> line.length() <= 80);
        assertThat(run.out().replaceAll("\\s+", " ")).contains("65 mm ball with Harbour clay");
    }

    /** Bounds of the words: likely above 0.66, unlikely below 0.33 (IPCC guidance note, as in {@code Likelihood}). */
    @ParameterizedTest
    @CsvSource({"0.65, relied on", "0.33, relied on", "0.32, is likely", "0.001, is likely"})
    void aChanceInTheMiddleIsNotCalledUnlikely(double surest, String words) {
        assertThat(CompareSentence.none(surest)).contains(words);
    }

    /** The opening and the number in it agree, whichever row is the surest. */
    @ParameterizedTest
    @CsvSource({"light", "firm", "hard"})
    void theOpeningAgreesWithTheChanceItTells(String press) throws IOException {
        String answer = clay("--press", press, "--samples", "256").out().replaceAll("\\s+", " ");
        CommandRun json = clay("--press", press, "--samples", "256", "--json");
        assertThat(AnswerJson.faults("compare", json.out())).isEmpty();
        double surest = 0;
        for (JsonNode row : AnswerJson.read(json.out()).get("rows")) {
            surest = Math.max(surest, row.at("/probability/floats_to_the_end").asDouble());
        }
        assertThat(answer.contains("is likely to float")).as(answer).isEqualTo(surest < 0.33);
        assertThat(answer.contains("can be relied on")).as(answer).isEqualTo(surest >= 0.33 && surest < 0.66);
    }
}
