package org.fizzhull.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The page core/docs/gallery.md is what {@link Gallery} says and prints: every task was compiled and run. With {@code
 * -Dreadme.write=true} the page is made anew.
 */
class GalleryTest {
    private static final Path PAGE = Path.of("docs/gallery.md");
    private static final Path SOURCE = Path.of("src/test/java/org/fizzhull/gallery/Gallery.java");
    private static final Pattern TASK =
            Pattern.compile("    // ([^\n]*)\n    void (\\w+)\\(\\) \\{\n(.*?)\n    \\}\n", Pattern.DOTALL);
    private static final Pattern RECIPE =
            Pattern.compile("    private static Recipe lemon\\(\\) \\{\n(.*?)\n    \\}\n", Pattern.DOTALL);
    private static final int MOST_LINES = 15;

    @Test
    void thePageSaysAndPrintsWhatTheTasksDo() throws Exception {
        String page = page();
        if (Boolean.getBoolean("readme.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page);
    }

    private static String page() throws Exception {
        String source = Files.readString(SOURCE);
        StringBuilder page = new StringBuilder("""
                # Gallery

                A dozen tasks for those who build the library into a program of their own, each with what it prints. They
                are compiled and run by `GalleryTest`; this page is made by it. What costs how much stands in
                [embedding.md](embedding.md), the chain of stages and its equations in [physics](physics/README.md).
                Pieces and recipes are the invented lighthouse workshop's. A piece that floats is not a piece that is dry
                or safe; dust of acid and foaming powder burns eyes and nose; damp pieces never go into a closed jar.

                All tasks have these imports:

                ```java
                """);
        source.lines()
                .filter(line -> line.startsWith("import ") && !line.contains("PrintStream"))
                .forEach(line -> page.append(line).append('\n'));
        Matcher recipe = RECIPE.matcher(source);
        assertThat(recipe.find()).isTrue();
        page.append("```\n\nand those that speak of `lemon()` this recipe:\n\n```java\nstatic Recipe lemon() {\n")
                .append(indented(recipe.group(1)).indent(4))
                .append("}\n```\n");
        Matcher task = TASK.matcher(source);
        int count = 0;
        while (task.find()) {
            String body = indented(task.group(3)).replace("out.println(", "System.out.println(");
            assertThat(body.lines().count()).as(task.group(1)).isLessThanOrEqualTo(MOST_LINES);
            page.append("\n## ")
                    .append(task.group(1))
                    .append("\n\n```java\n")
                    .append(body)
                    .append("```\n\n```text\n")
                    .append(printed(task.group(2)))
                    .append("```\n");
            count++;
        }
        assertThat(count).isGreaterThanOrEqualTo(12);
        return page.toString();
    }

    private static String indented(String body) {
        return body.stripIndent().stripTrailing() + '\n';
    }

    private static String printed(String task) throws IOException, ReflectiveOperationException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ExecutorService executor = Executors.newFixedThreadPool(2);
        try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            Gallery.class.getDeclaredMethod(task).invoke(new Gallery(out, executor));
        } catch (InvocationTargetException e) {
            throw new AssertionError(task, e.getCause());
        } finally {
            executor.shutdownNow();
        }
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
