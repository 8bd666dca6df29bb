package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.program.Program;
import org.junit.jupiter.api.DynamicTest;

/**
 * The console blocks of a page: lines of {@code $ cli/fizzhull ...}, each followed by what the program prints for it.
 * They are typed in a folder of the test that holds a link to the command line.
 */
public final class ConsoleBlocks {
    private static final Pattern BLOCK =
            Pattern.compile("```console\n((?:\\$ cli/fizzhull [^\n]*\n.*?)+)```", Pattern.DOTALL);
    private static final Pattern LINE = Pattern.compile("\\$ cli/fizzhull ([^\n]*)\n((?:(?!\\$ cli/fizzhull ).*\n)*)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private final Path folder;

    /**
     * Takes an empty folder, in which the command line is to be seen as at the root of the repository.
     *
     * @param folder where the lines are typed; files that they write stay there
     */
    public ConsoleBlocks(Path folder) throws IOException {
        this.folder = folder;
        Path seen = folder.resolve("cli");
        if (!Files.exists(seen)) {
            Files.createSymbolicLink(seen, Path.of("").toAbsolutePath());
        }
    }

    /**
     * The tests of a page, one a line; with {@code -Dreadme.write=true} the page is made anew and there are none.
     *
     * @param page a Markdown file
     */
    public List<DynamicTest> tests(Path page) throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        StringBuilder rewritten = new StringBuilder();
        Matcher block = BLOCK.matcher(Files.readString(page));
        while (block.find()) {
            StringBuilder printed = new StringBuilder();
            Matcher line = LINE.matcher(block.group(1));
            while (line.find()) {
                String words = line.group(1);
                String shown = line.group(2);
                String prints = run(words);
                tests.add(DynamicTest.dynamicTest(words, () -> assertThat(shown).isEqualTo(prints)));
                printed.append("$ cli/fizzhull ").append(words).append('\n').append(prints);
            }
            block.appendReplacement(rewritten, Matcher.quoteReplacement("```console\n" + printed + "```"));
        }
        block.appendTail(rewritten);
        assertThat(tests).as("lines of %s", page).isNotEmpty();
        if (!Boolean.getBoolean("readme.write")) {
            return tests;
        }
        Files.writeString(page, rewritten);
        return List.of();
    }

    private String run(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Program(
                        InputStream.nullInputStream(),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        FileAccess.from(folder))
                .run(words.toArray(new String[0]));
        assertThat(err.toString(StandardCharsets.UTF_8)).as(line).isEmpty();
        assertThat(status).as(line).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}
