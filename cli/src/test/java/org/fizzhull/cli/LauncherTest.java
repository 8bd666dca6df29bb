package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.fizzhull.cli.Checkout.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The real launcher in a small checkout whose folder names hold spaces. */
class LauncherTest {
    private static final String BUILDING = "fizzhull: building on first use ...\n";

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void checkOut() throws IOException {
        checkout = new Checkout(folder.toRealPath(), "a check out");
    }

    @Test
    void buildsOnFirstUseAndOnlyThen() throws IOException {
        Ran first = checkout.start("shapes");
        Ran second = checkout.start("shapes");

        assertThat(first).isEqualTo(new Ran(0, checkout.root + "\n<shapes>\n", BUILDING));
        assertThat(second).isEqualTo(new Ran(0, checkout.root + "\n<shapes>\n", ""));
        assertThat(checkout.builds()).containsExactly("-B -q -ntp -pl cli -am -Dmaven.test.skip=true package");
    }

    @Test
    void handsOnArgumentsAndExitStatus() {
        assertThat(checkout.start("exit", "7", "a  b", "", "*", "$HOME", "\"'\\"))
                .isEqualTo(new Ran(7, checkout.root + "\n<exit>\n<7>\n<a  b>\n<>\n<*>\n<$HOME>\n<\"'\\>\n", BUILDING));
        assertThat(checkout.start("exit", "2").status()).isEqualTo(2);
    }

    @Test
    void worksThroughLinksFromAnyFolder() throws IOException {
        Path elsewhere = Files.createDirectories(folder.toRealPath().resolve("some where/else"));
        Path inner =
                Files.createSymbolicLink(elsewhere.resolve("inner link"), Path.of("../../a check out/cli/fizzhull"));
        Path outer = Files.createSymbolicLink(elsewhere.resolve("outer"), inner.getFileName());
        Path whole = Files.createSymbolicLink(elsewhere.resolve("whole"), checkout.root);

        assertThat(checkout.start(outer, elsewhere, Map.of()).out()).isEqualTo(elsewhere + "\n");
        assertThat(checkout.start(whole.resolve("cli/fizzhull"), elsewhere, Map.of("CDPATH", "/")))
                .isEqualTo(new Ran(0, elsewhere + "\n", ""));
        assertThat(checkout.start(Path.of("./fizzhull"), checkout.root.resolve("cli"), Map.of())
                        .status())
                .isZero();
        assertThat(checkout.builds()).hasSize(1);
    }

    @Test
    void buildsAgainAfterASourceChangedOrWentAway() throws IOException {
        checkout.start();
        for (String changed : List.of("pom.xml", "core/pom.xml", "cli/pom.xml", "core/src/main/A.java")) {
            stampAhead(checkout.root.resolve(changed));
            Ran after = checkout.start();
            assertThat(after.err()).as(changed).isEqualTo(BUILDING);
            settle(checkout.root.resolve(changed));
        }
        assertThat(checkout.start().err()).isEmpty();

        Files.delete(checkout.root.resolve("cli/src/main/B.java"));
        stampAhead(checkout.root.resolve("cli/src/main"));
        assertThat(checkout.start().err()).isEqualTo(BUILDING);
    }

    @Test
    void takesTheJarThatMavenBuilt() throws IOException {
        checkout.start();
        stampAhead(checkout.root.resolve("core/src/main/A.java"));
        Path built = checkout.root.resolve("cli/target/fizzhull.jar");
        Files.setLastModifiedTime(built, FileTime.from(Instant.now().plusSeconds(9)));

        assertThat(checkout.start().err()).isEmpty();
        assertThat(checkout.builds()).hasSize(1);
    }

    @Test
    void twoStartsAtOnceBuildOnce() throws IOException {
        Map<String, String> slowly = Map.of("MVN_TAKES", "1");
        Process one = checkout.begin(checkout.launcher, checkout.root, slowly, "exit", "3");
        Process two = checkout.begin(checkout.launcher, checkout.root, slowly, "exit", "4");

        assertThat(Checkout.await(one).status()).isEqualTo(3);
        assertThat(Checkout.await(two).status()).isEqualTo(4);
        assertThat(checkout.builds()).hasSize(1);
        assertThat(checkout.root.resolve("cli/target").toFile().list())
                .containsExactlyInAnyOrder("fizzhull.jar", "fizzhull.ahead");
    }

    @Test
    void takesOverTheLockOfABuilderThatDied() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        Path lock = lock(dead.pid());

        assertThat(checkout.start().status()).isZero();
        assertThat(lock).doesNotExist();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void takesOverALockWhoseNumberIsAnotherProgramsNow() throws Exception {
        Process other = new ProcessBuilder("sleep", "60").start();
        try {
            Path lock = lock(other.pid());

            assertThat(checkout.start().status()).isZero();
            assertThat(lock).doesNotExist();
        } finally {
            other.destroy();
        }
    }

    private Path lock(long owner) throws IOException {
        Path target = Files.createDirectories(checkout.root.resolve("cli/target"));
        return Files.createSymbolicLink(target.resolve("fizzhull.lock"), Path.of(Long.toString(owner)));
    }

    /** A clock set back, or a copy from a machine whose clock runs ahead: one build, not one at every start. */
    @Test
    void sourcesDatedTomorrowAreBuiltOnce() throws IOException {
        Path source = checkout.root.resolve("core/src/main/A.java");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(86_400)));

        assertThat(checkout.start().err()).isEqualTo(BUILDING);
        assertThat(checkout.start().err()).isEmpty();

        stampAhead(checkout.root.resolve("pom.xml"));
        assertThat(checkout.start().err()).isEqualTo(BUILDING);
    }

    @Test
    void wordsAndFoldersAreUtf8WhateverTheLocale() throws IOException {
        Checkout abroad = new Checkout(folder.toRealPath().resolve("ü"), "a größe");
        for (String locale : List.of("en_US.UTF-8", "no_SUCH.ISO-8859-1", "C", "")) {
            Ran ran = abroad.start(
                    abroad.launcher, abroad.root, Map.of("LANG", locale, "LC_ALL", locale), "38 °C", "\u65e5");

            assertThat(ran.out()).as(locale).isEqualTo(abroad.root + "\n<38 °C>\n<\u65e5>\n");
            assertThat(ran.status()).isZero();
        }
        // the build, which reads the name of the checkout too, is run in the locale of the program
        assertThat(folder.resolve("ü/logs/locale")).hasContent("C.UTF-8");
    }

    @Test
    void anotherCollectorMayBeAskedFor() {
        for (String name : List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "FIZZHULL_JAVA_OPTS")) {
            Ran ran = checkout.start(checkout.launcher, checkout.root, Map.of(name, "-XX:+UseSerialGC"), "exit", "4");
            assertThat(ran.status()).as(name).isEqualTo(4);
        }
    }

    @Test
    void whatAStrictUserBuildsOthersMayRead() throws IOException {
        Path sh = Path.of("/bin/sh");
        checkout.start(sh, checkout.root, Map.of(), "-c", "umask 077; exec '" + checkout.launcher + "' shapes");

        assertThat(Files.getPosixFilePermissions(checkout.root.resolve("cli/target/fizzhull.jar")))
                .contains(PosixFilePermission.OTHERS_READ);
    }

    @Test
    void showsTheOutputOfABuildThatFails() {
        Ran ran = checkout.start(checkout.launcher, checkout.root, Map.of("MVN_BREAKS", "yes"));

        assertThat(ran)
                .isEqualTo(
                        new Ran(
                                1,
                                "",
                                BUILDING
                                        + "[ERROR] cannot find symbol\nfizzhull: the build failed; its output stands above.\n"));
        assertThat(checkout.start().status()).as("the next start tries again").isZero();
    }

    @Test
    void namesWhatIsMissing() throws IOException {
        Map<String, String> noHome = Map.of("JAVA_HOME", "");
        assertThat(checkout.start(checkout.launcher, checkout.root, noHome))
                .isEqualTo(new Ran(
                        1, "", "fizzhull: no java on the path. Install a JDK 17 or later, or set JAVA_HOME.\n"));
        assertThat(checkout.start(checkout.launcher, checkout.root, Map.of("JAVA_HOME", "/no such"))
                        .err())
                .startsWith("fizzhull: JAVA_HOME is /no such, but there is no bin/java in it.");

        checkout.release("11.0.2+9");
        assertThat(checkout.start().err()).contains("is Java 11.0.2+9; fizzhull needs Java 17 or later. Set JAVA_HOME");
        checkout.release("1.8.0_402-b06");
        assertThat(checkout.start().err()).contains("is Java 1.8.0_402-b06; fizzhull needs Java 17 or later");

        checkout.release("17.0.1+2");
        checkout.remove("mvn");
        assertThat(checkout.start().err()).startsWith("fizzhull: not built yet, and Maven (mvn) is not on the path.");
    }

    @Test
    void runsWhatIsThereWhereItCannotBuild() throws IOException {
        checkout.start();
        stampAhead(checkout.root.resolve("core/src/main/A.java"));
        checkout.remove("mvn");

        assertThat(checkout.start("exit", "5"))
                .isEqualTo(new Ran(
                        5,
                        checkout.root + "\n<exit>\n<5>\n",
                        "fizzhull: some sources are newer than the program, but Maven (mvn) is not on the path: running it"
                                + " as last built.\n"));
    }

    @Test
    void writesNothingOnceItIsReady() throws IOException {
        checkout.start();
        List<String> before = checkout.inventory();
        new ProcessBuilder("chmod", "-R", "a-w", checkout.root.toString())
                .start()
                .onExit()
                .join();
        try {
            assertThat(checkout.start("shapes")).isEqualTo(new Ran(0, checkout.root + "\n<shapes>\n", ""));
            assertThat(checkout.inventory()).isEqualTo(before);
        } finally {
            new ProcessBuilder("chmod", "-R", "u+w", checkout.root.toString())
                    .start()
                    .onExit()
                    .join();
        }
    }

    private static void stampAhead(Path file) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(5)));
    }

    private static void settle(Path file) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(60)));
    }
}
