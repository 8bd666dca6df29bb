package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.stream.Stream;

/** All that must hold among the answers of one question. */
final class Rules {
    static final List<Rule> ALL = Stream.of(
                    EveryAnswer.RULES,
                    FloatAnswer.RULES,
                    BatchSize.RULES,
                    Siblings.RULES,
                    DryAnswer.RULES,
                    Fizzless.RULES,
                    OtherDoors.RULES,
                    Decisions.RULES)
            .flatMap(List::stream)
            .toList();

    private Rules() {}
}
