package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.fizzhull.cli.program.Program;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The README speaks the truth: each console block prints what the program prints today, its picture is today's, and the
 * Java lines compile and run. {@code -Dreadme.write=true} rewrites the outputs.
 */
class ReadmeTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path README = ROOT.resolve("README.md");
    private static final List<String> PICTURES =
            List.of("dome.svg", "press.svg", "batch.svg", "salted.svg", "tower.svg", "fizz.svg", "shelf.svg");
    /** Files that a block writes and a later one may read, under the name that it prints. */
    private static final List<String> WRITTEN = List.of("bench.yaml");

    private static final Pattern CONSOLE =
            Pattern.compile("```console\n\\$ cli/fizzhull ([^\n]*)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern JAVA = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> everyConsoleBlockPrintsWhatTheProgramPrints() throws IOException {
        String readme = Files.readString(README);
        List<DynamicTest> tests = new ArrayList<>();
        Matcher block = CONSOLE.matcher(readme);
        StringBuilder rewritten = new StringBuilder();
        while (block.find()) {
            String line = block.group(1);
            String printed = run(line);
            String shown = block.group(2);
            tests.add(DynamicTest.dynamicTest(line, () -> assertThat(shown).isEqualTo(printed)));
            block.appendReplacement(
                    rewritten, Matcher.quoteReplacement("```console\n$ cli/fizzhull " + line + '\n' + printed + "```"));
        }
        block.appendTail(rewritten);
        for (String file : WRITTEN) {
            Files.deleteIfExists(Path.of(file));
        }
        assertThat(tests).hasSizeGreaterThanOrEqualTo(3);
        if (Boolean.getBoolean("readme.write")) {
            Files.writeString(README, rewritten);
            for (String picture : PICTURES) {
                Files.copy(
                        folder.resolve(picture),
                        ROOT.resolve("cli/src/doc").resolve(picture),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
            return Stream.empty();
        }
        for (String picture : PICTURES) {
            tests.add(DynamicTest.dynamicTest(
                    picture,
                    () -> assertThat(ROOT.resolve("cli/src/doc").resolve(picture))
                            .hasSameTextualContentAs(folder.resolve(picture))));
        }
        return tests.stream();
    }

    @Test
    void theLinesForEmbeddingCompileAndRun() throws Exception {
        Matcher block = JAVA.matcher(Files.readString(README));
        assertThat(block.find()).isTrue();
        List<String> imports = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (String line : block.group(1).lines().toList()) {
            (line.startsWith("import ") ? imports : lines).add(line);
        }
        assertThat(imports.size() + lines.size()).isLessThanOrEqualTo(12);
        String source =
                String.join("\n", imports) + "\npublic class Embedding { public static void main(String[] words) {\n"
                        + String.join("\n", lines) + "\n}}\n";
        Path file = Files.writeString(folder.resolve("Embedding.java"), source);
        int status = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-d",
                        folder.toString(),
                        file.toString());
        assertThat(status).isZero();
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        folder + System.getProperty("path.separator") + System.getProperty("java.class.path"),
                        "Embedding")
                .redirectErrorStream(true)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        // The float limit of the 65 mm ball is 142.8 g (volume times Kell's density), so 5 g are to spare at 138 g.
        assertThat(printed).isEqualTo("likely, 5 g to spare" + System.lineSeparator());
    }

    private String run(String line) {
        List<String> words = new ArrayList<>();
        String here = line;
        for (String picture : PICTURES) {
            here = here.replace(picture, '"' + folder.resolve(picture).toString() + '"');
        }
        Matcher word = WORD.matcher(here.replace("cli/src/doc/", "src/doc/"));
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Program(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(words.toArray(new String[0]));
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(status).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}
