package org.fizzhull.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import org.fizzhull.validation.table.Audit;
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
        return Catalogue.outcomes().stream()
                .map(outcome -> dynamicTest(
                        outcome.check().id() + ": " + outcome.check().what(),
                        () -> assertThat(outcome.problem())
                                .as(outcome.check().id())
                                .isEmpty()));
    }
}
