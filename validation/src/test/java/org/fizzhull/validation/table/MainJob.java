package org.fizzhull.validation.table;

import java.util.Set;

/**
 * Which rows are about the job itself: a whole piece that is pressed, dried, floats or fizzes, and not one relation or
 * one closed form on the way there.
 */
final class MainJob {
    private static final Set<String> BINDINGS = Set.of(
            "drying/making-loss",
            "drying/practice-ready",
            "drying/practice-stays",
            "drying/practice-direction",
            "drying/ready",
            "pressing/trade-direction",
            "trade/direction",
            "chemistry/tablet",
            "fizz/warmth-published",
            "voyage/tablet-time",
            "voyage/tablet-within");

    private MainJob() {}

    /** Whether a row is one of them. */
    static boolean holds(Check check) {
        return BINDINGS.contains(check.table() + "/" + check.binding());
    }
}
