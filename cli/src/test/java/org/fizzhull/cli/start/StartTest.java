package org.fizzhull.cli.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code start} writes files that the commands take, says commands that answer, and never writes over anything. */
class StartTest {
    @TempDir
    Path folder;

    /** The folder has a blank in its name: the commands quote it. */
    @Test
    void everyCommandThatItNamesAnswers() throws IOException {
        Path workshop = folder.resolve("old lighthouse");
        JsonNode answer = AnswerJson.read(
                CommandRun.of("start", workshop.toString(), "--json").out());
        assertThat(AnswerJson.faults("start", answer.toString())).isEmpty();
        JsonNode next = answer.get("next");

        assertThat(next).hasSizeGreaterThan(3);
        // the sheet as a person fills it in: a mould, one weight, a result; blanks for the rest
        Files.writeString(workshop.resolve("trials.csv"), """
                sphere(diameter=65 mm),,,138,,,,38,floated,,,,,,,,
                sphere(diameter=65 mm),,,152,,,,38,rose,62,,,,,,,
                "dome(diameter=80 mm, height=35 mm)",,,118,,,,38,sank,,,,,,,,
                """, StandardOpenOption.APPEND);
        for (JsonNode command : next) {
            List<String> words = words(command.asText());
            assertThat(words.get(0)).isEqualTo("fizzhull");
            CommandRun run = CommandRun.of(words.subList(1, words.size()).toArray(new String[0]));
            assertThat(run.status()).as(command + ": " + run.err()).isZero();
        }
        assertThat(next.toString()).contains("learn");
        assertThat(workshop.resolve("bench.yaml")).exists();
        for (JsonNode file : answer.get("files")) {
            assertThat(Path.of(file.asText())).exists();
        }
    }

    /**
     * Behind two dashes nothing is an option (guideline 10 of the utility conventions, POSIX.1-2017, XBD 12.2), and a
     * name that begins with a dash is no option in the lines to type.
     */
    @Test
    void aNameThatLooksLikeAnOptionIsAName() {
        String name = "--json";
        CommandRun run = CommandRun.in(folder, "start", "--", name);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("--recipe ./--json/recipe.yaml").doesNotContain("\"schema\"");
        assertThat(folder.resolve(name).resolve("recipe.yaml")).exists();
        assertThat(CommandRun.in(folder, "start", "--", name).err()).contains("recipe.yaml in --json");
        assertThat(CommandRun.in(folder, "start", "--", name).out()).isEmpty();
    }

    /** A mark that turns the direction of writing would make the lines to type read as others. */
    @Test
    void aNameWithSignsThatCannotBeSeenIsRefused() {
        CommandRun run = CommandRun.of("start", folder.resolve("shop\u202e").toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("folder", "can be seen").doesNotContain("\u202e");
        assertThat(folder).isEmptyDirectory();
    }

    /** With every remark of the recipe taken as a line, it is still a recipe: what it offers is what is read. */
    @Test
    void whatTheRecipeOffersIsTaken() throws IOException {
        Path workshop = folder.resolve("workshop");
        CommandRun.of("start", workshop.toString());
        Path recipe = workshop.resolve("recipe.yaml");
        String text = Files.readString(recipe);
        int from = text.indexOf("# Take the #");
        String offered = text.substring(text.indexOf('\n', from) + 1).replaceAll("(?m)^# ?", "");
        assertThat(offered).contains("prices:", "limits:", "own ingredients:", "weighed:", "acid last:");
        String mixed = text.substring(0, from)
                .replace("  corn starch: 60 g", "  corn starch: 60 g\n  nettle powder: 5 g")
                .replace("  water: 4 g", "  water: 4 g\n  lemon fragrance: 3 g");
        Files.writeString(recipe, mixed + offered);
        CommandRun run = CommandRun.of(
                "press", "--recipe", recipe.toString(), "--shape", "sphere(diameter=65 mm)", "--press", "firm");

        assertThat(run.status()).as(run.err()).isZero();
    }

    /** The columns are those of the contract. */
    @Test
    void theSheetHasTheColumnsOfTheContract() throws IOException {
        Path workshop = folder.resolve("workshop");
        CommandRun.of("start", workshop.toString());

        List<String> lines = Files.readAllLines(workshop.resolve("trials.csv"));
        assertThat(lines.subList(0, lines.size() - 1)).allMatch(line -> line.startsWith("#"));
        assertThat(lines.get(lines.size() - 1).split(",", -1))
                .startsWith("mould", "recipe", "fill_g", "bath_g", "dried_d", "room_C", "room_percent", "bath_C")
                .contains("result", "rose_after_s", "fizz_s", "press", "across_mm", "mould_water_g", "lift_g")
                .contains("lift_after_s", "left_mm")
                .doesNotHaveDuplicates();
    }

    /** The drawing of a piece held under stands above the header, and lines below it are learned from as before. */
    @Test
    void theSheetShowsHowToHoldAPieceUnder() throws IOException {
        Path workshop = folder.resolve("workshop");
        CommandRun.of("start", workshop.toString());
        Path sheet = workshop.resolve("trials.csv");
        String text = Files.readString(sheet);
        String help = CommandRun.of("float", "--help").out();

        assertThat(text.lines().filter(line -> line.startsWith("#")))
                .allMatch(line -> help.contains(line.substring(1).strip()))
                .noneMatch(line -> line.contains(",") || line.contains(";"))
                .anyMatch(line -> line.contains("wire hoop"));
        String header = text.lines().reduce("", (before, line) -> line);
        String rest =
                header.substring(header.indexOf("result") + "result".length()).replaceAll("[^,]", "");
        String ball = "sphere(diameter=65 mm),,,";
        Files.writeString(
                sheet, text + ball + "138,,,,38,floated" + rest + '\n' + ball + "152,,,,38,sank" + rest + '\n');
        CommandRun run = CommandRun.of(
                "learn",
                "--trials",
                sheet.toString(),
                "--out",
                workshop.resolve("bench.yaml").toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("From 2 trials");
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Path mine = Files.writeString(folder.resolve("trials.csv"), "mine");
        CommandRun run = CommandRun.of("start", folder.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("trials.csv");
        assertThat(mine).hasContent("mine");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(mine);
        }
    }

    @Test
    void refusesWhatIsNoFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        for (String name : List.of(file.toString(), folder.resolve("a/b/c").toString(), "a\0b")) {
            CommandRun run = CommandRun.of("start", name);
            assertThat(run.status()).as(name).isEqualTo(2);
        }
        assertThat(CommandRun.of("start").status()).isEqualTo(2);
        assertThat(file).hasContent("mine");
    }

    @Test
    void saysWhatToTypeNext() {
        CommandRun run = CommandRun.of("start", folder.resolve("new").toString());

        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("fizzhull press --recipe " + folder.resolve("new") + "/recipe.yaml", "Caution:");
    }

    /** Words of a shell line whose only quotes are double ones. */
    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
        while (matcher.find()) {
            words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return words;
    }
}
