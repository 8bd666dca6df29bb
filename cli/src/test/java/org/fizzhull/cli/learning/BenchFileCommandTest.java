package org.fizzhull.cli.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a bench file's own keys say to the commands; all measurements are invented. */
class BenchFileCommandTest {
    private static final String BALL = "sphere(diameter=65 mm)";

    @TempDir
    private Path folder;

    private static CommandRun more(String[] line, String... further) {
        String[] all = java.util.Arrays.copyOf(line, line.length + further.length);
        System.arraycopy(further, 0, all, line.length, further.length);
        return CommandRun.of(all);
    }

    private static double width(JsonNode interval) {
        return interval.get("high").asDouble() - interval.get("low").asDouble();
    }

    /**
     * By definition: water in the mould says its size, as the exact shape that holds as much does; 998 kg/m3 at 20 C (CRC Handbook,
     * from memory), so that 146.9 g fill a ball of 65.5 mm.
     */
    @Test
    void waterInTheMouldSaysItsSize() throws IOException {
        Path bench = Files.writeString(folder.resolve("water.yaml"), "mould water: [\"146.9 g in " + BALL + "\"]\n");
        String[] line = {"float", "--no-fizz", "--mass", "142 g", "--samples", "512", "--json", "--shape"};
        JsonNode stated = AnswerJson.read(more(line, BALL).out());
        JsonNode filled =
                AnswerJson.read(more(line, BALL, "--bench", bench.toString()).out());
        JsonNode larger = AnswerJson.read(
                more(line, "sphere(diameter=65.5 mm)", "--measured", "water").out());
        double spare = filled.get("spare_at_drop_g").get("median").asDouble();
        assertThat(spare).isCloseTo(larger.get("spare_at_drop_g").get("median").asDouble(), within(0.15));
        assertThat(spare)
                .isGreaterThan(stated.get("spare_at_drop_g").get("median").asDouble() + 2.5);
        assertThat(width(filled.get("spare_at_drop_g"))).isCloseTo(width(larger.get("spare_at_drop_g")), within(0.2));
        // of another mould, and where the line itself says how the size is known, it does not count, and that is said
        assertThat(used(more(line, "dome(diameter=80 mm)", "--bench", bench.toString())))
                .contains("mould water (of another mould)");
        assertThat(used(more(line, BALL, "--measured", "ruler", "--bench", bench.toString())))
                .contains("--measured says how the size is known");
        Files.writeString(bench, "scale: 1 g\nmould water: [300 g in " + BALL + "]\n");
        assertThat(more(line, BALL, "--bench", bench.toString()).err()).contains("mould water", "water.yaml, line 2");
    }

    /** A drying log of the bench narrows what is dried as dry --log does, whatever asks; refused with its line where it cannot be read. */
    @Test
    void aDryingLogOfTheBenchNarrowsWhateverIsDried() throws IOException {
        Files.writeString(folder.resolve("w.csv"), "piece,when,weight_g\nA,0 h,146.0\nA,24 h,145.2\nA,48 h,144.8\n");
        Path bench = Files.writeString(
                folder.resolve("logs.yaml"),
                "drying logs:\n  - {log: w.csv, fill: 146 g, air: \"21 C, 50 %\", shape: \"" + BALL + "\"}\n");
        String[] dry = {
            "dry",
            "--recipe",
            "src/doc/recipes/lemon.yaml",
            "--shape",
            BALL,
            "--fill",
            "146 g",
            "--samples",
            "1024",
            "--dry-for",
            "3 d",
            "--json",
            "--air"
        };
        JsonNode plain = AnswerJson.read(more(dry, "21 C, 50 %").out());
        JsonNode own = AnswerJson.read(
                more(dry, "21 C, 50 %", "--log", folder.resolve("w.csv").toString())
                        .out());
        CommandRun run = more(dry, "21 C, 50 %", "--bench", bench.toString());
        JsonNode benched = AnswerJson.read(run.out());
        assertThat(used(run)).isEqualTo("From the bench file: drying logs.");
        double before = width(plain.get("water_gone_g"));
        assertThat(width(own.get("water_gone_g"))).isLessThan(0.9 * before);
        assertThat(width(benched.get("water_gone_g"))).isCloseTo(width(own.get("water_gone_g")), within(0.15 * before));
        assertThat(benched.get("water_gone_g").get("median").asDouble())
                .isCloseTo(own.get("water_gone_g").get("median").asDouble(), within(0.1));
        String[] heavy = {
            "float",
            "--recipe",
            "src/doc/recipes/lemon.yaml",
            "--shape",
            BALL,
            "--fill",
            "146 g",
            "--samples",
            "256",
            "--json",
            "--bench",
            bench.toString()
        };
        assertThat(used(more(heavy))).contains("drying logs (nothing is dried here)");
        assertThat(used(more(heavy, "--air", "18 C, 55 %"))).isEqualTo("From the bench file: drying logs.");
        for (String wrong : new String[] {"air: \"21 C, 50 %\"", "fill: 146 g, air: dry", "fill: 146 g", "weight: 3"}) {
            Files.writeString(bench, "scale: 1 g\ndrying logs:\n  - {log: w.csv, " + wrong + "}\n");
            CommandRun refused = more(heavy, "--air", "18 C, 55 %");
            assertThat(refused.status()).as(wrong).isEqualTo(2);
            assertThat(refused.err()).as(wrong).contains("logs.yaml, line 3");
        }
    }

    /** What is said of the bench file, the same in JSON and on the page. */
    private static String used(CommandRun run) throws IOException {
        for (JsonNode notice : AnswerJson.read(run.out()).get("notices")) {
            if (notice.get("code").asText().equals("bench-used")) {
                assertThat(run.err()).contains(notice.get("text").asText());
                return notice.get("text").asText();
            }
        }
        throw new AssertionError("nothing is said of the bench file: " + run.out() + run.err());
    }

    /** Every command that draws says what it took, on its page, too. */
    @Test
    void theBenchTellsWhatCounts() throws IOException {
        Path bench = Files.writeString(
                folder.resolve("some.yaml"),
                "scale: 0.1 g\nresults: [sank at 152 g, \"floated at 140 g in dome(diameter=80 mm)\"]\n");
        String[] line = {"float", "--shape", BALL, "--mass", "142 g", "--samples", "128", "--bench", bench.toString()};
        assertThat(more(line).out().replaceAll("\\s+", " "))
                .contains("From the bench file: scale, results (1 of 2); not used: results (1 of 2: of another"
                        + " mould).");
        CommandRun typed = more(line, "--measured-result", "sank at 150 g in dome(diameter=80 mm)");
        assertThat(typed.status()).isEqualTo(2);
        assertThat(typed.err()).contains("--measured-result", "the mould that is asked about");
    }
}
