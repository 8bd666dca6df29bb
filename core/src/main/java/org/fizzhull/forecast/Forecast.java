package org.fizzhull.forecast;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.uncertainty.sampling.Sensitivity;

/**
 * The answer to a {@link Question}, by a {@link FloatPredictor}. Masses in kg, volumes in m3, surfaces in m2, times in
 * s.
 *
 * <p>An {@link Interval} is the median with the 2.5 and 97.5 % points over the draws, or one point for central values.
 * Two kinds of uncertainty are kept apart: {@link #probability} is for a piece taken at random, {@link #share} tells
 * what share of one batch floats and how unsure that share is. Immutable; safe to share between threads; serializable.
 * {@code org.fizzhull.answer.body.FloatAnswer} has the keys and units of a forecast as data.
 */
public sealed interface Forecast extends Serializable permits ForecastRecord {
    /** {@return what was asked, as it was judged: a boat that tips counts as dropped} */
    Question question();

    /** {@return the uncertain inputs that were drawn} */
    Factors factors();

    /** {@return number of draws and seed} */
    Sampling sampling();

    /** {@return the piece as it goes into the bath, by the central values; of a made piece with the weight of the middle draw} */
    Piece piece();

    /** {@return interval of the predicted weight of a made piece, across the draws; empty for a weighed one} */
    Optional<Interval> mass();

    /** {@return the heaviest piece that floats, in each draw; one draw for central values} */
    CriticalWeights critical();

    /**
     * {@return mass at which the hull, with what lies on it and in it, just floats without gas and with its hollow
     * flooded, kg}
     */
    double limitMass();

    /** {@return mass at which the rim of a dry hollow goes under, kg; empty for solid shapes} */
    OptionalDouble boatLimitMass();

    /**
     * {@return the mass that the piece could carry at the drop before it sinks, gas and wetting included, kg;
     * negative where it goes down}
     */
    Interval spareAtDrop();

    /** {@return the still-water limit that decides: of the hull with its hollow flooded, or of the dry boat} */
    GoverningLimit limit();

    /** {@return the conclusion: whether it floats, and how sure that is} */
    FloatVerdict verdict();

    /** {@return the measurement that would tell most; empty where none would tell much, or without draws} */
    Optional<MeasureNext> next();

    /** {@return the attitudes in which it floats without gas, likeliest first; empty where it sinks without gas} */
    List<FloatingAttitude> attitudes();

    /** {@return chances of a piece taken at random; empty where no draws were asked for} */
    Optional<Probability> probability();

    /**
     * {@return rise time, s after the drop, over the draws that sink at first and rise later; empty where fewer than
     * 40 do}
     */
    Optional<Interval> riseTime();

    /**
     * {@return fizz time, s from the drop until 1 % is left; empty in still water, and for a piece that hardly fizzes
     * or not at all}
     */
    Optional<Interval> fizzTime();

    /** {@return share of the fizz of the powders that is gone before the bath, 0 to 1; empty in still water and without a recipe} */
    Optional<Interval> fizzLost();

    /** {@return the weight to aim for when filling; empty where the question has no spread of the fill} */
    Optional<CriticalWeights.BatchAim> aim();

    /** {@return the inputs that decide the spare, by their sensitivity indices, the largest total index first} */
    List<Driver> drivers();

    /** {@return how the measurements narrowed the forecast; empty where there are none} */
    Optional<MeasurementEffect> narrowing();

    /** {@return notices that a reader must see, in the order in which they are shown} */
    List<Notice> notices();

    /**
     * {@return the gas per entering water, a check ({@link org.fizzhull.fizz.Gas#perEnteringWater}), by the central
     * values just under the surface of a fizzing bath}
     */
    default double gasPerEnteringWater() {
        return EnteringWater.gas(question().bath(), piece());
    }

    /** {@return the limit that decides less the mass, kg; negative for a piece that is over} */
    default double spare() {
        return limit().spare();
    }

    /** {@return whether it fizzes at all, by the central values; empty where the mix is not known, and in still water} */
    default Optional<Effervescence> effervescence() {
        return question().stillWater()
                ? Optional.empty()
                : question()
                        .making()
                        .mix()
                        .map(mix ->
                                Effervescence.of(mix.moles(), piece().makeup().gasCapacity()));
    }

    /**
     * {@return the share of the batch that floats to the end; empty without draws, and for a single weighed piece}
     */
    default Optional<CriticalWeights.BatchShare> share() {
        boolean single = question().making() instanceof Making.Weighed weighed
                && weighed.hand().isEmpty();
        return probability().isPresent() && !single ? Optional.of(critical().batch()) : Optional.empty();
    }

    /** {@return the words for the probability that it floats to the end; empty without draws} */
    default Optional<Probability.Likelihood> likelihoodToTheEnd() {
        return probability().isPresent()
                ? Optional.of(Probability.Likelihood.of(probability().get().floatsToTheEnd()))
                : Optional.empty();
    }

    /** {@return the words for the probability that it floats at once; empty without draws} */
    default Optional<Probability.Likelihood> likelihood() {
        return probability().isPresent()
                ? Optional.of(Probability.Likelihood.of(probability().get().floatsAtOnce()))
                : Optional.empty();
    }

    /**
     * What becomes of a piece in the bath, without the rest of a {@link Forecast}: no indices, no attitudes, no next
     * measurement, and so cheaper: six to nine tenths of its cost for a weighed piece, by the shape. What both hold is the
     * same to the byte for the same question and draws.
     *
     * @param question as it was judged: a boat that tips counts as dropped
     * @param piece by the central values
     * @param mass as it goes into the bath, kg; empty for a piece on the scale
     * @param critical the heaviest weight that floats, draw by draw
     * @param probability chances of a piece taken at random; empty for central values
     * @param fizzTime when 1 % of it is left, s; empty in still water
     * @see FloatPredictor#outcome
     */
    record BathOutcome(
            Question question,
            Piece piece,
            Optional<Interval> mass,
            CriticalWeights critical,
            Optional<Probability> probability,
            Optional<Interval> fizzTime)
            implements Serializable {

        private Object writeReplace() {
            return SerialForm.of(this);
        }
    }

    /**
     * How much one uncertain input decides of the spare at the drop: its Sobol indices (docs/physics/uncertainty.md, 3).
     * The margin is taken, not the outcome, since indices of 0 and 1 rank noise near the ends. After a measurement the
     * inputs depend on one another, a total index does not exist and the first order is a correlation ratio.
     *
     * @param input the uncertain input
     * @param firstOrder share of the variance of the spare that goes when it is known, 0 to 1
     * @param total share of the variance that stays when only it is unknown, 0 to 1; NaN after a measurement
     * @param error standard error of the total, after a measurement of the first order
     */
    record Driver(Input input, double firstOrder, double total, double error) implements Serializable {
        /** One of the indices of a run; an estimate that is negative or inside its own error is 0. */
        static Driver of(Input input, Sensitivity found, int i) {
            return new Driver(
                    input,
                    told(found.firstOrder()[i], found.firstError()[i]),
                    told(found.total()[i], found.error()[i]),
                    found.error()[i]);
        }

        /** The index, or 0 where it is negative or within its own standard error: chance alone makes such values. */
        private static double told(double index, double error) {
            return index < Math.max(0, error) ? 0 : index;
        }

        /** {@return the total, or the first order where there is no total: what drivers are ordered by} */
        public double share() {
            return Double.isNaN(total) ? firstOrder : total;
        }
    }

    /**
     * The one limit that decides in still water whether a piece stays up, without gas: of a hollow set down open side up
     * the mass at which its rim goes under, of everything else the mass that its hull displaces, the hollow full of water.
     *
     * @param kind which limit it is
     * @param mass kg, what lies on the piece and in it counted
     * @param spare limit less the piece's mass, kg; negative for a piece that is over
     * @see Forecast#limit
     */
    record GoverningLimit(Kind kind, double mass, double spare) implements Serializable {
        /** Which limit it is. */
        public enum Kind {
            /** What the hull displaces. */
            PLAIN("plain"),
            /** A boat: heavier, and its rim goes under. */
            BOAT("boat");

            /** Key in results, stable. */
            private final String word;

            Kind(String word) {
                this.word = word;
            }

            /** {@return the word of results} */
            public String word() {
                return word;
            }
        }
    }
}
