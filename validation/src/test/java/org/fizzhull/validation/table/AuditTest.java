package org.fizzhull.validation.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;
import org.junit.jupiter.api.Test;

/** The checks of the checks: each kind of mistake is made once and must be found. */
class AuditTest {
    private static final double NONE = Double.NaN;
    private static final List<Source> SOURCES = List.of(new Source("book", "A book", Seen.SEEN));
    private static final Bindings DOUBLING = new Bindings("toy") {
        {
            bind("twice", in -> 2 * in.number("x"));
        }
    };

    @Test
    void orderIsFound() {
        assertThat(audit(row("twice/1", 2, 0.1, "book", NONE, ""))).isEmpty();
    }

    @Test
    void eachMistakeIsFound() {
        assertThat(audit(row("thrice/1", 2, 0.1, "book", NONE, "")))
                .containsExactly("thrice/1: row without binding", "toy/twice: binding without row");
        assertThat(audit(row("twice/1", 2, 0.1, "book", NONE, ""), row("twice/1", 2, 0.1, "book", NONE, "")))
                .containsExactly("twice/1: the id stands twice");
        assertThat(audit(row("twice/1", 2, 0.1, "other", NONE, "")))
                .containsExactly("twice/1: unknown source other", "book: a source no row cites");
        assertThat(audit(row("twice/1", 2, 0, "book", NONE, ""))).containsExactly("twice/1: a tolerance is above 0");
        assertThat(audit(row("twice/1", 2, NONE, "book", NONE, ""))).containsExactly("twice/1: a tolerance is above 0");
        assertThat(audit(row("twice/1", 2, 0.5, "book", NONE, "")))
                .containsExactly("twice/1: a tolerance above 20 % tests nothing");
        assertThat(audit(row("twice/1", NONE, 0.1, "book", NONE, "")))
                .containsExactly("twice/1: a live row needs another program, any other row a number");
        assertThat(audit(row("twice/1", 2, 0.1, "book", 3, "")))
                .containsExactly("twice/1: a disagreement needs both our value and a reason");
    }

    @Test
    void aValueOffIsFoundAndADisagreementMayNotRot() {
        assertThat(problem(row("twice/1", 2.05, 0.1, "book", NONE, ""))).isEmpty();
        assertThat(problem(row("twice/1", 2.2, 0.1, "book", NONE, ""))).startsWith("expected 2.2");
        assertThat(problem(row("twice/1", 2.2, 0.1, "book", 2, "units differ"))).isEmpty();
        assertThat(problem(row("twice/1", 2.2, 0.1, "book", 1.8, "units differ")))
                .startsWith("disagrees otherwise");
        assertThat(problem(row("twice/1", 2.05, 0.1, "book", 2, "units differ")))
                .startsWith("is marked");
        assertThat(new Outcome(row("twice/1", 2, 0.1, "book", NONE, ""), 2, NONE).problem())
                .startsWith("not a number");
    }

    @Test
    void anInputNobodyReadsIsFound() {
        Check check = new Check(
                "toy",
                "twice/1",
                "twice",
                new Inputs("x=1; y=2"),
                2,
                "1",
                0.1,
                "a toy",
                Origin.ANALYTIC,
                "book",
                Seen.SEEN,
                NONE,
                "");
        assertThatThrownBy(() -> Outcome.of(check, DOUBLING)).hasMessage("twice/1: inputs nobody reads: [y]");
    }

    private static List<String> audit(Check... checks) {
        return Audit.problems(List.of(checks), SOURCES, List.of(DOUBLING));
    }

    private static String problem(Check check) {
        return Outcome.of(check, DOUBLING).problem();
    }

    private static Check row(
            String id, double expected, double tolerance, String source, double disagrees, String whyDisagrees) {
        return new Check(
                "toy",
                id,
                "twice one",
                new Inputs("x=1"),
                expected,
                "1",
                tolerance,
                "a toy",
                Origin.ANALYTIC,
                source,
                Seen.SEEN,
                disagrees,
                whyDisagrees);
    }
}
