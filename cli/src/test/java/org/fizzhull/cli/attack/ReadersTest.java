package org.fizzhull.cli.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The kept corpus and seeded damage to it: a short form of the fuzz run. What must hold stands in {@link Readers}. */
class ReadersTest {
    private static final int ROUNDS = 200;

    /** Readers whose cases are answered, not only read. */
    private static final List<String> SLOW = List.of("line", "bench", "stream");

    @TempDir
    Path folder;

    @ParameterizedTest
    @FieldSource("org.fizzhull.cli.attack.Readers#NAMES")
    void eachCaseIsReadOrRefused(String reader) {
        Readers readers = new Readers(folder);
        List<byte[]> cases = Corpus.of(reader);
        int read = 0;
        for (byte[] bytes : cases) {
            read += readers.judge(reader, bytes) ? 1 : 0;
        }
        assertThat(read).as("cases taken").isBetween(1, cases.size() - 1);
    }

    @ParameterizedTest
    @FieldSource("org.fizzhull.cli.attack.Readers#NAMES")
    void damagedCasesAreReadOrRefused(String reader) {
        Readers readers = new Readers(folder);
        List<byte[]> cases =
                Corpus.of(reader).stream().filter(bytes -> bytes.length < 2000).toList();
        int rounds = SLOW.contains(reader) ? ROUNDS / 4 : ROUNDS;
        int read = 0;
        for (int round = 0; round < rounds; round++) {
            Dice dice = new Dice(20261130, round);
            byte[] bytes = Mutation.bytes(dice, dice.of(cases));
            try {
                read += readers.judge(reader, bytes) ? 1 : 0;
            } catch (RuntimeException | AssertionError fault) {
                throw new AssertionError("round " + round, fault);
            }
        }
        assertThat(read).as("damaged cases taken").isBetween(1, rounds - 1);
    }
}
