package org.fizzhull.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By definition: after a write the file holds the new bytes, after a failure the old ones, and nothing else is left. */
class WholeFileTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void old() throws IOException {
        file = Files.writeString(folder.resolve("ball.svg"), "old");
    }

    @Test
    void replacesTheFileAndLeavesNothingBeside() throws IOException {
        WholeFile.write(file, NEW);
        WholeFile.write(folder.resolve("first.svg"), NEW);

        assertThat(Files.readString(file)).isEqualTo("new");
        assertThat(names()).containsExactlyInAnyOrder("ball.svg", "first.svg");
    }

    @Test
    void aLinkStaysOne() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.svg"), Path.of("ball.svg"));

        WholeFile.write(link, NEW);

        assertThat(link).isSymbolicLink();
        assertThat(Files.readString(file)).isEqualTo("new");
    }

    @Test
    void theOldRightsAreKept() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));

        WholeFile.write(file, NEW);

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }

    /** A folder of the name of the new file stands for a disk that does not take it: also root cannot write there. */
    @Test
    void aFailureLeavesTheOldFile() throws IOException {
        String part = ".ball.svg." + ProcessHandle.current().pid() + "."
                + Thread.currentThread().getId() + ".part";
        Files.createDirectories(folder.resolve(part).resolve("full"));

        assertThatThrownBy(() -> WholeFile.write(file, NEW)).isInstanceOf(IOException.class);

        assertThat(Files.readString(file)).isEqualTo("old");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).toList();
        }
    }
}
