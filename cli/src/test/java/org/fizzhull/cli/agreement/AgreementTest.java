package org.fizzhull.cli.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One true answer: sentence, rows, JSON, picture and sibling commands say the same of one question, whatever is asked. ExpectedReadings
 * is agreement, never a number of our own.
 */
class AgreementTest {
    @TempDir
    Path folder;

    @Test
    void fiftyQuestions() {
        Walk walk = new Walk(folder, 1).run(0, 50);

        assertThat(walk.breaches()).as(walk.report(3)).isEmpty();
        assertThat(walk.answered().keySet())
                .as("commands that answered, and ways to ask")
                .containsExactlyInAnyOrderElementsOf(Replies.COMMANDS);
        assertThat(walk.refused().values())
                .as("questions drawn are ones that are answered")
                .allMatch(n -> n <= 5);
        assertThat(walk.answered().get("float")).as("answers of float").isGreaterThan(45);
    }

    /** {@code mvn -Pproof -pl cli -am test -Dtest=AgreementTest -Dsurefire.failIfNoSpecifiedTests=false}. */
    @Test
    @Tag("proof")
    void fiveThousandQuestions() {
        Walk walk = new Walk(folder, 2).run(0, 5000);

        System.out.print(walk.report(1));
        assertThat(walk.breaches()).as(walk.report(3)).isEmpty();
    }
}
