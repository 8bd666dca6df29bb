package org.fizzhull.decide;

import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.Forecast;

/**
 * The smallest changes that make a piece float to the end, smallest first. An immutable value; made by {@link Adviser}.
 *
 * @param goal what was asked
 * @param design as it is
 * @param forecast of the design as it is
 * @param now how it does
 * @param changes proposals, those that reach the goal first, each smallest first; empty where it is reached already or
 *     nothing helps
 * @param need what has to be done
 */
public record Advice(Goal goal, Design design, Forecast forecast, Appraisal now, List<Change> changes, Need need) {
    /** Copies the list. */
    public Advice {
        changes = List.copyOf(changes);
    }

    /** What has to be done. */
    public enum Need {
        /** Nothing: the goal is reached. */
        NOTHING,
        /** One of the changes. */
        A_CHANGE,
        /** A measurement, before anything is changed: as it is, the batch floats or sinks as one, and it is not known which. */
        A_MEASUREMENT_FIRST,
        /** Something larger: no reasonable change of this design reaches the goal. */
        ANOTHER_DESIGN
    }

    /** The smallest change that reaches the goal. */
    public Optional<Change> best() {
        return changes.stream().filter(Change::reachesGoal).findFirst();
    }
}
