package org.fizzhull.cli.learning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a trials sheet to a bench file to every later answer; all trials are invented. */
class LearnCommandTest {
    private static final String SHEET =
            Path.of("src/doc/trials", "lighthouse.csv").toString();
    private static final String BALL = "sphere(diameter=65 mm)";

    @TempDir
    private Path folder;

    private CommandRun learn(String sheet, String... more) {
        String[] words = new String[7 + more.length];
        System.arraycopy(
                new String[] {"learn", "--trials", sheet, "--out", bench(), "--date", "2026-08-14"}, 0, words, 0, 7);
        System.arraycopy(more, 0, words, 7, more.length);
        return CommandRun.of(words);
    }

    private String bench() {
        return folder.resolve("bench.yaml").toString();
    }

    private String sheet(String text) throws IOException {
        Path file = folder.resolve("trials.csv");
        Files.writeString(file, text);
        return file.toString();
    }

    private static double width(JsonNode interval) {
        return interval.get("high").asDouble() - interval.get("low").asDouble();
    }

    /** By definition: what was learned narrows what is asked next, in every command that takes it. */
    @Test
    void aSheetBecomesABenchThatNarrows() throws IOException {
        CommandRun run = learn(SHEET, "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("learn", run.out())).isEmpty();
        JsonNode learned = AnswerJson.read(run.out());
        assertThat(learned.get("trials_used").asInt()).isEqualTo(8);
        assertThat(Files.readString(Path.of(bench()))).startsWith("#").contains("made: \"2026-08-14\"", "bubble size:");
        for (String command : new String[] {"float", "fizz"}) {
            String[] asked = {command, "--shape", BALL, "--mass", "142 g", "--samples", "512", "--json"};
            if (command.equals("fizz")) {
                asked = new String[] {
                    command,
                    "--shape",
                    BALL,
                    "--mass",
                    "142 g",
                    "--samples",
                    "512",
                    "--json",
                    "--recipe",
                    "src/doc/recipes/lemon.yaml"
                };
            }
            String[] benched = java.util.Arrays.copyOf(asked, asked.length + 2);
            benched[asked.length] = "--bench";
            benched[asked.length + 1] = bench();
            JsonNode before = AnswerJson.read(CommandRun.of(asked).out());
            CommandRun narrowed = CommandRun.of(benched);
            assertThat(narrowed.status()).as(narrowed.err()).isZero();
            assertThat(AnswerJson.faults(command, narrowed.out())).isEmpty();
            JsonNode after = AnswerJson.read(narrowed.out());
            assertThat(width(after.get("fizz_time_s"))).isLessThan(0.5 * width(before.get("fizz_time_s")));
        }
    }

    /** The same sheet and seed: the same bytes. */
    @Test
    void sameSheetSameFile() throws IOException {
        learn(SHEET);
        String first = Files.readString(Path.of(bench()));
        learn(SHEET);
        assertThat(Files.readString(Path.of(bench()))).isEqualTo(first);
    }

    @Test
    void whatCannotBeReadNamesItsRow() throws IOException {
        assertThat(learn(sheet("mould,bath_g,result\n\"" + BALL + "\",142,swam\n"))
                        .err())
                .contains("floated, rose or sank", "trials.csv, line 2");
        assertThat(learn(sheet("mould;bath_g;weather\n")).err()).contains("weather");
        assertThat(learn(sheet("mould,bath_g,result\n\"" + BALL + "\",142,floated\n"))
                        .err())
                .contains("2 or more");
        CommandRun odd = learn(sheet("mould,bath_g,result,lift_g,lift_after_s\n\"" + BALL + "\",142,floated,60,4\n\""
                + BALL + "\",141,floated,148,4\n"));
        assertThat(odd.status()).isEqualTo(2);
        assertThat(odd.err()).contains("line 2", "lift_g");
    }

    @Test
    void aBrokenBenchIsRefused() throws IOException {
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, "factors:\n  gravity: {median: 1}\ndraws: []\n");
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "142 g", "--bench", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("gravity", "bench.yaml, line 2");
    }

    /** The dunk, typed as the help says, is met, and may be repeated. */
    @Test
    void aLiftNarrows() throws IOException {
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                BALL,
                "--mass",
                "142 g",
                "--samples",
                "512",
                "--json",
                "--measured-lift",
                "151 g after 5 s",
                "--measured-lift",
                "150 g +- 1.5 g after 4 s at 140 g");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("float", run.out())).isEmpty();
        JsonNode measured = AnswerJson.read(run.out()).get("measured");
        assertThat(measured.get("lift").get("reading_g").asDouble()).isEqualTo(151);
        assertThat(measured.get("further").get(0).get("mass_g").asDouble()).isEqualTo(140);
        assertThat(CommandRun.of("float", "--shape", BALL, "--mass", "142 g", "--measured-lift", "151 g")
                        .err())
                .contains("after");
    }
}
