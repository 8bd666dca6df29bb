package org.fizzhull.cli.attack;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coverage-guided search for what a reader neither reads nor refuses with a mend. Off the default build, one target at a
 * time: {@code JAZZER_FUZZ=1 mvn -Pproof -pl cli -am test -Dtest=ReadersFuzz#recipe -Dsurefire.failIfNoSpecifiedTests=false};
 * without the variable each runs its seeds once. What it finds goes into the kept corpus.
 */
class ReadersFuzz {
    @TempDir
    Path folder;

    static Stream<byte[]> quantities() {
        return seeds("quantity");
    }

    static Stream<byte[]> shapes() {
        return seeds("shape");
    }

    static Stream<byte[]> recipes() {
        return seeds("recipe");
    }

    static Stream<byte[]> outlines() {
        return seeds("outline");
    }

    static Stream<byte[]> logs() {
        return seeds("log");
    }

    static Stream<byte[]> lines() {
        return seeds("line");
    }

    static Stream<byte[]> trialSheets() {
        return seeds("trials");
    }

    static Stream<byte[]> benches() {
        return seeds("bench");
    }

    static Stream<byte[]> catalogues() {
        return seeds("catalogue");
    }

    static Stream<byte[]> cups() {
        return seeds("powders");
    }

    static Stream<byte[]> requests() {
        return seeds("stream");
    }

    private static Stream<byte[]> seeds(String reader) {
        return Corpus.of(reader).stream().filter(bytes -> bytes.length < 4096);
    }

    @MethodSource("quantities")
    @FuzzTest(maxDuration = "5m")
    void quantity(byte[] bytes) {
        new Readers(folder).judge("quantity", bytes);
    }

    @MethodSource("shapes")
    @FuzzTest(maxDuration = "5m")
    void shape(byte[] bytes) {
        new Readers(folder).judge("shape", bytes);
    }

    @MethodSource("recipes")
    @FuzzTest(maxDuration = "5m")
    void recipe(byte[] bytes) {
        new Readers(folder).judge("recipe", bytes);
    }

    @MethodSource("outlines")
    @FuzzTest(maxDuration = "5m")
    void outline(byte[] bytes) {
        new Readers(folder).judge("outline", bytes);
    }

    @MethodSource("logs")
    @FuzzTest(maxDuration = "5m")
    void log(byte[] bytes) {
        new Readers(folder).judge("log", bytes);
    }

    @MethodSource("lines")
    @FuzzTest(maxDuration = "5m")
    void line(byte[] bytes) {
        new Readers(folder).judge("line", bytes);
    }

    @MethodSource("trialSheets")
    @FuzzTest(maxDuration = "5m")
    void trials(byte[] bytes) {
        new Readers(folder).judge("trials", bytes);
    }

    @MethodSource("benches")
    @FuzzTest(maxDuration = "5m")
    void bench(byte[] bytes) {
        new Readers(folder).judge("bench", bytes);
    }

    @MethodSource("catalogues")
    @FuzzTest(maxDuration = "5m")
    void catalogue(byte[] bytes) {
        new Readers(folder).judge("catalogue", bytes);
    }

    @MethodSource("cups")
    @FuzzTest(maxDuration = "5m")
    void powders(byte[] bytes) {
        new Readers(folder).judge("powders", bytes);
    }

    @MethodSource("requests")
    @FuzzTest(maxDuration = "5m")
    void stream(byte[] bytes) {
        new Readers(folder).judge("stream", bytes);
    }
}
