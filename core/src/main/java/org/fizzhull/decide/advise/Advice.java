package org.fizzhull.decide.advise;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;

/**
 * The smallest changes that make a piece float to the end, smallest first; made by {@link Adviser}.
 *
 * <p>Read {@link #need} first: it says whether one of the changes is the thing to do, or whether the batch floats or sinks as
 * one and a measurement must tell which. Every chance is that of a piece taken at random, as {@code Forecast.probability} has it.
 * Immutable.
 */
public sealed interface Advice permits AdviceRecord {
    /** {@return chance that was asked for} */
    Adviser.Goal goal();

    /** {@return the design as it is} */
    Design design();

    /** {@return forecast of the design as it is} */
    Forecast forecast();

    /** {@return how the design does as it is} */
    Appraisal now();

    /** {@return proposals, those that reach the goal first, each smallest first; empty where it is reached already or nothing helps} */
    List<Change> changes();

    /** {@return what would reach the goal but breaks a limit, at most two} */
    List<Forgone> forgone();

    /** {@return what has to be done} */
    Need need();

    /** What has to be done. */
    enum Need {
        /** Nothing: the goal is reached. */
        NOTHING,
        /** One of the changes. */
        A_CHANGE,
        /** A measurement, before anything is changed: as it is, the batch floats or sinks as one, and it is not known which. */
        A_MEASUREMENT_FIRST,
        /** Something larger: no reasonable change of this design reaches the goal. */
        ANOTHER_DESIGN
    }

    /** {@return the smallest change that reaches the goal; empty where none does or none is needed} */
    default Optional<Change> best() {
        return changes().stream().filter(Change::reachesGoal).findFirst();
    }

    /** {@return the change with the largest chance, whether it reaches the goal or not; empty where nothing helps at all} */
    default Optional<Change> mostHelpful() {
        return changes().stream()
                .max(Comparator.comparingDouble(change -> change.appraisal().chance()));
    }

    /**
     * {@return the mean weight of a batch, as it is entered, kg, that reaches the goal; empty where no weight does, or where the
     * maker does not choose the weight}
     */
    default OptionalDouble aim() {
        return forecast().critical().aim(goal().chance());
    }

    /** {@return how much of a fizz the piece has; empty without a recipe} */
    default Optional<Effervescence> effervescence() {
        double capacity = forecast().piece().makeup().gasCapacity();
        return design().recipe().map(recipe -> Effervescence.of(Blend.of(recipe).moles(), capacity));
    }

    /** {@return what is to be said of the search: that no other mould was tried where what was measured is of this one} */
    default Optional<Notice> notice() {
        boolean ofItsMould =
                forecast().narrowing().map(effect -> effect.seen().bathed()).orElse(false);
        return ofItsMould && need() != Need.NOTHING ? Optional.of(AdviceRecord.OTHER_MOULDS) : Optional.empty();
    }

    /**
     * A change that was not proposed.
     *
     * @param change change that would reach the goal
     * @param limit limit that it breaks
     */
    record Forgone(Change change, Limit limit) {}

    /**
     * How a design does, from all draws: what a proposal is judged by and what it moves besides.
     *
     * @param chance chance that a piece taken at random floats to the end
     * @param nineOfTen chance that at least nine of ten pieces of the batch do
     * @param mass weight that goes into the bath, kg
     * @param fizzTime time until 1 % is left, s; empty in still water or for a piece that hardly fizzes
     * @param ready when it is dry, s from pressing; empty without drying, or where most draws are not ready within 60 days
     * @param holds chance that it holds as it comes out of the mould; empty for a finished piece
     * @param feel how it most likely comes out of the mould; empty for a finished piece
     * @param cost cost of the mix in one piece, in the user's money; empty without any price
     */
    record Appraisal(
            double chance,
            double nineOfTen,
            double mass,
            Optional<Interval> fizzTime,
            Optional<Interval> ready,
            OptionalDouble holds,
            Optional<Pressed.Feel> feel,
            OptionalDouble cost) {}

    /** What a change must keep to, whatever it gains. */
    enum Limit {
        /** The piece must hold as it comes out of the mould. */
        HOLDS("the piece would no longer hold"),
        /** The share of fragrance in the mix must not rise. */
        FRAGRANCE("the share of fragrance would rise"),
        /** An ingredient must stay within the limit that the recipe gives for it. */
        SUPPLIER("an ingredient would pass the limit that the recipe gives");

        /** Why a change that breaks it is no proposal. */
        private final String broken;

        Limit(String broken) {
            this.broken = broken;
        }

        /** {@return why a change that breaks it is no proposal} */
        public String broken() {
            return broken;
        }
    }
}
