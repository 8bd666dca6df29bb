package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;

/**
 * The critical weight of every draw of a question: the heaviest piece of this shape and mix that floats. One
 * distribution gives the chance at every weight, the weight that floats with a given chance, the share of a batch and
 * its band.
 *
 * <p>In each draw shape, mix, dryness and every other uncertain input are held; density and porosity follow the weight.
 * The errors of hand and scale are not in it: they belong to a piece, not to the limit. <b>To the end</b> means: floats
 * at once, and stays up until a tenth of its dissolving mass is left, toppings and crystals not counted. <b>At once</b>
 * means: at the surface 20 s after it was let go. The search
 * looks at the weights near the border, a tenth of the weight on both sides and farther where it must, within what a
 * pressed piece of the volume can weigh (300 to 1,670 kg/m3, at most its solids without a pore): the critical weight is
 * the largest of them below which they all float. Draws that are not monotone in the weight, and draws that stop at an
 * end of the range, are counted ({@link #count}). Accuracy: 0.03 % of the weight.
 *
 * <p>Weights are those of the whole piece as it goes into the bath, what lies on it and in it included, kg. Draw i of
 * two questions with the same sampling and the same rows of uncertain inputs is the same state of the world, so that
 * two shapes may be compared draw by draw. Immutable; safe to share between threads.
 */
public interface CriticalWeights extends Serializable {
    /** What the search of a draw met. */
    public enum Met {
        /** Every lighter piece looked at floats, every heavier one does not. */
        MONOTONE,
        /** Some lighter piece sinks or some heavier one floats. */
        NOT_MONOTONE,
        /** The heaviest piece of the range floats; its weight was taken. */
        ABOVE_RANGE,
        /** The lightest piece of the range sinks; its weight was taken. */
        BELOW_RANGE;

        /** {@return its place in a column of a run, never stored} */
        @SuppressWarnings("EnumOrdinal") // an index into an array of this run, never stored
        public int code() {
            return ordinal();
        }
    }

    /** {@return the number of draws; 1 for central values} */
    int draws();

    /**
     * {@return how many draws met something in the search}
     *
     * @param what what was met
     */
    int count(Met what);

    /**
     * {@return the share of the draws that met something in the search, 0 to 1}
     *
     * @param what what was met
     */
    double share(Met what);

    /** {@return the heaviest weight that floats to the end, kg, draw by draw} */
    double[] toTheEnd();

    /** {@return the heaviest weight that floats at once, kg, draw by draw; never less than {@link #toTheEnd}} */
    double[] atOnce();

    /** {@return the median and 95 % interval of the heaviest weight that floats to the end, kg} */
    Interval interval();

    /**
     * {@return the chance that a piece of exactly this weight, kg, floats to the end}
     *
     * @param weight weight of a piece as it goes into the bath, kg
     * @throws IllegalArgumentException for a weight that is not above 0
     */
    double chanceAt(double weight);

    /**
     * {@return the chance that a piece of exactly this weight, kg, floats at once}
     *
     * @param weight weight of a piece as it goes into the bath, kg
     * @throws IllegalArgumentException for a weight that is not above 0
     */
    double chanceAtOnce(double weight);

    /**
     * {@return the heaviest weight that floats to the end with a chance between 0 and 1, kg}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    double heaviest(double chance);

    /**
     * {@return the heaviest weight that floats at once with a chance between 0 and 1, kg}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    double heaviestAtOnce(double chance);

    /**
     * {@return the share of the question's own batch that floats to the end; a piece weighed once is a batch of its
     * readings}
     */
    BatchShare batch();

    /**
     * {@return the share of a batch of another weight: the mean that is entered, damp for a fill and on the scale for a
     * weighed piece, kg} The weight of a piece pressed by a pressure cannot be chosen: then the question's own.
     *
     * @param entered mean weight as it is entered, kg
     */
    BatchShare batchAt(double entered);

    /** {@return the share of the batch that floats to the end in each draw of what is common to it} */
    double[] shares();

    /** {@return the share of the batch that floats at once in each draw} */
    double[] sharesAtOnce();

    /**
     * {@return the heaviest mean weight, as it is entered, kg, at which a piece taken at random floats to the end with
     * a chance between 0 and 1; empty where there is none in the range, or the weight cannot be chosen}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    OptionalDouble aim(double chance);

    /**
     * {@return the heaviest weight of one piece, as it is entered, kg, that floats to the end with a chance; empty as
     * {@link #aim}}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    OptionalDouble single(double chance);

    /**
     * What to aim for where each piece of a batch comes out a little different, read off the critical weights. Weights are
     * as they are entered, kg: of a fill the damp weight that goes into the mould, else the weight of the piece on the
     * scale.
     *
     * <p>Told for a batch whose fill scatters; a single piece has nothing to aim for. The second number is larger than the
     * first, the more the hand spreads. Immutable.
     *
     * @param aimFor heaviest mean at which a piece taken at random floats to the end nine times of ten, never above the
     *     second
     * @param neverAbove heaviest weight of a single piece that floats to the end nine times of ten
     */
    record BatchAim(double aimFor, double neverAbove) implements Serializable {
        /** Chance that is aimed for. */
        private static final double NINE_OF_TEN = 0.9;

        /**
         * {@return the target weight; empty where no weight, or every weight, of a pressed piece reaches nine of ten, and
         * where floating is not monotone in the weight in a tenth of the draws or more: there a limit from above says
         * nothing}
         *
         * @param critical critical weights of the draws
         */
        public static Optional<BatchAim> of(CriticalWeights critical) {
            OptionalDouble aim = critical.aim(NINE_OF_TEN);
            OptionalDouble most = critical.single(NINE_OF_TEN);
            boolean ends =
                    critical.share(CriticalWeights.Met.BELOW_RANGE) + critical.share(CriticalWeights.Met.NOT_MONOTONE)
                                    > 1 - NINE_OF_TEN
                            || critical.share(CriticalWeights.Met.ABOVE_RANGE) > NINE_OF_TEN;
            return aim.isPresent() && most.isPresent() && !ends
                    ? Optional.of(new BatchAim(Math.min(aim.getAsDouble(), most.getAsDouble()), most.getAsDouble()))
                    : Optional.empty();
        }

        /**
         * {@return whether floating is not monotone in the weight in a tenth of the draws or more}
         *
         * @param critical critical weights of the draws
         */
        public static boolean bent(CriticalWeights critical) {
            return critical.share(CriticalWeights.Met.NOT_MONOTONE) >= 1 - NINE_OF_TEN;
        }
    }

    /**
     * What share of the pieces of one batch floats to the end. What differs from piece to piece (hand, reading of the
     * scale, one press against the next) makes it a share; what is the same for the whole batch but not known makes it
     * uncertain.
     *
     * <p>Worked out by {@link CriticalWeights#batch}: in each draw of what is common to the batch the share of its pieces
     * that weigh less than the critical weight. What is unknown for the whole batch is never told as a share of its pieces.
     * Kinds of inputs: {@link org.fizzhull.forecast.prior.Input.Kind}; docs/physics/uncertainty.md, 6. Immutable.
     *
     * @param share median and 95 % interval over what is not known of the batch, 0 to 1
     * @param mean of the share: the chance that one piece taken at random floats to the end
     * @param nineOfTen chance that at least 9 of 10 pieces of the batch do
     * @param oneOfTen chance that at most 1 of 10 does
     */
    record BatchShare(Interval share, double mean, double nineOfTen, double oneOfTen) implements Serializable {
        /** Chance of a whole or no batch above which everything between is left unsaid. */
        private static final double MOSTLY = 0.66;

        /** A share that counts as the whole batch. */
        public static final double NEARLY_ALL = 0.9;

        /** A share that counts as none of it. */
        public static final double NEARLY_NONE = 0.1;

        /** {@return whether the batch mostly floats or sinks as a whole} */
        public boolean together() {
            return nineOfTen + oneOfTen > MOSTLY;
        }

        /** {@return whether nearly all may float as well as nearly none: the interval reaches over both} */
        public boolean undecided() {
            return share.low() < NEARLY_NONE && share.high() > NEARLY_ALL;
        }
    }
}
