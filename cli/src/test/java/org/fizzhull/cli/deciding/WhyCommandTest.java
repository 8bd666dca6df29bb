package org.fizzhull.cli.deciding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code why} from the command line. */
class WhyCommandTest {
    private static final List<String> BALL =
            List.of("--shape", "sphere(diameter=65 mm)", "--recipe", "src/doc/recipes/lemon.yaml", "--fill", "140 g");

    @TempDir
    Path folder;

    private static CommandRun run(String... more) {
        List<String> all = new ArrayList<>(List.of("why"));
        all.addAll(BALL);
        all.addAll(List.of("--samples", "128"));
        all.addAll(Arrays.asList(more));
        return CommandRun.of(all.toArray(new String[0]));
    }

    private static JsonNode json(CommandRun run) throws IOException {
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("why", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sank",
                "sank-later",
                "rose-late",
                "puffed",
                "cracked",
                "crumbled",
                "soft",
                "weak-fizz",
                "tipped",
                "never-dried"
            })
    void chancesSumToOneForEverySymptom(String symptom) throws IOException {
        JsonNode answer = json(run("--saw", symptom, "--air", "20 C, 65 %", "--dry-for", "1 d", "--json"));
        double sum = 0;
        for (JsonNode cause : answer.get("causes")) {
            sum += cause.get("probability").asDouble();
        }
        assertThat(sum).isCloseTo(1, within(1e-4));
    }

    /** What the best check says to type is taken by the same command, and settles more than was known. */
    @Test
    void theBestCheckCanBeTyped() throws IOException {
        JsonNode answer = json(run("--saw", "sank", "--json"));
        String type = answer.get("best_check").get("type").asText();
        List<String> words = new ArrayList<>();
        Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(type);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        assertThat(words.subList(0, 2)).containsExactly("fizzhull", "why");
        words.remove(0);
        words.addAll(List.of("--samples", "128", "--json"));
        JsonNode after = json(CommandRun.of(words.toArray(new String[0])));
        assertThat(after.get("causes").get(0).get("probability").asDouble())
                .isGreaterThan(answer.get("causes").get(0).get("probability").asDouble());
    }

    /** The advice is a command of this program without what only why takes. */
    @Test
    void theAdviceLeavesOutWhatWasSeen() throws IOException {
        String type = json(run("--saw", "sank", "--seen", "149 g", "--json"))
                .get("advice")
                .get("type")
                .asText();
        assertThat(type).startsWith("fizzhull advise ").doesNotContain("--saw").doesNotContain("--seen");
    }

    @Test
    void aCrackIsSaidToBeNotComputedFirst() {
        assertThat(run("--saw", "cracked").out()).startsWith("Whether a piece has cracked is not computed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"141 g, 142 g", "across", "heavy", "fizzed 4 g", "room 120 %", "-3 g"})
    void readingsThatAreNoneAreRefused(String seen) {
        CommandRun run = run("--saw", "sank", "--seen", seen);
        assertThat(run.status()).as(seen).isEqualTo(2);
        assertThat(run.err()).contains("--seen");
    }

    @Test
    void anUnknownSymptomIsRefusedWithTheList() {
        CommandRun run = run("--saw", "exploded");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("never-dried");
    }

    @Test
    void theAnswerFitsASmallWindow() {
        String text =
                run("--saw", "sank", "--air", "20 C, 65 %", "--dry-for", "1 d").out();
        assertThat(text.lines().count()).isLessThanOrEqualTo(25);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void theChartIsWritten() throws IOException {
        Path chart = folder.resolve("why.svg");
        json(run("--saw", "sank", "--json", "--chart", chart.toString()));
        assertThat(Files.readString(chart)).startsWith("<svg").contains("too much mix in the mould");
    }

    /** An error of its size in some draw is larger than such a piece is high. */
    @Test
    void aPieceOfTwoMillimetresIsAnswered() {
        CommandRun run = CommandRun.of(
                "why",
                "--saw",
                "never-dried",
                "--shape",
                "dome(diameter=60.3 mm, height=1.8 mm)",
                "--mass",
                "4 g",
                "--samples",
                "128");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("Most likely");
    }
}
