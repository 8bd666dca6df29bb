package org.fizzhull.cli.drying;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.AnswerJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code dry --log}: a drying log that fits, one that does not, and one of a piece that gains weight. */
class DryLogCommandTest {
    private static final String LEMON = "src/doc/recipes/lemon.yaml";

    @TempDir
    Path folder;

    /**
     * A log made from the answer's own median course agrees with what was expected before: the fitted time lies inside the
     * interval without the log, and the interval becomes narrower. By the rule of Bayes, no number is known beforehand.
     */
    @Test
    void aLogOfThisCourseIsRecognised() throws IOException {
        JsonNode plain = DryCommandTest.answer(LEMON, "--air", "21 C, 55 %", "--dry-for", "3 d");
        StringBuilder comma = new StringBuilder("piece,when,weight_g\n");
        for (int k : new int[] {0, 6, 12}) {
            JsonNode row = plain.get("series").get(k);
            comma.append("A,")
                    .append(row.get("hour").asText())
                    .append(" h,")
                    .append(row.get("mass_g").asText())
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolve("w.csv"), comma);
        JsonNode fit =
                DryCommandTest.answer(LEMON, "--air", "21 C, 55 %", "--dry-for", "3 d", "--log", file.toString());
        JsonNode before = plain.get("ready_after_h");
        JsonNode after = fit.get("ready_after_h");
        assertThat(after.get("median").asDouble())
                .isBetween(before.get("low").asDouble(), before.get("high").asDouble());
        assertThat(after.get("high").asDouble() - after.get("low").asDouble())
                .isLessThan(before.get("high").asDouble() - before.get("low").asDouble());
        assertThat(fit.get("still_to_go_g").get("high").asDouble()).isGreaterThan(0);
        String semicolons = "\uFEFF" + comma.toString().replace(',', ';');
        Path other = Files.writeString(folder.resolve("w2.csv"), semicolons);
        JsonNode same =
                DryCommandTest.answer(LEMON, "--air", "21 C, 55 %", "--dry-for", "3 d", "--log", other.toString());
        assertThat(same.get("still_to_go_g")).isEqualTo(fit.get("still_to_go_g"));
    }

    /** A piece that gains weight is not called dry: what it takes up is said first, and no air is named as the one that dries. */
    @Test
    void aPieceThatGainsWeightIsToldSoFirst() throws IOException {
        Path file = Files.writeString(
                folder.resolve("w.csv"),
                "piece,when,weight_g\nA,0 h,146.0\nA,12 h,146.4\nA,24 h,146.9\nA,36 h,147.3\n");
        JsonNode damp = DryCommandTest.answer(LEMON, "--air", "21 C, 80 %", "--log", file.toString());
        assertThat(AnswerJson.codes(damp)).contains("gains-weight").doesNotContain("log-misfit");
        assertThat(damp.get("verdict").asText()).startsWith("Takes up water").contains("1.3 g more");
    }

    @Test
    void aLogOfAnotherCourseSaysSo() throws IOException {
        Path file = Files.writeString(
                folder.resolve("w.csv"), "piece,when,weight_g\nA,0 h,146.0\nA,1 d,140.0\nA,2 d,133.0\n");
        JsonNode fit = DryCommandTest.answer(LEMON, "--air", "21 C, 55 %", "--log", file.toString());
        assertThat(fit.get("still_to_go_g").isNull()).isTrue();
        assertThat(AnswerJson.codes(fit)).contains("log-misfit");
    }
}
