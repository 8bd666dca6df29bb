package org.fizzhull.cli.deciding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@code advise} from the command line. What it promises is asked of {@code float}: each change typed back gives the chance
 * that was told.
 */
class AdviseCommandTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String SALTED = """
            dry:
              sodium bicarbonate: 300 g
              citric acid: 150 g
              table salt: 120 g
            wet:
              water: 4 g
              almond oil: 10 g
            """;
    private static final String WET =
            "dry:\n  sodium bicarbonate: 300 g\n  citric acid: 150 g\nwet:\n  water: 14 g\n  almond oil: 20 g\n";
    private static final String NO_ACID =
            "dry:\n  sodium bicarbonate: 300 g\n  corn starch: 60 g\nwet:\n  water: 4 g\n";

    @TempDir
    Path folder;

    private List<String> words(String recipe, String rest) throws IOException {
        List<String> words = new ArrayList<>(List.of("--recipe", file(recipe)));
        words.addAll(split(rest));
        words.addAll(List.of("--samples", "256", "--json"));
        return words;
    }

    private String file(String recipe) throws IOException {
        String text = switch (recipe) {
            case "salted" -> SALTED;
            case "wet" -> WET;
            case "no-acid" -> NO_ACID;
            default -> "";
        };
        if (text.isEmpty()) {
            return "src/doc/recipes/" + recipe + ".yaml";
        }
        Path file = folder.resolve(recipe + ".yaml");
        Files.writeString(file, text);
        return file.toString();
    }

    private static CommandRun run(String command, List<String> words) {
        List<String> all = new ArrayList<>(List.of(command));
        all.addAll(words);
        return CommandRun.of(all.toArray(new String[0]));
    }

    /** A line as a shell takes it apart: quotes hold a value together. */
    private static List<String> split(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        return words;
    }

    private static JsonNode advice(List<String> words) throws IOException {
        CommandRun run = run("advise", words);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("advise", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    private static boolean noticed(JsonNode answer, String code) {
        for (JsonNode notice : answer.get("notices")) {
            if (notice.get("code").asText().equals(code)) {
                return true;
            }
        }
        return false;
    }

    /** Ten designs that fail, each for its own reason; the goal reached is asked of {@code float}, never of the advice. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "too heavy  | lemon        | --shape \"sphere(diameter=65 mm)\" --fill \"160 g +- 2 g\"",
                "too wet    | wet          | --shape \"sphere(diameter=65 mm)\" --press \"firm\"",
                "clay       | harbour-clay | --shape \"sphere(diameter=65 mm)\" --press \"light\"",
                "salt       | salted       | --shape \"dome(diameter=80 mm)\" --press \"firm, one plunger\"",
                "damp room  | lemon        | --shape \"sphere(diameter=65 mm)\" --fill \"150 g\" --air \"20 C, 75 %\" --dry-for \"1 d\"",
                "thin bowl  | harbour-clay | --shape \"bowl(diameter=70 mm, wall=20 mm)\" --press \"firm\" --into-bath \"dropped\"",
                "geode      | lemon        | --shape \"geode(diameter=80 mm, wall=14 mm, crystals=40 g)\" --fill \"125 g\" --into-bath dropped",
                "weighed    | lemon        | --shape \"sphere(diameter=65 mm)\" --press \"firm\" --weighed \"151 g, 150 g\"",
                "ounces     | lemon        | --shape \"sphere(diameter=2.5 in)\" --fill \"5.3 oz\"",
                "small mould| lemon        | --shape \"sphere(diameter=50 mm)\" --fill \"72 to 78 g\"",
                "no acid    | no-acid      | --shape \"sphere(diameter=65 mm)\" --fill \"155 g\"",
                "impossible | salted       | --shape \"sphere(diameter=50 mm)\" --fill \"68 g\" --inside \"60 g, 12 mL\" --goal \"99 of 100\"",
            })
    void whatReachesTheGoalReachesItTypedBack(String why, String recipe, String rest) throws IOException {
        List<String> words = words(recipe.strip(), rest.strip());
        JsonNode answer = advice(words);

        assertThat(answer.get("now").get("probability").asDouble())
                .as(why + " fails as it is")
                .isLessThan(answer.get("goal").asDouble());
        boolean reached = false;
        for (JsonNode change : answer.get("changes")) {
            List<String> typed = split(change.get("type").asText());
            assertThat(typed.subList(0, 2)).containsExactly("fizzhull", "float");
            List<String> again = new ArrayList<>(typed.subList(2, typed.size()));
            again.addAll(List.of("--samples", "256", "--json"));
            CommandRun run = run("float", again);
            assertThat(run.status()).as(change.get("type").asText() + run.err()).isZero();
            double chance = AnswerJson.read(run.out())
                    .get("probability")
                    .get("floats_to_the_end")
                    .asDouble();
            assertThat(chance)
                    .as(change.get("type").asText())
                    .isCloseTo(change.get("probability").asDouble(), within(2e-6));
            reached |= change.get("reaches_goal").asBoolean();
            if (change.get("reaches_goal").asBoolean()) {
                assertThat(chance).isGreaterThanOrEqualTo(answer.get("goal").asDouble() - 1e-6);
            }
        }
        assertThat(reached || noticed(answer, "nothing-helps") || noticed(answer, "measure-first"))
                .as(why)
                .isTrue();
        if (!reached) {
            assertThat(answer.get("answer").asText()).containsPattern("ive up |sk for less|No small change is enough");
        }
    }

    /** The window of a small laptop: at most 25 lines, none wider than 80. */
    @Test
    void theAnswerFitsASmallWindow() throws IOException {
        List<String> words = words("lemon", "--shape \"" + BALL + "\" --fill \"152 g +- 2 g\" --air \"21 C, 60 %\"");
        words.remove("--json");
        String text = run("advise", words).out();

        assertThat(text.lines().count()).isLessThanOrEqualTo(25);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    /** Without acid there is no gas: told before anything else. */
    @Test
    void aPieceWithoutFizzIsToldFirst() throws IOException {
        List<String> words = words("no-acid", "--shape \"" + BALL + "\" --fill \"155 g\"");
        JsonNode answer = advice(words);
        assertThat(answer.get("answer").asText()).startsWith("It does not fizz");
        assertThat(noticed(answer, "no-fizz")).isTrue();
    }

    /** A kept ingredient appears in no change. */
    @Test
    void whatIsKeptIsNotTouched() throws IOException {
        List<String> words = words("harbour-clay", "--shape \"" + BALL + "\" --fill \"150 g\" --keep kaolin");
        for (JsonNode change : advice(words).get("changes")) {
            assertThat(change.get("type").asText()).doesNotContain("kaolin");
        }
    }

    /** A name that means nothing is answered with those of the recipe. */
    @Test
    void whatCannotBeKeptIsRefusedWithWhatCan() throws IOException {
        CommandRun run = run("advise", words("harbour-clay", "--shape \"" + BALL + "\" --fill \"150 g\" --keep sand"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("fizzhull: --keep: read sand;")
                .contains("kaolin")
                .contains("of the recipe");
    }

    @Test
    void aGoalThatIsNoneIsRefused() throws IOException {
        for (String goal : List.of("10 of 10", "0 of 3", "most", "9 out of 10", "99.9999999 %")) {
            CommandRun run =
                    run("advise", words("lemon", "--shape \"" + BALL + "\" --fill 150 --goal \"" + goal + '"'));
            assertThat(run.status()).as(goal).isEqualTo(2);
        }
    }

    @Test
    void optionsOfOtherCommandsAreRefused() throws IOException {
        CommandRun run = run("advise", words("lemon", "--shape \"" + BALL + "\" --fill \"150 g\" --saw sank"));
        assertThat(run.status()).isEqualTo(2);
    }

    /** The picture is well-formed and its words are those of the text. */
    @Test
    void theChartIsWritten() throws IOException {
        Path chart = folder.resolve("advice.svg");
        List<String> words = words("lemon", "--shape \"" + BALL + "\" --fill \"160 g\" --chart \"" + chart + '"');
        JsonNode answer = advice(words);
        String picture = Files.readString(chart);
        assertThat(picture).startsWith("<svg").contains("As it is");
        assertThat(picture.split("<rect", -1).length - 1)
                .isGreaterThan(answer.get("changes").size());
    }
}
