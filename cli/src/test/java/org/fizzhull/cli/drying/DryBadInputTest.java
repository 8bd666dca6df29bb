package org.fizzhull.cli.drying;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What {@code dry} refuses, of its options and of a log of weighings. */
class DryBadInputTest {
    private static final String LEMON = "src/doc/recipes/lemon.yaml";

    @TempDir
    Path folder;

    static List<Arguments> refused() {
        String air = "21 C, 50 %";
        return List.of(
                refusal("missing-option", "hygrometer"),
                refusal("unreadable-air", "humidity", "--air", "21 C"),
                refusal("out-of-range", "between 0 C and 60 C", "--air", "80 C, 40 %"),
                refusal("out-of-range", "100", "--air", "21 C, 140 %"),
                refusal("below-dew-point", "dew point", "--air", "outside 25 C, 90 %, heated to 10 C"),
                refusal("unreadable-air", "heated", "--air", "outside 8 C, 85 %"),
                refusal("missing-unit", "d", "--air", air, "--dry-for", "3"),
                refusal("out-of-range", "0 d", "--air", air, "--dry-for", "0 d"),
                refusal("wrong-dimension", "3 g", "--air", air, "--dry-for", "3 g"),
                refusal("unknown-word", "rack, tray, cloth or mould", "--air", air, "--on", "shelf"),
                refusal("unknown-word", "shrink film", "--air", air, "--wrap", "paper", "--wrap-after", "2 d"),
                refusal("missing-option", "--wrap-after 2 d", "--air", air, "--wrap", "jar"),
                refusal("conflict", "other than none", "--air", air, "--wrap", "none", "--wrap-after", "2 d"),
                refusal("conflict", "--dry-for", "--air", air, "--wrap-after", "4 d", "--dry-for", "3 d"),
                refusal("missing-option", "--stored 60 d", "--air", air, "--stored-air", "20 C, 60 %"),
                refusal("missing-option", "pieces", "--air", air, "--room", "25 m3"),
                refusal("missing-option", "25 m3", "--air", air, "--pieces", "40"),
                refusal("unreadable-room", "changes/h", "--air", air, "--room", "25 m3, windy", "--pieces", "4"),
                refusal("out-of-range", "whole number", "--air", air, "--room", "25 m3", "--pieces", "0"),
                refusal("unreadable-date", "2026-08-14 18:30", "--air", air, "--start", "tomorrow"),
                refusal("missing-option", "--start", "--air", air, "--sell-by", "2026-08-20"),
                refusal(
                        "conflict",
                        "after --start",
                        "--air",
                        air,
                        "--start",
                        "2026-08-14 18:30",
                        "--sell-by",
                        "2026-08-14"),
                refusal(
                        "unreadable-date",
                        "2026-08-20",
                        "--air",
                        air,
                        "--start",
                        "2026-08-14 18:30",
                        "--sell-by",
                        "2026-02-30"),
                refusal("no-file", "there", "--air", air, "--log", "nowhere.csv"),
                refusal("conflict", "one of the two", "--air", air, "--press", "firm"));
    }

    private static Arguments refusal(String code, String says, String... more) {
        return Arguments.of(code, says, more);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("refused")
    void badOptionsAreRefusedWithAMend(String code, String says, String[] more) throws IOException {
        assertRefused(code, says, CommandRun.of(DryCommandTest.words(LEMON, more)), more);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "missing | weight_g | piece,when,weight\\nA,0 h,146",
                "comma-number | decimal point | piece;when;weight_g\\nA;0 h;146,5\\nA;1 d;144,1",
                "out-of-order | Sort | piece,when,weight_g\\nA,2 d,146\\nA,1 d,145",
                "out-of-range | tomorrow | piece,when,weight_g\\nA,2 d,146",
                "out-of-range | above 0 | piece,when,weight_g\\nA,0 h,-3\\nA,1 d,145",
                "missing-unit | when | piece,when,weight_g\\nA,2,146\\nA,1 d,145",
                "unreadable-date | when | piece,when,weight_g\\nA,2026-13-40 10:00,146\\nA,1 d,145",
                "repeated | twice | piece,when,when,weight_g\\nA,0 h,0 h,146",
                "too-many | decimal point | piece,when,weight_g\\nA,0 h,146,5\\nA,1 d,145",
                "missing | weight_g | piece,when,weight_g\\nA,0 h\\nA,1 d,145"
            })
    void badLogsNameTheCell(String code, String says, String table) throws IOException {
        Path file = Files.writeString(folder.resolve("w.csv"), table.replace("\\n", "\n"));
        String[] more = {"--air", "21 C, 50 %", "--log", file.toString()};
        CommandRun run = CommandRun.of(DryCommandTest.words(LEMON, more));
        assertRefused(code.equals("comma-number") ? "not-a-number" : code, says, run, more);
        assertThat(run.err()).contains("w.csv");
    }

    private static void assertRefused(String code, String says, CommandRun run, String... more) throws IOException {
        assertThat(run.status()).as(run.out()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).startsWith("fizzhull: ").contains(says);
        String[] json = Arrays.copyOf(more, more.length + 1);
        json[more.length] = "--json";
        CommandRun error = CommandRun.of(DryCommandTest.words(LEMON, json));
        assertThat(AnswerJson.faults("error", error.out())).isEmpty();
        assertThat(AnswerJson.read(error.out()).get("error").get("code").asText())
                .isEqualTo(code);
    }
}
