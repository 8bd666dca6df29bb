package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.fizzhull.answer.body.Version;
import org.fizzhull.cli.Checkout.Ran;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The release archive that was just packaged, unpacked into a path with blanks, started with Java alone. */
class ReleaseIT {
    private static final String NAME = "fizzhull-" + Version.TEXT;

    private static final String[] QUESTION = {
        "float", "--shape", "sphere(diameter=65 mm)", "--mass", "138 g", "--samples", "0"
    };

    @TempDir
    static Path folder;

    private static Path home;

    @BeforeAll
    static void unpack() throws IOException {
        Path target = Files.createDirectories(folder.resolve("a folder of mine"));
        URI zip = URI.create("jar:" + Path.of("target", NAME + ".zip").toUri());
        try (FileSystem archive = FileSystems.newFileSystem(zip, Map.of("enablePosixFileAttributes", "true"));
                Stream<Path> files = Files.walk(archive.getPath("/"))) {
            for (Path file : files.toList()) {
                Path to = target.resolve(file.toString().substring(1));
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                    Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(file));
                }
            }
        }
        home = target.resolve(NAME);
    }

    @Test
    void holdsWhatItsPageNames() {
        for (String name : List.of(
                "fizzhull",
                "fizzhull.bat",
                "fizzhull.jar",
                "README.md",
                "LICENSE",
                "NOTICE",
                "CHANGELOG.md",
                "recipes/lemon.yaml",
                "recipes/moulds.csv",
                "docs/contract.md",
                "docs/physics/voyage.md",
                "completion/fizzhull.bash",
                "completion/_fizzhull",
                "man/fizzhull.1")) {
            assertThat(home.resolve(name)).exists();
        }
    }

    @Test
    void theStartScriptMayBeStarted() throws IOException {
        Set<PosixFilePermission> rights = Files.getPosixFilePermissions(home.resolve("fizzhull"));
        assertThat(rights).contains(PosixFilePermission.OWNER_EXECUTE, PosixFilePermission.OTHERS_EXECUTE);
    }

    /** The first start makes the archive of classes and, for the blanks, a copy of the jar, the second takes its classes from it; both answer alike. */
    @Test
    void theSecondStartTakesTheClassesOfTheFirst() throws IOException {
        Path cache = folder.resolve("cache1");
        Ran first = start(cache, Map.of(), QUESTION).end();
        Ran second = start(cache, Map.of("FIZZHULL_JAVA_OPTS", "-Xlog:class+load"), QUESTION)
                .end();

        assertThat(first.status()).as(first.err()).isZero();
        assertThat(first.out()).isEqualTo(CommandRun.of(QUESTION).out());
        assertThat(first.err()).isEmpty();
        assertThat(second.out().lines().filter(line -> line.contains("org.fizzhull.cli.Main source:")))
                .singleElement()
                .asString()
                .contains("shared objects file");
        try (Stream<Path> kept = Files.list(cache.resolve("fizzhull"))) {
            assertThat(kept).hasSize(2);
        }
    }

    @Test
    void twoFirstStartsAtOnceBothAnswer() throws IOException {
        Path cache = folder.resolve("cache of two");
        Started one = start(cache, Map.of(), QUESTION);
        Started two = start(cache, Map.of(), QUESTION);
        Ran first = one.end();
        Ran second = two.end();

        assertThat(first.status()).as(first.err()).isZero();
        assertThat(second).isEqualTo(first);
        try (Stream<Path> kept = Files.list(cache.resolve("fizzhull"))) {
            assertThat(kept).hasSize(2);
        }
    }

    /** A file stands where the cache would be: it cannot be made, whoever asks. */
    @Test
    void answersWithoutACacheAndWritesNothingBesideItself() throws IOException {
        Path cache = Files.writeString(folder.resolve("no cache"), "");
        List<String> before = inventory();
        Ran ran = start(cache, Map.of(), QUESTION).end();

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out()).isEqualTo(CommandRun.of(QUESTION).out());
        assertThat(ran.err()).isEmpty();
        assertThat(inventory()).isEqualTo(before);
    }

    @Test
    void startsThroughALinkAndByItsJarAlone() throws IOException {
        Path cache = Files.writeString(folder.resolve("no cache for links"), "");
        Path link = Files.createSymbolicLink(folder.resolve("fizz"), home.resolve("fizzhull"));
        List<String> jar = List.of(java(), "-jar", home.resolve("fizzhull.jar").toString());

        assertThat(start(List.of(link.toString()), cache, Map.of(), "--version")
                        .end()
                        .out())
                .startsWith("fizzhull " + Version.TEXT);
        assertThat(start(jar, cache, Map.of(), QUESTION).end().out())
                .isEqualTo(CommandRun.of(QUESTION).out());
    }

    @Test
    void refusesWithStatusTwoAndSaysWhereNoJavaIs() throws IOException {
        Path cache = Files.writeString(folder.resolve("no cache for refusals"), "");
        Ran refused = start(cache, Map.of(), "float", "--shape", "lump(diameter=65 mm)")
                .end();
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).isNotBlank().doesNotContain("\tat ");

        Ran lost = start(cache, Map.of("JAVA_HOME", folder.toString()), "--version")
                .end();
        assertThat(lost.status()).isEqualTo(1);
        assertThat(lost.err()).startsWith("fizzhull: JAVA_HOME").contains("Java 17");
    }

    private static List<String> inventory() throws IOException {
        try (Stream<Path> files = Files.walk(home)) {
            return files.map(file -> file + " " + file.toFile().lastModified() + " "
                            + file.toFile().length())
                    .sorted()
                    .toList();
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static Started start(Path cache, Map<String, String> environment, String... words) throws IOException {
        return start(List.of(home.resolve("fizzhull").toString()), cache, environment, words);
    }

    private static Started start(List<String> program, Path cache, Map<String, String> environment, String... words)
            throws IOException {
        List<String> line = new ArrayList<>(program);
        line.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        builder.environment().remove("FIZZHULL_JAVA_OPTS");
        builder.environment().putAll(environment);
        return new Started(builder.start());
    }

    private record Started(Process process) {
        Ran end() {
            return Checkout.await(process);
        }
    }
}
