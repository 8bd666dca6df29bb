package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.DryingPhase;
import org.fizzhull.drying.JarPressure;
import org.fizzhull.drying.SafeHumidity;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * The answer of a {@link DryPredictor}. Masses in kg, with any inset; times in s from pressing.
 *
 * @param shape of the piece
 * @param blend it is made of
 * @param plan of the drying, storage included
 * @param factors what was drawn
 * @param sampling how many draws from which seed
 * @param course by the central values, finely computed; without the inset
 * @param damp mass as pressed
 * @param last mass at the end of the plan, as it goes into the bath
 * @param label mass once all that can still leave in the drying room has left
 * @param ready when 95 % of the removable water is gone; empty where more than half of the draws never are. An upper
 *     point of 60 days stands for any later time
 * @param readyTimes of every draw, ascending; infinite where it is not ready within 60 days
 * @param fizzLost share of the fizz lost at the end of the plan
 * @param needsHumidity relative humidity below which it is ready within the drying time of the plan; empty where no
 *     air above 5 % would do
 * @param safe air in which it keeps
 * @param jar pressure that all its fizz makes in a closed jar of {@link #jarVolume}, a piece alone
 * @param band mass and fizz left over time
 * @param notices what the reader must know
 */
public record DryForecast(
        Shape shape,
        Blend blend,
        DryingPlan plan,
        Factors factors,
        Sampling sampling,
        DryingCourse course,
        Interval damp,
        Interval last,
        Interval label,
        Optional<Interval> ready,
        List<Double> readyTimes,
        Interval fizzLost,
        OptionalDouble needsHumidity,
        SafeHumidity safe,
        JarPressure jar,
        DryBand band,
        List<Notice> notices) {
    private static final double LITRE = 1e-3;

    /** Copies the lists. */
    public DryForecast {
        readyTimes = List.copyOf(readyTimes);
        notices = List.copyOf(notices);
    }

    /** The first phase: how it lies open. */
    public DryingPhase open() {
        return plan.phases().get(0);
    }

    /** When the piece is wrapped, s; empty where it is not. */
    public OptionalDouble wrappedAt() {
        double from = 0;
        for (DryingPhase phase : plan.phases()) {
            if (phase.wrap().present() && from > 0) {
                return OptionalDouble.of(from);
            }
            from += phase.duration();
        }
        return OptionalDouble.empty();
    }

    /** Time before storage, s. */
    public double dryingTime() {
        return DryModel.dryingTime(plan.phases());
    }

    /** Whether the pieces are put away. */
    public boolean stored() {
        return plan.phases().get(plan.phases().size() - 1).storage();
    }

    /** Whether they come into a rigid closed vessel. */
    public boolean sealed() {
        return plan.phases().stream().anyMatch(phase -> phase.wrap().rigid());
    }

    /** Share of the draws that are ready within so many seconds. */
    public double readyWithin(double seconds) {
        int ready = 0;
        for (double time : readyTimes) {
            ready += time <= seconds ? 1 : 0;
        }
        return (double) ready / readyTimes.size();
    }

    /** Water that has left by the end of the drying, by the central values, kg. */
    public double waterGone() {
        return course.at(0).water()
                - course.at(Math.min(dryingTime(), course.end())).water();
    }

    /** What a piece gains in weight while it is put away, by the central values, kg; empty where it is not. */
    public OptionalDouble storeGain() {
        if (!stored()) {
            return OptionalDouble.empty();
        }
        double before = course.at(Math.min(dryingTime(), course.end())).mass();
        return OptionalDouble.of(course.last().mass() - before);
    }

    /** Volume of the jar, m3: a litre, or twice the piece where it is larger than half a litre. */
    public double jarVolume() {
        return jarVolume(shape);
    }

    static double jarVolume(Shape shape) {
        return Math.max(LITRE, 2 * shape.volume());
    }
}
