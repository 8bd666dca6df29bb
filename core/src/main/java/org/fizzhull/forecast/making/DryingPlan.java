package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Priors;

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
     * {@return the row of an input, without the values that would put the air of a phase outside the range of
     * {@link RoomAir}: air is not damper than saturated} The error of hygrometer and thermometer is one for all phases.
     *
     * @param row a row of any input; other inputs than the room's stay as they are
     * @throws Refusal {@code out-of-range} where nothing of the prior is left
     */
    public Factor possible(Factor row) {
        boolean damp = row.input() == Input.ROOM_HUMIDITY;
        if (phases.isEmpty() || !(damp || row.input() == Input.ROOM_TEMPERATURE)) {
            return row;
        }
        Allowed range = damp ? RoomAir.HUMIDITY : RoomAir.TEMPERATURE;
        double[] entered = phases.stream()
                .map(DryingPhase::air)
                .mapToDouble(damp ? RoomAir::humidity : RoomAir::temperature)
                .sorted()
                .toArray();
        double low = range.low() - entered[0];
        double high = range.high() - entered[entered.length - 1];
        try {
            return new Factor(row.input(), Priors.cut(row.prior(), low, high), row.source(), row.columns());
        } catch (IllegalArgumentException nothing) {
            throw new Refusal(
                    "out-of-range",
                    row.input().label(),
                    "an error of " + row.prior().median() + " in SI on top of " + entered[entered.length - 1],
                    "an error that leaves air of " + range.words(),
                    "Check the prior: it is of the difference from what was entered.");
        }
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
