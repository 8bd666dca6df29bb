package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.fizzhull.cli.Checkout.Ran;
import org.junit.jupiter.api.Test;

/** The launcher of this checkout on the jar that was just packaged. */
class LauncherIT {
    @Test
    void startsTheProgramJustBuilt() throws IOException {
        Ran help = start("--help");
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).contains("float", "shapes");
        assertThat(help.status()).isZero();
    }

    /** The build's own Java takes the archive: the program's classes come out of it. */
    @Test
    void startsFromTheArchive() throws IOException {
        Ran ran = start(Map.of("FIZZHULL_JAVA_OPTS", "-Xshare:on -Xlog:class+load"), "--version");

        assertThat(ran.status()).isZero();
        assertThat(ran.out().lines().filter(line -> line.contains("org.fizzhull.cli.Main source:")))
                .singleElement()
                .asString()
                .endsWith("shared objects file");
    }

    @Test
    void refusesWithStatusTwo() throws IOException {
        Ran refused = start("float", "--shape", "lump(diameter=65 mm)");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).isNotBlank().doesNotContain("Exception", "\tat ");
    }

    /** An answer that is cut off is no answer, and a script must see it. */
    @Test
    void saysWhereTheAnswerCannotBeWritten() throws IOException {
        File full = new File("/dev/full");
        assumeTrue(full.exists(), "no device that is always full");

        Ran ran =
                Checkout.await(builder(Map.of(), "shapes").redirectOutput(full).start());

        assertThat(ran.status()).isOne();
        assertThat(ran.err()).contains("not all of the answer");
    }

    private static Ran start(String... arguments) throws IOException {
        return start(Map.of(), arguments);
    }

    private static Ran start(Map<String, String> environment, String... arguments) throws IOException {
        return Checkout.await(builder(environment, arguments).start());
    }

    private static ProcessBuilder builder(Map<String, String> environment, String... arguments) throws IOException {
        String[] line = new String[arguments.length + 1];
        line[0] = Path.of("fizzhull").toRealPath().toString();
        System.arraycopy(arguments, 0, line, 1, arguments.length);
        ProcessBuilder builder = new ProcessBuilder(line);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().remove("FIZZHULL_JAVA_OPTS");
        builder.environment().putAll(environment);
        return builder;
    }
}
