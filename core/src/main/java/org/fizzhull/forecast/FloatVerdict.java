package org.fizzhull.forecast;

import java.io.Serializable;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * What a forecast comes to, worked out once for every reader of it: text, data and picture. The classes of the chance
 * are those of {@link Probability.Likelihood}: likely above 0.66, unlikely below 0.33.
 *
 * @param answer whether it floats to the end
 * @param reason the physics that decides that
 */
public record FloatVerdict(Answer answer, Reason reason) implements Serializable {
    /** Whether it floats to the end. */
    public enum Answer {
        /** With a chance above 0.66. */
        FLOATS("floats"),
        /** With a chance below 0.33 it floats. */
        SINKS("sinks"),
        /** In between: about as likely as not. */
        EITHER("either"),
        /** In between because something about the whole batch is not known: nearly all float or nearly none. */
        CANNOT_TELL("cannot tell");

        /** Key in results, stable. */
        private final String word;

        Answer(String word) {
            this.word = word;
        }

        /** {@return the word of results} */
        public String word() {
            return word;
        }
    }

    /** The physics that decides it. */
    public enum Reason {
        /** It is lighter than the water it pushes aside. */
        LIGHT("light"),
        /** It is heavier than the water it pushes aside. */
        HEAVY("heavy"),
        /** It is too heavy for still water, and the gas that clings to it lifts it. */
        GAS_LIFTS("gas lifts"),
        /** It is light enough for still water, and the water that soaks in takes it down. */
        SOAKS("soaks"),
        /** A boat whose rim goes under. */
        RIM("rim"),
        /** What it carries is heavier than water and takes it down. */
        LOAD("load");

        /** Key in results, stable. */
        private final String word;

        Reason(String word) {
            this.word = word;
        }

        /** {@return the word of results} */
        public String word() {
            return word;
        }
    }

    /** Chance above which it floats: "likely" of the IPCC's calibrated words, see {@link Probability.Likelihood}. */
    private static final double LIKELY = 0.66;
    /** Chance below which it sinks: "unlikely" of the same words. */
    private static final double UNLIKELY = 0.33;

    /** Share of the limit within which the weight decides nothing, so that a piece that goes under does so by what soaks in (assumed). */
    private static final double AT_THE_LIMIT = 1e-3;

    /**
     * The verdict.
     *
     * @param chance that it floats to the end, 0 to 1
     * @param undecided whether nearly all of the batch may float as well as nearly none
     * @param limit the still-water limit that decides
     * @param floatsAtOnce chance that it floats at once, 0 to 1
     * @param question what was asked
     */
    static FloatVerdict of(
            double chance, boolean undecided, Forecast.GoverningLimit limit, double floatsAtOnce, Question question) {
        Answer answer = chance > LIKELY
                ? Answer.FLOATS
                : chance < UNLIKELY ? Answer.SINKS : undecided ? Answer.CANNOT_TELL : Answer.EITHER;
        return new FloatVerdict(answer, reason(chance >= 0.5, limit, floatsAtOnce, question));
    }

    /**
     * The reason: the sign of the spare in still water against the answer tells whether gas or soaking made the
     * difference, of which there is neither where the question leaves them out.
     */
    private static Reason reason(
            boolean floats, Forecast.GoverningLimit limit, double floatsAtOnce, Question question) {
        if (floats) {
            return question.stillWater() || limit.spare() >= 0 ? Reason.LIGHT : Reason.GAS_LIFTS;
        }
        if (question.stillWater() || limit.spare() < -AT_THE_LIMIT * limit.mass()) {
            return limit.kind() == Forecast.GoverningLimit.Kind.BOAT ? Reason.RIM : Reason.HEAVY;
        }
        if (floatsAtOnce >= 0.5 && heavyLoad(question.shape())) {
            return Reason.LOAD;
        }
        return limit.kind() == Forecast.GoverningLimit.Kind.BOAT ? Reason.RIM : Reason.SOAKS;
    }

    /** Whether what stays in or on a shape is heavier than the water it pushes aside. */
    private static boolean heavyLoad(Shape shape) {
        double kept = shape instanceof Loaded loaded
                ? loaded.insetMass() - loaded.toppingMass() - WATER * (loaded.insetVolume() - loaded.toppingVolume())
                : shape.insetMass() - WATER * shape.insetVolume();
        return kept > 0;
    }

    /** A round density of water: what is lighter never takes a piece down, kg/m3. */
    private static final double WATER = 1000;
}
