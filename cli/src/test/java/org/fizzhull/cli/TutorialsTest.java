package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every command of the tutorials prints what they say. {@code -Dreadme.write=true} rewrites the outputs. */
class TutorialsTest {
    private static final Path TUTORIALS = Path.of("docs/tutorials");

    @TempDir
    Path folder;

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(TUTORIALS)) {
            return files.filter(file -> file.getFileName().toString().matches("\\d-.*\\.md"))
                    .sorted()
                    .toList();
        }
    }

    @TestFactory
    List<DynamicTest> everyCommandPrintsWhatItSays() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path page : pages()) {
            tests.addAll(new ConsoleBlocks(folder).tests(page));
        }
        return tests;
    }

    @Test
    void theListNamesEveryPage() throws IOException {
        String list = Files.readString(TUTORIALS.resolve("README.md"));
        assertThat(pages()).hasSize(7).allSatisfy(page -> assertThat(list).contains("(" + page.getFileName() + ")"));
    }
}
