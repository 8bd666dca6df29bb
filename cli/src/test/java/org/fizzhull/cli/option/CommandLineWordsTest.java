package org.fizzhull.cli.option;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several ways to write one command line mean the same; help and version are answers. */
class CommandLineWordsTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String[] COMMANDS = {"float", "shapes"};

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "float|--shape|sphere(diameter=65|mm)|--mass|138|g|+-|4|g|--bath|36|C,|35|cm",
                "float|--mass=138 g +- 4 g|--bath=36 C, 35 cm|--shape=sphere(diameter=65 mm)",
                "float|--mass=138|g|+-|4|g|--bath=36|C,|35|cm|--shape=sphere(diameter=65|mm)",
                "float|--bath|96.8 F, 350 mm|--shape|ball( DIAMETER = 6.5 cm )|--mass|0.138 kg +- 4 g",
            })
    void wordsAreJoinedUntilTheNextOption(String line) {
        CommandRun whole = CommandRun.of(
                "float", "--shape", BALL, "--mass", "138 g +- 4 g", "--bath", "36 C, 35 cm", "--samples", "128");

        assertThat(CommandRun.of((line + "|--samples|128|--units|metric").split("\\|")))
                .isEqualTo(whole);
        assertThat(whole.status()).isZero();
        assertThat(whole.out()).contains("9 of 10 of the batch");
    }

    @Test
    void aShapeMayStandBeforeOrBehindTheFlags() {
        CommandRun before = CommandRun.of("shapes", BALL, "--json");

        assertThat(CommandRun.of("shapes", "--json", BALL)).isEqualTo(before);
        assertThat(CommandRun.of("shapes", "sphere(diameter=65", "mm)", "--json"))
                .isEqualTo(before);
        assertThat(before.status()).isZero();
    }

    @Test
    void behindTwoDashesEveryWordIsFree() {
        assertThat(CommandRun.of("shapes", "--json", "--", BALL)).isEqualTo(CommandRun.of("shapes", BALL, "--json"));
        assertThat(CommandRun.of("shapes", "--", "--json").err()).contains("--json");
    }

    @Test
    void oneDashDoesForTwo() {
        assertThat(CommandRun.of("shapes", "-json", BALL)).isEqualTo(CommandRun.of("shapes", BALL, "--json"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "float|--mass|--shape|sphere(diameter=65 mm)",
                "float|--shape|sphere(diameter=65 mm)|--mass",
            })
    void anOptionIsNoValueOfTheOneBefore(String line) {
        CommandRun run = CommandRun.of(line.split("\\|"));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--mass").contains("a value after --mass");
    }

    @Test
    void aNegativeNumberIsAValue() {
        CommandRun run = CommandRun.of(
                "float", "--shape", BALL, "--mass", "138 g", "--samples", "128", "--seed", "-5", "--json");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("\"seed\" : -5");
    }

    @Test
    void noWordsPrintTheHelpPageAndAreRefused() {
        CommandRun nothing = CommandRun.of();

        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.out()).isEqualTo(CommandRun.of("--help").out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "help"})
    void helpOfTheProgramNamesEveryCommand(String word) {
        CommandRun help = CommandRun.of(word);

        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).contains(COMMANDS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"float", "press", "compare", "batch", "shapes", "ingredients"})
    void helpOfACommandIsTheSameByEachWay(String command) {
        CommandRun help = CommandRun.of(command, "--help");

        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).contains("--json", "--quiet", "--explain", "--help", "--version");
        assertThat(CommandRun.of(command, "-h")).isEqualTo(help);
        assertThat(CommandRun.of("help", command)).isEqualTo(help);
    }

    @Test
    void helpOfFloatNamesItsOptions() {
        assertThat(CommandRun.of("float", "--shape", BALL, "-h").out())
                .contains("--shape SHAPE", "--mass", "--density", "--bath", "--bath-salt", "--into-bath", "--no-fizz")
                .contains("--measured", "--seed", "--samples", "--threads", "--chart");
    }

    /** The examples of the help pages are typed by people: each must work as it stands there; asked with few draws. */
    @ParameterizedTest
    @ValueSource(strings = {"float", "press", "compare", "batch", "shapes", "ingredients"})
    void examplesOfTheHelpPageAreAnswered(String command) {
        String page = CommandRun.of(command, "--help").out();
        List<String> examples = page.substring(page.indexOf("\nTry\n") + 5)
                .lines()
                .map(String::strip)
                .toList();

        String fewDraws = page.contains("--samples") ? " --samples 128" : "";
        assertThat(examples).hasSizeGreaterThanOrEqualTo(2);
        for (String example : examples) {
            assertThat(CommandRun.of(picturesInFolder(shell(example + fewDraws)))
                            .status())
                    .as(example)
                    .isZero();
        }
    }

    /** A picture of a test is not left in the work tree. */
    private String[] picturesInFolder(String[] words) {
        for (int i = 1; i < words.length; i++) {
            if (words[i - 1].equals("--chart")) {
                words[i] = folder.resolve(words[i]).toString();
            }
        }
        return words;
    }

    @Test
    void versionIsAnAnswer() {
        CommandRun version = CommandRun.of("--version");

        assertThat(version.status()).isZero();
        assertThat(version.out()).startsWith("fizzhull ").hasLineCount(1);
        assertThat(CommandRun.of("float", "--version")).isEqualTo(version);
    }

    @Test
    void aPictureThatCannotBeWrittenLeavesNoAnswer() throws Exception {
        Path taken = Files.createDirectory(folder.resolve("taken.svg"));
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--chart", taken.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains("taken.svg", "folder");
    }

    /** A name too long for any file system is met only when the picture is written: then no answer may stand before it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "float --mass 138g",
                "compare --density 1.0g/cm3",
                "press --recipe src/doc/recipes/lemon.yaml --press firm",
                "fizz --recipe src/doc/recipes/lemon.yaml --mass 138g",
                "dry --recipe src/doc/recipes/lemon.yaml --fill 137g --air 21C,55%"
            })
    void aPictureIsWrittenBeforeTheAnswer(String line) throws Exception {
        Path file = folder.resolve("a".repeat(300) + ".svg");
        List<String> words = new ArrayList<>(List.of(line.split(" ")));
        words.addAll(List.of("--shape", BALL, "--samples", "128", "--json", "--chart", file.toString()));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));

        assertThat(run.status()).isEqualTo(2);
        assertThat(AnswerJson.read(run.out()).at("/error/code").asText()).isEqualTo("cannot-write");
        assertThat(AnswerJson.faults("error", run.out())).isEmpty();
    }

    /** Every command that takes a shape takes one from a file. */
    @Test
    void pressTakesAShapeFromAFile() {
        String shape = "revolved(file=\"src/doc/tower.csv\")";
        CommandRun run = CommandRun.of(
                "press",
                "--recipe",
                "src/doc/recipes/lemon.yaml",
                "--shape",
                shape,
                "--press",
                "firm",
                "--samples",
                "128");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("Pressed firmly");
    }

    /** Words of a line as a shell would hand them over; a picture goes to the test's folder. */
    private String[] shell(String line) {
        List<String> words = new ArrayList<>();
        String[] quoted = line.split("\"", -1);
        for (int i = 0; i < quoted.length; i++) {
            if (i % 2 == 1) {
                words.add(quoted[i]);
            } else {
                Arrays.stream(quoted[i].strip().split(" "))
                        .filter(w -> !w.isEmpty())
                        .forEach(words::add);
            }
        }
        words.remove(0);
        words.replaceAll(word -> word.endsWith(".svg") ? folder.resolve(word).toString() : word);
        words.replaceAll(word -> word.replace("cli/src/doc/", "src/doc/")); // people stand above the module
        return words.toArray(new String[0]);
    }
}
