package org.fizzhull.cli.option;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No value passes unread, and the units of the text are those of the question. Factors: NIST SP 811 (2008), appendix B. */
class UnusedAndUnitsTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String LEMON = "src/doc/recipes/lemon.yaml";

    @TempDir
    Path folder;

    @Test
    void aValueNobodyReadsIsRefused() {
        refused("--cups", "float", "--shape", BALL, "--mass", "138 g", "--cups", "banana", "--samples", "128");
        refused("--inside", "press", "--recipe", LEMON, "--shape", BALL, "--inside", "banana", "--samples", "128");
        refused(
                "--threads",
                "batch",
                "--recipe",
                LEMON,
                "--shape",
                BALL,
                "--pieces",
                "4",
                "--press",
                "firm",
                "--threads",
                "banana");
        refused("--units", "shapes", BALL, "--units", "imperial");
    }

    private static void refused(String option, String... words) {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("fizzhull: " + option + ": read ").hasLineCount(1);
    }

    @Test
    void anOptionOfTheRunMayGoUnused() {
        CommandRun run = CommandRun.of(
                "batch", "--recipe", LEMON, "--shape", BALL, "--pieces", "4", "--press", "firm", "--threads", "2");
        assertThat(run.status()).isZero();
    }

    /** 2.5 in are 63.5 mm (exact), 4.6 oz 130.4 g, 100 F 37.8 C. */
    @Test
    void ouncesInchesAndFahrenheitComeBackAsTheyCameIn() {
        String[] words = {
            "float", "--shape", "sphere(diameter=2.5 in)", "--mass", "4.6 oz", "--bath", "100 F", "--samples", "128"
        };
        CommandRun given = CommandRun.of(words);
        // an option to type back is that of the metric example
        String said = given.out().replaceAll("--measured-(rise|lift)\\s+\"[^\"]*\"", "");
        assertThat(said).contains("4.6 oz", "100 F").doesNotContain(" g ", " mm ");

        CommandRun metric = CommandRun.of(with(words, "--units", "metric"));
        assertThat(metric.out()).contains("130.4 g", "37.8 C").doesNotContain(" oz", " 2.5 in");

        assertThat(CommandRun.of(with(words, "--json")))
                .isEqualTo(CommandRun.of(with(words, "--json", "--units", "us")));
    }

    @Test
    void metricStaysMetricUnlessAsked() {
        String[] words = {"float", "--shape", BALL, "--mass", "138 g", "--samples", "128"};
        assertThat(CommandRun.of(words)).isEqualTo(CommandRun.of(with(words, "--units", "metric")));
        // 138 g / 28.349523125 g = 4.868 oz
        assertThat(CommandRun.of(with(words, "--units", "us")).out()).contains("4.87 oz");
    }

    private static String[] with(String[] words, String... more) {
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "--weight, float, Did you mean --mass?",
        "--mas, float, Did you mean --mass?",
        "--mass, press, --mass belongs to",
        "--log, float, --log belongs to",
        "--draws, float, Did you mean --samples?",
        "--colour, float, --help",
    })
    void anUnknownOptionNamesTheOneThatWasMeant(String option, String command, String hint) {
        CommandRun run = CommandRun.of(command, option, "1");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(hint);
    }

    @Test
    void changesAndToppingsAreListsOrRepeated() {
        String[] base = {
            "float", "--shape", BALL, "--recipe", LEMON, "--fill", "146 g", "--samples", "128", "--units", "metric"
        };
        assertThat(CommandRun.of(with(base, "--change", "corn starch +20 g, water -1 g")))
                .isEqualTo(CommandRun.of(with(base, "--change", "corn starch +20 g", "--change", "water -1 g")));
        assertThat(CommandRun.of(with(base, "--on-top", "6 g coarse salt, 1 g dried petals")))
                .isEqualTo(CommandRun.of(with(base, "--on-top", "6 g coarse salt", "--on-top", "1 g dried petals")));
    }

    @Test
    void aPictureThatCannotBeWrittenLeavesTheOldOne() throws Exception {
        Path old = Files.writeString(folder.resolve("ball.svg"), "old");
        Path pipe = folder.resolve("pipe.svg");
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();

        CommandRun refused = CommandRun.of("shapes", "lump(diameter=65 mm)", "--chart", old.toString());
        CommandRun piped = CommandRun.of("shapes", BALL, "--chart", pipe.toString());

        assertThat(refused.status()).isEqualTo(2);
        assertThat(Files.readString(old)).isEqualTo("old");
        assertThat(piped.status()).isEqualTo(2);
        assertThat(piped.err()).contains("pipe or a device");
    }

    @Test
    void pipesAndDevicesAreNoFiles() throws Exception {
        Path pipe = folder.resolve("pipe");
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
        for (String name : new String[] {pipe.toString(), "/dev/zero"}) {
            assertThat(CommandRun.of("shapes", "mesh(file=\"" + name + "\", unit=mm)")
                            .err())
                    .contains("pipe or a device");
            assertThat(CommandRun.of("shapes", "revolved(file=\"" + name + "\")")
                            .err())
                    .contains("pipe or a device");
            assertThat(CommandRun.of("press", "--recipe", name).err()).contains("pipe or a device");
        }
    }
}
