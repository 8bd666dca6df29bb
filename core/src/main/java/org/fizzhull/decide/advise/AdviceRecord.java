package org.fizzhull.decide.advise;

import java.util.List;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Forecast;

/** The parts of an {@link Advice}, which its own package alone puts together. */
record AdviceRecord(
        Adviser.Goal goal,
        Design design,
        Forecast forecast,
        Advice.Appraisal now,
        List<Change> changes,
        List<Forgone> forgone,
        Need need)
        implements Advice {
    static final Notice OTHER_MOULDS = new Notice(
            "other-moulds-not-tried",
            "Other moulds were not tried, for what was measured in the bath is of this one; a comparison of moulds takes it.");

    AdviceRecord {
        changes = List.copyOf(changes);
        forgone = List.copyOf(forgone);
    }
}
