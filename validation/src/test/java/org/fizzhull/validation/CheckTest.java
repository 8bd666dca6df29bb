package org.fizzhull.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.fizzhull.validation.table.Audit;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Outcome;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every row of every table, held against the library. */
class CheckTest {
    @Test
    void theTablesAreInOrder() {
        assertThat(Audit.problems(Catalogue.checks(), Catalogue.sources(), Catalogue.bindings()))
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> row() {
        List<Bindings> bindings = Catalogue.bindings();
        return Catalogue.checks().stream()
                .map(check -> dynamicTest(check.id() + ": " + check.what(), () -> {
                    Outcome outcome = Outcome.of(check, Catalogue.bindingsOf(check, bindings));
                    assertThat(outcome.problem()).as(check.id()).isEmpty();
                }));
    }
}
