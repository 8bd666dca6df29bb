package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.check.Given;

/**
 * What happens to a piece between press and bath: phases of drying and storage, laid out for one shape. Made by
 * {@link DryingConditions#plan}, or phase by phase. The phases hold the depth profile of the shape, so that a plan
 * belongs to it. Immutable.
 *
 * @param phases in order; none for a piece that goes into the bath as it was pressed
 * @param notices what was taken for granted in it
 */
public record DryingPlan(List<DryingPhase> phases, List<Notice> notices) implements Serializable {
    /**
     * Copies the lists.
     *
     * @param phases in order; none for a piece that goes into the bath as it was pressed
     * @param notices what was taken for granted in it
     */
    public DryingPlan {
        Given.all("phases, notices", phases, notices);
        phases = List.copyOf(phases);
        notices = List.copyOf(notices);
    }

    /**
     * A plan with nothing taken for granted.
     *
     * @param phases in order; none for a piece that goes into the bath as it was pressed
     */
    public DryingPlan(List<DryingPhase> phases) {
        this(phases, List.of());
    }

    /** {@return the plan of a piece that goes straight from the mould into the bath} */
    public static DryingPlan none() {
        return new DryingPlan(List.of());
    }

    /** {@return the length of all phases, storage included, s} */
    public double duration() {
        double sum = 0;
        for (DryingPhase phase : phases) {
            sum += phase.duration();
        }
        return sum;
    }

    /**
     * {@return the same with another time in its first phase, s}
     *
     * @param seconds duration of the first phase, s
     * @throws IllegalArgumentException for a plan without a phase
     */
    public DryingPlan openFor(double seconds) {
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("drying needs a plan with a phase");
        }
        List<DryingPhase> others = new ArrayList<>(phases);
        others.set(0, phases.get(0).lasting(seconds));
        return new DryingPlan(others, notices);
    }

    /**
     * {@return the same with a few remarks more}
     *
     * @param more remarks that are added
     */
    public DryingPlan noting(List<Notice> more) {
        Given.all("more", more);
        List<Notice> all = new ArrayList<>(notices);
        all.addAll(more);
        return new DryingPlan(phases, all);
    }
}
