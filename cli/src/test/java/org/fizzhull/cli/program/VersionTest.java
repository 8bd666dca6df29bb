package org.fizzhull.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.answer.body.Version;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;

class VersionTest {
    /** The project file is the source of the version; the constant saves a manifest from being read at every start. */
    @Test
    void isTheProjects() throws Exception {
        String project = Files.readString(Path.of("pom.xml"));
        assertThat(project).contains("<version>" + Version.TEXT + "</version>");
        assertThat(CommandRun.of("--version").out()).isEqualTo("fizzhull " + Version.TEXT + System.lineSeparator());
    }
}
