package org.fizzhull.cli.learning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
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

    /**
     * By definition: what stands in a bench file for the maker's own tools is what the options of the same name say; a cup counts
     * as the recipe's own ingredient would.
     */
    @Test
    void whatTheBenchFileSaysOfToolsCounts() throws IOException {
        Path file = folder.resolve("tools.yaml");
        Files.writeString(file, "scale: 0.1 g\nweighed:\n  - 146 g at firm in " + BALL + "\nhygrometer: 2 %\n");
        String[] press = {
            "press",
            "--shape",
            BALL,
            "--recipe",
            "src/doc/recipes/lemon.yaml",
            "--press",
            "firm",
            "--samples",
            "512",
            "--json"
        };
        JsonNode benched =
                AnswerJson.read(more(press, "--bench", file.toString()).out());
        JsonNode typed = AnswerJson.read(
                more(press, "--weighed", "146 g at firm in " + BALL).out());
        JsonNode plain = AnswerJson.read(more(press).out());
        assertThat(benched.get("damp_mass_g")).isEqualTo(typed.get("damp_mass_g"));
        assertThat(width(benched.get("damp_mass_g"))).isLessThan(0.5 * width(plain.get("damp_mass_g")));
        String[] dry = {
            "dry",
            "--shape",
            BALL,
            "--recipe",
            "src/doc/recipes/lemon.yaml",
            "--fill",
            "146 g",
            "--air",
            "20 C, 50 %",
            "--samples",
            "256",
            "--json"
        };
        Path rough = Files.writeString(folder.resolve("rough.yaml"), "hygrometer: 10 %\n");
        JsonNode surer = AnswerJson.read(more(dry, "--bench", file.toString()).out());
        JsonNode vaguer = AnswerJson.read(more(dry, "--bench", rough.toString()).out());
        // at 50 % shown, air above the humidity of the film, 72 %, is within the reach of the second alone: never dry
        assertThat(width(vaguer.get("ready_after_h"))).isGreaterThan(5 * width(surer.get("ready_after_h")));
        String[] weigh = {"float", "--shape", BALL, "--mass", "142 g", "--samples", "256", "--json"};
        JsonNode step = AnswerJson.read(more(weigh, "--scale", "0.1 g").out());
        JsonNode same = AnswerJson.read(more(weigh, "--bench", file.toString()).out());
        for (String key : new String[] {"spare_at_drop_g", "critical_weight_g", "probability"}) {
            assertThat(step.has(key)).isTrue();
            assertThat(same.get(key)).isEqualTo(step.get(key));
        }
    }

    /** By definition: a time or a dunk of the bench file counts as the option would; of another mould it does not count. */
    @Test
    void whatWasMeasuredInTheBathCountsFromTheBenchFile() throws IOException {
        String[] weigh = {"float", "--shape", BALL, "--mass", "142 g", "--samples", "512", "--json"};
        String[][] kinds = {
            {"rise times", "--measured-rise", "95 s at 150 g, 50 mm left"},
            {"fizz times", "--measured-fizz", "4 min at 150 g"},
            {"dunks", "--measured-lift", "151 g after 5 s at 142 g"},
            {"dunks", "--measured-lift", "149 g after 2 s then 150 g after 4 s then 150 g after 6 s at 142 g"},
            {"results", "--measured-result", "sank at 144 g"}
        };
        JsonNode plain = AnswerJson.read(more(weigh).out());
        for (String[] kind : kinds) {
            Path own = Files.writeString(folder.resolve("own.yaml"), kind[0] + ":\n  - " + kind[2] + "\n");
            Path other = Files.writeString(
                    folder.resolve("other.yaml"), kind[0] + ":\n  - " + kind[2] + " in dome(diameter=80 mm)\n");
            JsonNode typed = AnswerJson.read(more(weigh, kind[1], kind[2]).out());
            JsonNode benched =
                    AnswerJson.read(more(weigh, "--bench", own.toString()).out());
            JsonNode elsewhere =
                    AnswerJson.read(more(weigh, "--bench", other.toString()).out());
            for (String key : new String[] {"spare_at_drop_g", "probability", "fizz_time_s", "measured"}) {
                assertThat(benched.get(key)).as(kind[0]).isEqualTo(typed.get(key));
                assertThat(elsewhere.get(key)).as(kind[0]).isEqualTo(plain.get(key));
            }
            assertThat(benched.get("probability")).isNotEqualTo(plain.get("probability"));
        }
    }

    /** The sheet takes the words of a hand; a known pressure is named with the place it belongs to. */
    @Test
    void aKnownPressureBelongsUnderWeighed() throws IOException {
        CommandRun run = learn(sheet("mould,bath_g,press,result\n\"" + BALL + "\",142,30 kPa,sank\n"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .contains("line 2", "press: read 30 kPa", "light, firm or hard", "under weighed in the recipe");
    }

    /** What cannot be read is refused with its key, file and line. */
    @Test
    void anUnreadableDunkIsRefusedWithItsLine() throws IOException {
        Path file = Files.writeString(folder.resolve("own.yaml"), "scale: 1 g\ndunks:\n  - 151 g\n");
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "142 g", "--bench", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("dunks", "own.yaml", "3");
    }

    @Test
    void cupsOfPowdersGoIntoTheBench() throws IOException {
        Path powders = folder.resolve("powders.csv");
        Files.writeString(powders, "name, loose_cup_g, tapped_cup_g\ncorn starch, 150, 185\n");
        CommandRun run = learn(SHEET, "--powders", powders.toString(), "--quiet");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(Files.readString(Path.of(bench()))).contains("\"corn starch\": {loose cup: \"150 g\"");
        String recipe = Files.writeString(
                        folder.resolve("own.yaml"),
                        Files.readString(Path.of("src/doc/recipes/lemon.yaml"))
                                + "\nown ingredients:\n  corn starch: {loose cup: 150 g, tapped cup: 185 g, cup: 240 mL}\n")
                .toString();
        String[] press = {"press", "--shape", BALL, "--fill", "150 g", "--samples", "128", "--json", "--recipe"};
        Path tools = folder.resolve("tools.yaml");
        Files.writeString(tools, "powders:\n  corn starch: {loose cup: 150 g, tapped cup: 185 g, cup: 240 mL}\n");
        JsonNode own = AnswerJson.read(more(press, recipe).out());
        JsonNode benched = AnswerJson.read(more(press, "src/doc/recipes/lemon.yaml", "--bench", tools.toString())
                .out());
        assertThat(benched.get("strength_kPa")).isEqualTo(own.get("strength_kPa"));
        assertThat(benched.get("solid_fraction")).isEqualTo(own.get("solid_fraction"));
        Path again = folder.resolve("again.yaml");
        CommandRun kept = CommandRun.of(
                "learn",
                "--trials",
                SHEET,
                "--bench",
                bench(),
                "--out",
                again.toString(),
                "--date",
                "2026-08-15",
                "--quiet");
        assertThat(kept.status()).as(kept.err()).isZero();
        assertThat(Files.readString(again)).contains("\"corn starch\": {loose cup: \"150 g\"", "2026-08-15");
        Files.writeString(powders, "name, heap_g\ncorn starch, 150\n");
        assertThat(learn(SHEET, "--powders", powders.toString()).err())
                .contains("heap_g", "loose_cup_g", "powders.csv, line 1");
    }

    @Test
    void aToolThatCannotBeReadNamesItsLine() throws IOException {
        Path file = folder.resolve("tools.yaml");
        Files.writeString(file, "made: today\nhygrometer: fine\n");
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "142 g", "--bench", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("hygrometer", "fine", "tools.yaml, line 2");
        Files.writeString(file, "weighed:\n  - 146 g\n");
        assertThat(CommandRun.of(
                                "press",
                                "--shape",
                                BALL,
                                "--recipe",
                                "src/doc/recipes/lemon.yaml",
                                "--fill",
                                "150 g",
                                "--bench",
                                file.toString())
                        .err())
                .contains("146 g at firm", "tools.yaml, line 2");
    }

    private static CommandRun more(String[] line, String... further) {
        String[] all = java.util.Arrays.copyOf(line, line.length + further.length);
        System.arraycopy(further, 0, all, line.length, further.length);
        return CommandRun.of(all);
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

    /** Several readings of one dunk stand under the first; a comma between two says what to type in its place. */
    @Test
    void severalReadingsOfOneDunk() throws IOException {
        String[] weigh = {"float", "--shape", BALL, "--mass", "142 g", "--samples", "512", "--json", "--measured-lift"};
        CommandRun run = more(weigh, "149 g +- 1 g after 2 s then 150 g after 4.5 s at 141 g");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("float", run.out())).isEmpty();
        JsonNode lift = AnswerJson.read(run.out()).get("measured").get("lift");
        assertThat(lift.get("reading_g").asDouble()).isEqualTo(149);
        assertThat(lift.get("spread_g").asDouble()).isEqualTo(1);
        assertThat(lift.get("mass_g").asDouble()).isEqualTo(141);
        assertThat(lift.get("later")).hasSize(1);
        assertThat(lift.get("later").get(0).get("reading_g").asDouble()).isEqualTo(150);
        assertThat(lift.get("later").get(0).get("spread_g").asDouble()).isEqualTo(2);
        assertThat(lift.get("later").get(0).get("after_s").asDouble()).isEqualTo(4.5);
        for (String comma : new String[] {"151 g after 5 s, 149 g", "151 g after 5 s, 149 g after 7 s"}) {
            CommandRun refused = more(weigh, comma);
            assertThat(refused.status()).isEqualTo(2);
            assertThat(refused.err())
                    .contains("--measured-lift again", "then", "151 g after 5 s")
                    .doesNotContain("Leave out 149 g");
        }
    }

    /**
     * By definition: the bench file tells of every row of the sheet where it lies, as the answer does, and what is told changes
     * nothing of what the file says to a command.
     */
    @Test
    void theBenchFileTellsWhatEachTrialDid() throws IOException {
        JsonNode learned = AnswerJson.read(learn(SHEET, "--json").out());
        String text = Files.readString(Path.of(bench()));
        int inside = 0;
        for (JsonNode trial : learned.get("trials")) {
            List<String> told = text.lines()
                    .filter(line -> line.startsWith("#   " + trial.get("trial").asText() + ","))
                    .toList();
            assertThat(told).hasSize(1);
            assertThat(told.get(0))
                    .contains(
                            trial.get("shape").asText(),
                            trial.get("inside").asBoolean() ? ": inside;" : ": OUTSIDE;",
                            trial.get("result").asText());
            trial.get("signs")
                    .forEach(sign ->
                            assertThat(told.get(0)).contains(sign.get("what").asText()));
            inside += trial.get("inside").asBoolean() ? 1 : 0;
        }
        assertThat(learned.get("trials")).hasSize(learned.get("trials_used").asInt());
        assertThat(inside).isEqualTo(learned.get("inside_their_interval").asInt());
        // the sheet has a comment and its names in the first two lines, then a piece in each
        assertThat(learned.get("trials").get(0).get("trial").asText()).isEqualTo("row in line 3");
        assertThat(learned.get("trials").get(3).get("signs").get(0).get("what").asText())
                .isEqualTo("rose_after_s");
        String bare = text.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n", "", "\n"));
        Path without = Files.writeString(folder.resolve("bare.yaml"), bare);
        String[] weigh = {"float", "--shape", BALL, "--mass", "142 g", "--samples", "256", "--json", "--bench"};
        assertThat(more(weigh, bench()).out())
                .isEqualTo(more(weigh, without.toString()).out());
    }

    /** By definition: a trial that was left out is told in the file as in the answer. */
    @Test
    void theBenchFileTellsWhatWasLeftOut() throws IOException {
        String row = "\"" + BALL + "\",%s,floated,%s,4\n";
        StringBuilder rows = new StringBuilder("mould,bath_g,result,lift_g,lift_after_s\n");
        for (int mass = 138; mass < 144; mass++) {
            rows.append(row.formatted(mass, 147));
        }
        rows.append(row.formatted(140, 190));
        JsonNode learned =
                AnswerJson.read(learn(sheet(rows.toString()), "--json").out());
        assertThat(learned.get("trials_refused")).hasSize(1);
        String name = learned.get("trials_refused").get(0).get("trial").asText();
        assertThat(name).isEqualTo("row in line 8");
        assertThat(Files.readString(Path.of(bench()))).contains("#   " + name + ": LEFT OUT; lift_g ");
    }
}
