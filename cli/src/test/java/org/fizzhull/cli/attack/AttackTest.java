package org.fizzhull.cli.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is typed, the program answers or refuses with a mend: no internal failure, no stack trace, no NaN, no broken
 * JSON or picture. The rules are the command line's own contract ({@link Judge}); the lines are drawn by chance from its
 * option lists, the same on every run.
 */
class AttackTest {
    @TempDir
    Path folder;

    @Test
    void twoHundredLines() {
        Attack attack = new Attack(folder, 1, 120).run(0, 200);

        assertThat(attack.faults()).as(attack.report()).isEmpty();
        assertThat(attack.tally().answeredLess(1).stream().filter(name -> !name.contains(" ")))
                .as("commands of which no line was answered")
                .isEmpty();
    }

    /** {@code mvn -Pproof -pl cli -am test -Dtest=AttackTest -Dsurefire.failIfNoSpecifiedTests=false}. */
    @Test
    @Tag("proof")
    void aHundredThousandLines() {
        Attack attack = new Attack(folder, 2, 20).run(0, 100_000);

        System.out.print(attack.report());
        assertThat(attack.faults()).as(attack.report()).isEmpty();
        assertThat(attack.tally().triedLess(20))
                .as("commands and options hardly tried")
                .isEmpty();
        assertThat(attack.tally().answeredLess(1))
                .as("commands and options never answered")
                .containsExactly("compare --mass"); // each mould has a weight of its own
    }
}
