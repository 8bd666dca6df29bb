package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.Checkout.Ran;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What would cost the start of a short {@code float}: each lambda of ours and the first comparison of records are put
 * together while the program runs, and Commons Math cannot enter a class-data archive.
 */
class StartUpIT {
    private static final String[] COSTLY = {
        "java.lang.runtime.ObjectMethods", "org.apache.commons.math3.", "java.util.regex.Pattern ",
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"--samples=4096", "--json", "--quiet"})
    void aShortCommandLoadsNothingCostly(String how) throws IOException {
        List<String> loaded = loaded("float", "--shape", "sphere(diameter=65 mm)", "--mass", "138 g", how);

        assertThat(loaded).anyMatch(line -> line.contains("org.fizzhull.voyage.QuickVoyage"));
        assertThat(loaded).noneMatch(line -> line.contains("org.fizzhull.") && line.contains("$$Lambda"));
        for (String costly : COSTLY) {
            assertThat(loaded).noneMatch(line -> line.contains(costly));
        }
    }

    /** Lines about the classes that a command of the packaged program loads, in order. */
    private List<String> loaded(String... words) throws IOException {
        Path log = folder.resolve("classes");
        List<String> line = new ArrayList<>();
        line.add(System.getProperty("java.home") + "/bin/java");
        line.add("-Xlog:class+load:file=" + log);
        line.add("-jar");
        line.add("target/fizzhull.jar");
        line.addAll(List.of(words));
        Ran ran = Checkout.await(new ProcessBuilder(line).start());
        assertThat(ran.status()).isZero();
        return Files.readAllLines(log);
    }
}
