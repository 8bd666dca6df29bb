package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
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
    /** Files that a block writes under the name that it prints. */
    private static final List<String> WRITTEN = List.of("bench.yaml");

    private static final Pattern JAVA = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

    @TempDir
    Path folder;

    @TestFactory
    List<DynamicTest> everyConsoleBlockPrintsWhatTheProgramPrints() throws IOException {
        List<DynamicTest> tests = new ArrayList<>(new ConsoleBlocks(folder).tests(README));
        for (String file : WRITTEN) {
            Files.deleteIfExists(Path.of(file));
        }
        if (Boolean.getBoolean("readme.write")) {
            for (String picture : PICTURES) {
                Files.copy(
                        folder.resolve(picture),
                        ROOT.resolve("cli/src/doc").resolve(picture),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
            return tests;
        }
        for (String picture : PICTURES) {
            tests.add(DynamicTest.dynamicTest(
                    picture,
                    () -> assertThat(ROOT.resolve("cli/src/doc").resolve(picture))
                            .hasSameTextualContentAs(folder.resolve(picture))));
        }
        return tests;
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
}
