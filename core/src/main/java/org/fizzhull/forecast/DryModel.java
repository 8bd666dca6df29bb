package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.DryState;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.DryingInput;
import org.fizzhull.drying.DryingPhase;
import org.fizzhull.medium.Bath;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Model;
import org.fizzhull.voyage.DropBalance;

/** The course of drying as a function of the uncertain inputs; writes what is asked of each draw into columns. */
final class DryModel implements Model {
    /** Mass as pressed, kg. */
    static final int DAMP = 0;

    /** Mass at the end of the plan, kg. */
    static final int FINAL = 1;

    /** Mass once all that can leave in the drying room has left, kg. */
    static final int LABEL = 2;

    /** Time until ready, s; infinite where it is not ready within {@link #LONGEST}. */
    static final int READY = 3;

    /** Share of the fizz lost at the end of the plan. */
    static final int LOST = 4;

    /** First of the masses at the times of the band, over the mass as pressed. */
    static final int MASS = 5;

    /** How long a piece is waited for, s: 60 days. */
    static final double LONGEST = 60 * 86400.0;

    private final Factors factors;
    private final Packing packing;
    private final DropBalance balance;
    private final DryOff off;
    private final DryingPlan plan;
    private final double inset;
    private final double[] times;
    private final double[][] columns;
    private final double[] row;

    DryModel(Shape shape, Made made, Factors factors, double[] times, double[][] columns) {
        this.factors = factors;
        this.times = times;
        this.columns = columns;
        packing = made.packing(shape);
        plan = made.plan();
        off = new DryOff(made.blend(), shape, plan);
        balance = new DropBalance(shape, Bath.at(Question.DEFAULT_TEMPERATURE));
        inset = shape.insetMass();
        row = new double[width(times)];
    }

    /** Columns needed for a band at those times: the masses, then the shares of fizz left. */
    static int width(double[] times) {
        return MASS + 2 * times.length;
    }

    /** The powders of a draw in the mould as entered. */
    Packing.Packed packed(double[] inputs) {
        return packing.of(factors.at(inputs), 1);
    }

    DryOff off() {
        return off;
    }

    @Override
    public double at(double[] inputs) {
        Draw draw = factors.at(inputs);
        double ratio = balance.volumeRatio(draw.sizeError());
        Packing.Packed packed = packing.of(draw, ratio);
        DryingInput input = off.input(packed);
        DryingCourse course = off.course(input, plan.phases(), LONGEST, packed.making());
        write(row, course, inset, ratio, dryingTime(plan.phases()), times);
        row[READY] = course.readyAfter().orElse(Double.POSITIVE_INFINITY);
        return row[READY];
    }

    @Override
    public void keep(int draw) {
        for (int i = 0; i < row.length; i++) {
            columns[i][draw] = row[i];
        }
    }

    /** Everything but the time until ready. */
    static void write(double[] row, DryingCourse course, double inset, double ratio, double dried, double[] times) {
        DryState last = course.last();
        row[DAMP] = course.dampMass() * ratio + inset;
        row[FINAL] = last.mass() * ratio + inset;
        DryState out = course.at(Math.min(dried, course.end()));
        double settled = course.at(0).water() - course.removable();
        double toGo = Math.max(0, out.water() - settled) + out.alcohol();
        row[LABEL] = (out.mass() - toGo) * ratio + inset;
        row[LOST] = 1 - last.fizzLeft();
        for (int k = 0; k < times.length; k++) {
            DryState state = course.at(Math.min(times[k], course.end()));
            row[MASS + k] = (state.mass() * ratio + inset) / row[DAMP];
            row[MASS + times.length + k] = state.fizzLeft();
        }
    }

    /** Time before storage, s. */
    static double dryingTime(List<DryingPhase> phases) {
        double sum = 0;
        for (DryingPhase phase : phases) {
            sum += phase.storage() ? 0 : phase.duration();
        }
        return sum;
    }

    /** The phases without storage, the last drawn out until {@link #LONGEST}. */
    static List<DryingPhase> longer(List<DryingPhase> phases) {
        List<DryingPhase> drying = new ArrayList<>(phases.size());
        for (DryingPhase phase : phases) {
            if (!phase.storage()) {
                drying.add(phase);
            }
        }
        DryingPhase last = drying.remove(drying.size() - 1);
        double left = Math.max(last.duration(), LONGEST - dryingTime(drying));
        drying.add(last.lasting(left));
        return drying;
    }

    /** A making that has a recipe and a plan. */
    record Made(Blend blend, DryingPlan plan, Making making) {
        static Made of(Making making) {
            if (making instanceof FilledMould filled) {
                return new Made(filled.blend(), filled.plan(), making);
            }
            if (making instanceof PressedMould pressed) {
                return new Made(pressed.blend(), pressed.plan(), making);
            }
            throw new IllegalArgumentException("drying asks for a recipe that fills or is pressed into the mould");
        }

        Packing packing(Shape shape) {
            return making instanceof FilledMould filled
                    ? filled.packing(shape)
                    : ((PressedMould) making).packing(shape);
        }
    }
}
