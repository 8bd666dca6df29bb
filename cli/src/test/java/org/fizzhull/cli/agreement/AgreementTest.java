package org.fizzhull.cli.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One true answer: sentence, rows, JSON, picture and sibling commands say the same of one question, whatever is asked. Expected
 * is agreement, never a number of our own.
 */
class AgreementTest {
    @TempDir
    Path folder;

    @Test
    void twelveQuestions() throws IOException {
        Walk walk = Walk.together(walk("one", 1), 0, walk("other", 1), 6, 6);

        assertThat(walk.breaches()).as(walk.report(3)).isEmpty();
        assertThat(walk.answered().keySet())
                .as("commands that answered, and ways to ask")
                .containsExactlyInAnyOrderElementsOf(Replies.COMMANDS);
        assertThat(walk.refused().values())
                .as("questions drawn are ones that are answered")
                .allMatch(n -> n <= 2);
        assertThat(walk.answered().get("float")).as("answers of float").isGreaterThan(9);
    }

    /** {@code mvn -Pproof -pl cli -am test -Dtest=AgreementTest -Dsurefire.failIfNoSpecifiedTests=false}. */
    @Test
    @Tag("proof")
    void fiveThousandQuestions() throws IOException {
        Walk walk = Walk.together(walk("one", 2), 0, walk("other", 2), 2500, 2500);

        System.out.print(walk.report(1));
        assertThat(walk.breaches()).as(walk.report(3)).isEmpty();
    }

    /** A walk in a folder of its own. */
    private Walk walk(String name, long seed) throws IOException {
        return new Walk(Files.createDirectory(folder.resolve(name)), seed);
    }
}
