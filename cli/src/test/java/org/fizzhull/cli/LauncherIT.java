package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.Checkout.Ran;
import org.junit.jupiter.api.Test;

/** The launcher of this checkout on the jar that was just packaged. It leaves the class-data archive ready for use. */
class LauncherIT {
    @Test
    void startsTheProgramJustBuilt() throws IOException {
        Ran help = start("--help");
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).contains("float", "shapes");
        assertThat(help.status()).isZero();

        assertThat(Path.of("target/launcher/fizzhull.jsa")).isNotEmptyFile();
        assertThat(Files.readString(Path.of("target/launcher/record")))
                .startsWith(Path.of("").toRealPath() + "\n");
    }

    @Test
    void refusesWithStatusTwo() throws IOException {
        Ran refused = start("float", "--shape", "lump(diameter=65 mm)");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).isNotBlank().doesNotContain("Exception", "\tat ");
    }

    private static Ran start(String... arguments) throws IOException {
        String[] line = new String[arguments.length + 1];
        line[0] = Path.of("fizzhull").toRealPath().toString();
        System.arraycopy(arguments, 0, line, 1, arguments.length);
        ProcessBuilder builder = new ProcessBuilder(line);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().remove("FIZZHULL_JAVA_OPTS");
        return Checkout.await(builder.start());
    }
}
