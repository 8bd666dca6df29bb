package org.fizzhull.cli.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is typed, the program answers or refuses with a mend: no internal failure, no stack trace, no NaN, no broken
 * JSON or picture. The rules are the command line's own contract ({@link Judge}); the lines are drawn by chance from its
 * option lists.
 */
class AttackTest {
    @TempDir
    Path folder;

    @Test
    void aFewHundredLines() {
        Attack attack = new Attack(folder, 1, 120).run(0, 250);

        assertThat(attack.faults()).as(attack.report()).isEmpty();
        assertThat(attack.answered().keySet())
                .as("commands that answered at least once; compare, why and learn need files that chance seldom names")
                .contains("float", "press", "dry", "fizz", "batch", "advise", "shapes", "ingredients");
    }

    /** {@code mvn -Pproof -pl cli -am test -Dtest=AttackTest -Dsurefire.failIfNoSpecifiedTests=false}. */
    @Test
    @Tag("proof")
    void aHundredThousandLines() {
        Attack attack = new Attack(folder, 2, 20).run(0, 100_000);

        System.out.print(attack.report());
        assertThat(attack.faults()).as(attack.report()).isEmpty();
    }
}
