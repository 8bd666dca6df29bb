package org.fizzhull.forecast;

import java.util.List;
import org.fizzhull.drying.DryingPhase;

/**
 * What happens to a piece between press and bath.
 *
 * @param phases in order; none for a piece that goes into the bath as it was pressed
 */
public record DryingPlan(List<DryingPhase> phases) {
    /** Copies the list. */
    public DryingPlan {
        phases = List.copyOf(phases);
    }

    /** Straight from the mould into the bath. */
    public static DryingPlan none() {
        return new DryingPlan(List.of());
    }
}
