package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.model.DryModel;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.result.DryBand;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * The answer of a {@link DryPredictor}. Masses in kg, with any inset; times in s from pressing.
 *
 * <p>Three masses are distinguished: {@link #damp} as pressed, {@link #last} at the end of the plan as it goes into
 * the bath, {@link #label} once all that can leave in the drying room has left. Immutable; safe to share between
 * threads. Equations and sources: docs/physics/drying.md.
 */
public sealed interface DryForecast permits DryForecastRecord {
    /** {@return what was asked} */
    Asked asked();

    /** {@return by the central values, finely computed; without the inset. Where weighings were told, by the medians of the inputs that they leave} */
    DryingCourse course();

    /** {@return the share of the draws that are not ready within 60 days} */
    double late();

    /** {@return the water that has left by the end of the drying, kg; below 0 where it came in} */
    Interval waterGone();

    /** {@return the share of the draws whose film wrap swells with gas} */
    double swollenFilms();

    /**
     * {@return the share of the draws that lose more of their fizz than that by the end of the plan}
     *
     * @param share part of the fizz, 0 to 1
     */
    double losesMoreThan(double share);

    /**
     * {@return the share of the draws that swell so much or more by the end of the plan}
     *
     * @param least class of swelling
     */
    double swells(DryingCourse.Swelling least);

    /** {@return the times of the band, s from pressing, ascending from 0 to the end of the plan} */
    List<Double> times();

    /** {@return what the weighings say; empty where there are none} */
    Optional<DryLog.Fit> log();

    /** {@return what is to be said of measurements on other pieces} */
    List<Notice> measured();

    /** {@return relative humidity below which it is ready within the drying time of the plan; empty where no air above 5 % would do} */
    OptionalDouble needsHumidity();

    /** {@return the relative humidity below which a dry piece keeps, 0 to 1; at most {@link #keepsAbove} where no air suits it} */
    double keepsBelow();

    /** {@return the relative humidity above which it keeps, 0 for none: drier air takes the water of hydrated salts into the mix} */
    double keepsAbove();

    /** {@return whether a dry piece keeps in any air} */
    default boolean keeps() {
        return keepsAbove() < keepsBelow();
    }

    /**
     * {@return the pressure above the atmosphere's that all gas of a damp piece would make in a closed jar of {@link #jarVolume},
     * Pa} As an ideal gas; never a reason to close one.
     */
    double jarOverpressure();

    /**
     * What a drying forecast was asked.
     *
     * @param shape of the piece
     * @param blend it is made of
     * @param plan of the drying, storage included
     * @param factors what was drawn
     * @param sampling how many draws from which seed
     * @param weighings of pieces of the batch, if any
     */
    record Asked(
            Shape shape,
            Blend blend,
            DryingPlan plan,
            Factors factors,
            Sampling sampling,
            Optional<DryLog> weighings) {}

    /** {@return what the reader must know; worked out anew at each call} */
    default List<Notice> notices() {
        return DryNotices.of(this);
    }

    /** {@return the shape of the piece} */
    default Shape shape() {
        return asked().shape();
    }

    /** {@return what it is made of} */
    default Blend blend() {
        return asked().blend();
    }

    /** {@return how it is dried and put away} */
    default DryingPlan plan() {
        return asked().plan();
    }

    /** {@return what was drawn} */
    default Factors factors() {
        return asked().factors();
    }

    /** {@return the draws} */
    default Sampling sampling() {
        return asked().sampling();
    }

    /** {@return the mass as pressed, kg} */
    Interval damp();

    /** {@return the mass at the end of the plan, kg} */
    Interval last();

    /** {@return the mass once all that can still leave in the drying room has left, kg} */
    Interval label();

    /** {@return the time when it is ready, s; empty where more than half of the draws never are} */
    Optional<Interval> ready();

    /** {@return the share of the draws that are ready at all: within the plan or 60 days; 0 where it never dries} */
    default double dries() {
        return readyWithin(Double.MAX_VALUE);
    }

    /**
     * {@return the share of the draws that are ready within so many seconds}
     *
     * @param seconds time, s
     */
    double readyWithin(double seconds);

    /** {@return the share of the fizz lost at the end of the plan} */
    Interval fizzLost();

    /** {@return how the draws run over time; sorts all draws at each call} */
    DryBand band();

    /** {@return the end of the plan, s} */
    default double end() {
        return times().get(times().size() - 1);
    }

    /** {@return the first phase: how it lies open} */
    default DryingPhase open() {
        return plan().phases().get(0);
    }

    /** {@return whether the piece fizzes at the end of the plan, by the central values, as in the forecasts of its bath} */
    default Effervescence effervescence() {
        return Effervescence.of(blend().moles(), course().last().gasCapacity());
    }

    /** {@return the time when the piece is wrapped, s; empty where it is not} */
    default OptionalDouble wrappedAt() {
        double from = 0;
        for (DryingPhase phase : plan().phases()) {
            if (phase.wrap().present() && from > 0) {
                return OptionalDouble.of(from);
            }
            from += phase.duration();
        }
        return OptionalDouble.empty();
    }

    /** {@return the time before storage, s} */
    default double dryingTime() {
        return DryModel.dryingTime(plan().phases());
    }

    /** {@return whether the pieces are put away} */
    default boolean stored() {
        return plan().phases().get(plan().phases().size() - 1).storage();
    }

    /** {@return whether they come into a rigid closed vessel} */
    default boolean sealed() {
        return plan().phases().stream().anyMatch(phase -> phase.wrap().rigid());
    }

    /** {@return what happens to a piece while it is stored, by the central values; empty where it is not} */
    default Optional<Store> store() {
        if (!stored()) {
            return Optional.empty();
        }
        DryingCourse.State before = course().at(Math.min(dryingTime(), course().end()));
        DryingCourse.State after = course().last();
        double gas =
                PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS * (after.extent() - before.extent()) * course().dryMass();
        return Optional.of(new Store(after.mass() - before.mass(), gas));
    }

    /**
     * Change of a piece while it is stored, kg.
     *
     * @param gain of weight; below 0 where it gets lighter
     * @param gas carbon dioxide that leaves; the rest of the change is water and alcohol
     */
    record Store(double gain, double gas) {
        /** {@return the water that comes in, kg; below 0 where it leaves} */
        public double water() {
            return gain + gas;
        }
    }

    /**
     * {@return the relative humidity of the room at its dampest while pieces dry, by the central values; a closed room
     * is made damp}
     */
    default double dampestRoom() {
        double most = course().at(0).roomHumidity();
        for (int i = 0; i < course().steps() && course().time(i) <= dryingTime(); i++) {
            most = Math.max(most, course().at(course().time(i)).roomHumidity());
        }
        return most;
    }

    /** {@return the relative humidity of the room at the end of the drying, by the central values} */
    default double roomAfter() {
        return course().at(Math.min(dryingTime(), course().end())).roomHumidity();
    }

    /** {@return the volume of the jar, m3: a litre, or twice the piece where it is larger than half a litre} */
    default double jarVolume() {
        return JarPressure.volume(shape());
    }
}
