package org.fizzhull.forecast.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.DropBalance;

/**
 * The course of drying as a function of the uncertain inputs: presses the draw, lays its room's air on the phases,
 * follows it coarsely until it is ready, and writes what is asked into {@link DryColumns}. Cost: about a millisecond a
 * draw. One instance serves one thread.
 */
public final class DryModel implements Model {
    /** Uncertain inputs, those of the bath included, which play no part here. */
    private final Factors factors;
    /** Fills or presses the mould of a draw. */
    private final Packing packing;
    /** For the volume ratio of a mould alone. */
    private final DropBalance balance;
    /** Takes the damp piece through the plan. */
    private final PlannedDrying off;
    /** What happens between press and bath. */
    private final DryingPlan plan;
    /** Where each draw is written. */
    private final DryColumns columns;
    /** The row of the last values. */
    private final double[] row;

    /**
     * Follows the drying of each draw and writes what is asked into columns.
     *
     * @param shape form of the piece
     * @param made how it is made, and its plan
     * @param factors the uncertain inputs
     * @param columns where each draw is written
     */
    public DryModel(Shape shape, Moulded made, Factors factors, DryColumns columns) {
        this.factors = factors;
        this.columns = columns;
        packing = Packing.of(made, shape);
        plan = made.plan();
        off = new PlannedDrying(shape, plan);
        balance = new DropBalance(shape, Bath.at(Question.DEFAULT_TEMPERATURE));
        row = columns.row();
    }

    /** Time until ready, s; infinite where it is not ready within {@link ReadyTimes#LONGEST}. */
    @Override
    public double at(double[] inputs) {
        Draw draw = Draw.of(factors.rows(), inputs);
        double ratio = balance.volumeRatio(draw.sizeError());
        Packing.Packed packed = packing.of(draw, ratio);
        DryingCourse course = off.course(off.input(packed), plan.phases(), ReadyTimes.LONGEST, packed.making());
        columns.write(row, course, ratio, inputs);
        return course.readyAfter().orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public void keep(int draw) {
        columns.keep(draw, row);
    }

    /**
     * {@return the time before storage, s}
     *
     * @param phases phases of the plan
     */
    public static double dryingTime(List<DryingPhase> phases) {
        double sum = 0;
        for (DryingPhase phase : phases) {
            sum += phase.storage() ? 0 : phase.duration();
        }
        return sum;
    }

    /**
     * {@return the phases without storage, the last drawn out until {@link ReadyTimes#LONGEST}}
     *
     * @param phases phases in order, at least one that is no storage
     * @throws IllegalArgumentException for none
     */
    public static List<DryingPhase> longer(List<DryingPhase> phases) {
        List<DryingPhase> drying =
                phases.stream().filter(phase -> !phase.storage()).collect(Collectors.toCollection(ArrayList::new));
        if (drying.isEmpty()) {
            throw new IllegalArgumentException("drying needs a plan with a phase before any storage");
        }
        DryingPhase last = drying.remove(drying.size() - 1);
        double left = Math.max(last.duration(), ReadyTimes.LONGEST - dryingTime(drying));
        drying.add(last.lasting(left));
        return drying;
    }
}
