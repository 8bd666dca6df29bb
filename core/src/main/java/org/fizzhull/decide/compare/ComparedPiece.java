package org.fizzhull.decide.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.Mould;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.joint.OutcomeByDraw;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.CriticalWeights.Met;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * A row of a {@link Comparison}. Immutable.
 *
 * @param candidate mould, making and bath
 * @param made what comes out of the mould
 * @param bathed what becomes of it in the bath
 * @param standing its rank among the others, and how sure that is
 * @param notices what the reader must know of this row and not of all
 */
public record ComparedPiece(
        Comparison.Candidate candidate, MadePiece made, InBath bathed, Rank standing, List<Notice> notices) {

    /**
     * Copies the list.
     *
     * @param candidate mould, making and bath
     * @param made what comes out of the mould
     * @param bathed what becomes of it in the bath
     * @param standing its rank among the others, and how sure that is
     * @param notices what the reader must know of this row and not of all
     */
    public ComparedPiece {
        notices = List.copyOf(notices);
    }

    /** {@return the mould} */
    public Mould mould() {
        return candidate.mould();
    }

    /** {@return the shape, with toppings and what is pressed in} */
    public Shape shape() {
        return candidate.question().shape();
    }

    /** {@return what it is made of, where a recipe is known} */
    public Optional<Recipe> recipe() {
        return candidate.question().making().mix().map(Blend::recipe);
    }

    /** {@return the chance that a piece floats to the end, in the worst bath where there are several} */
    public double floats() {
        return bathed.probability().floatsToTheEnd();
    }

    /** {@return the words of likelihood for {@link #floats}} */
    public Probability.Likelihood likelihood() {
        return Probability.Likelihood.of(floats());
    }

    /** {@return surface over volume, 1/m} */
    public double surfaceToVolume() {
        return shape().surface() / shape().volume();
    }

    /**
     * What becomes of a piece in the bath: one part of a row of a {@link Comparison}. Put into several baths, everything here is
     * told of the worst: the one in which the fewest float to the end. Masses in kg, times in s. Immutable.
     *
     * @param probability chances of what becomes of it
     * @param error one standard error of the chance to float to the end, from the draws
     * @param critical critical weight: the largest weight that floats to the end
     * @param headroom how much heavier it could be and still float to the end, as a share of its weight; negative where it is
     *     too heavy
     * @param aim heaviest weight of a piece that floats to the end 9 times of 10, as it is entered: of a fill damp, else as
     *     it goes into the bath; empty where no weight of a pressed piece, or every weight, does, and where in one draw of
     *     ten or more floating is not monotone in the weight
     * @param aimDamp the same out of the mould; empty where the piece does not come from one
     * @param fizzTime time until 1 % of it is left; empty in still water, and of a piece that does not fizz or hardly
     * @param worst the bath that all this is told of; empty where there is one only
     * @param each every bath of the panel; empty where there is one only
     */
    public record InBath(
            Probability probability,
            double error,
            Interval critical,
            Interval headroom,
            OptionalDouble aim,
            OptionalDouble aimDamp,
            Optional<Interval> fizzTime,
            Optional<Comparison.NamedBath> worst,
            List<InNamedBath> each) {
        /** Chance with which a piece of the aimed weight floats to the end. */
        private static final double NINE_OF_TEN = 0.9;

        /**
         * Copies the list.
         *
         * @param probability chances of what becomes of it
         * @param error one standard error of the chance to float to the end, from the draws
         * @param critical critical weight: the largest weight that floats to the end
         * @param headroom how much heavier it could be and still float to the end, as a share of its weight
         * @param aim heaviest weight of a piece that floats to the end 9 times of 10, as it is entered
         * @param aimDamp the same out of the mould; empty where the piece does not come from one
         * @param fizzTime time until 1 % of it is left; empty in still water, and of a piece that does not fizz or hardly
         * @param worst the bath that all this is told of; empty where there is one only
         * @param each every bath of the panel; empty where there is one only
         */
        public InBath {
            each = List.copyOf(each);
        }

        /**
         * The chance in one bath of the panel.
         *
         * @param bath the bath
         * @param floats chance to float to the end there, 0 to 1
         */
        public record InNamedBath(Comparison.NamedBath bath, double floats) {}

        /** {@return the index of the bath in which the fewest float to the end; the first of equals} */
        static int worst(JointForecast answer) {
            List<OutcomeByDraw> baths = answer.baths();
            int worst = 0;
            for (int i = 1; i < baths.size(); i++) {
                if (floats(baths.get(i)) < floats(baths.get(worst))) {
                    worst = i;
                }
            }
            return worst;
        }

        /**
         * {@return what becomes of the piece of a forecast}
         *
         * @param answer forecast in one bath or in every bath of the panel
         * @param panel the baths, in the order of the forecast; empty for that of the question
         * @param fizzes whether the piece fizzes; without, it has no fizz time
         */
        static InBath of(JointForecast answer, List<Comparison.NamedBath> panel, boolean fizzes) {
            int worst = worst(answer);
            OutcomeByDraw bath = answer.baths().get(worst);
            List<InNamedBath> each = new ArrayList<>();
            for (int i = 0; i < panel.size(); i++) {
                each.add(new InNamedBath(panel.get(i), floats(answer.baths().get(i))));
            }
            OptionalDouble aim = aim(answer, bath.critical());
            return new InBath(
                    bath.probability(),
                    bath.error(),
                    bath.critical().interval(),
                    bath.headroomInterval(),
                    aim,
                    aimDamp(answer, aim),
                    fizzes ? bath.fizzTime() : Optional.empty(),
                    panel.isEmpty() ? Optional.empty() : Optional.of(panel.get(worst)),
                    each);
        }

        /** Chance to float to the end in one bath. */
        private static double floats(OutcomeByDraw bath) {
            return bath.probability().floatsToTheEnd();
        }

        /** Heaviest weight that floats to the end 9 times of 10, kg; empty where too many draws have no such weight. */
        private static OptionalDouble aim(JointForecast answer, CriticalWeights critical) {
            // too many draws in which no weight floats, or floating is not monotone, or every weight floats
            boolean none = critical.share(Met.BELOW_RANGE) + critical.share(Met.NOT_MONOTONE) > 1 - NINE_OF_TEN;
            boolean all = critical.share(Met.ABOVE_RANGE) > NINE_OF_TEN;
            if (none || all) {
                return OptionalDouble.empty();
            }
            if (answer.question().making() instanceof Moulded.Filled) {
                Optional<CriticalWeights.BatchAim> batch = CriticalWeights.BatchAim.of(critical);
                return batch.isPresent() ? OptionalDouble.of(batch.get().aimFor()) : OptionalDouble.empty();
            }
            return OptionalDouble.of(critical.heaviest(NINE_OF_TEN));
        }

        /** The aim out of the mould, kg. What leaves while it dries is taken in proportion to the weight, crystals left out. */
        private static OptionalDouble aimDamp(JointForecast answer, OptionalDouble aim) {
            if (aim.isEmpty() || answer.damp().isEmpty() || answer.question().making() instanceof Moulded.Filled) {
                return answer.question().making() instanceof Moulded.Filled ? aim : OptionalDouble.empty();
            }
            double inset = answer.question().shape().insetMass();
            double damp = answer.damp().orElseThrow().median() - inset;
            double dry = answer.mass().median() - inset;
            return OptionalDouble.of((aim.getAsDouble() - inset) * damp / dry + inset);
        }
    }

    /**
     * The rank of a row among the others, counted draw by draw ({@link Ranking}). Chances 0 to 1.
     *
     * @param betterThanNext chance that it beats the next row in what the table is sorted by; empty for the last. For
     *     floating, the row beats the other in whose draw it could be heavier by the larger share and still float to the
     *     end
     * @param chanceOfBest chance that no other row floats a larger share of its pieces; equals count in parts
     * @param regret share of the pieces, 0 to 1, that it floats less on average than the row that is best in each state of
     *     the world: what a wrong choice costs. Of the row with the best chance it is what perfect knowledge would be worth
     */
    public record Rank(OptionalDouble betterThanNext, double chanceOfBest, double regret) {}
}
