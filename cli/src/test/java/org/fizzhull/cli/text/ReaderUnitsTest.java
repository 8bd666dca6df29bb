package org.fizzhull.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whoever writes ounces, inches or degrees Fahrenheit is answered in them, in refusals, notes and shapes too. 1 oz =
 * 28.349523125 g, 1 in = 25.4 mm, F = 1.8 C + 32: NIST SP 811 (2008), appendix B.
 */
class ReaderUnitsTest {
    private static final String BALL = "ball(diameter=2.5 in)";

    /**
     * A pressed piece weighs 0.3 to 1.67 g/cm3 (cli/docs/contract.md): of pi/6 (6.35 cm)3 = 134.07 cm3 these are 40.2 and
     * 223.9 g, 1.419 and 7.897 oz. A bath has 0 to 60 C, 32 to 140 F.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--mass | 9 oz   | 38 C  | between 1.418 oz and 7.898 oz",
                "--mass | 5 oz   | 200 F | between 32 F and 140 F",
                "--mass | 9 oz   | 38 C  | for sphere(diameter=2.5 in)",
            })
    void aRefusalSaysItsLimitsInTheUnitsTyped(String option, String mass, String bath, String limits) {
        CommandRun run = CommandRun.of("float", "--shape", BALL, option, mass, "--bath", bath);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(limits).doesNotContain(" g ", " mm");
    }

    /** What was typed stands as it was typed; a number without a unit is told in the units that it may have. */
    @Test
    void aRefusalRepeatsWhatWasTyped() {
        assertThat(CommandRun.of("float", "--shape", BALL, "--mass", "900 kg", "--units", "us")
                        .err())
                .contains("read 900 kg");
        assertThat(CommandRun.of("float", "--shape", "ball(diameter=65)", "--mass", "5 oz", "--units", "us")
                        .err())
                .contains("write 65 mm or 6.5 cm");
    }

    @Test
    void theObjectOfARefusalStaysMetric() {
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "9 oz", "--json");
        assertThat(run.out()).contains("between 40.2 g and 223.9 g");
    }

    @Test
    void notesAndShapesAreTurnedToo() {
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                BALL,
                "--mass",
                "4.9 oz",
                "--measured-rise",
                "95 s at 5.3 oz",
                "--samples",
                "128",
                "--explain");
        assertThat(run.out().replace('\n', ' ')).contains("a piece of 5.3 oz of the same mix");
        CommandRun bowl = CommandRun.of("shapes", "bowl(diameter=3.5 in, wall=0.6 in)");
        assertThat(bowl.out()).startsWith("A 3.5 in bowl").contains("bowl(diameter=3.5 in, wall=0.6 in)");
    }

    /** A hint in quotes asks the same question: 1 in 10,000 of its value. No value is torn between two lines. */
    @Test
    void whatIsToBeTypedIsTurned() {
        CommandRun run = CommandRun.of(
                "advise",
                "--recipe",
                "src/doc/recipes/lemon.yaml",
                "--shape",
                BALL,
                "--fill",
                "5.2 oz",
                "--samples",
                "256");
        assertThat(run.out()).contains(" oz\"").doesNotContain(" g\"", " mm\"", " mm)");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80).noneMatch(line -> line.endsWith(" "));
        assertThat(run.out()).doesNotContainPattern("\\d\\n +(oz|in|%)");
    }

    /** What was typed may look like a number and be none: it comes back as it is, whatever the units. */
    @Test
    void whatIsNoNumberStaysAsTyped() {
        CommandRun run = CommandRun.of("shapes", "heart(width=772.1,50 mm, height=0in)", "--json");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("772.1");
    }

    /** 43 g stand for 42.95 to 43.05 g, by definition of 28.349523 g an ounce 1.515 to 1.519 oz. */
    @Test
    void aWholeNumberOfGramsKeepsItsAccuracy() {
        CommandRun run =
                CommandRun.of("float", "--shape", "cube(side=35 mm)", "--mass", "43 g", "--units", "us", "--quiet");
        assertThat(run.out()).contains(": 1.52 oz in ");
    }
}
