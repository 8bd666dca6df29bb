package org.fizzhull.forecast;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.BatchAim;
import org.fizzhull.forecast.result.BatchShare;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.piece.Piece;

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

    /** {@return the heaviest weight that floats, draw by draw; one draw for central values} */
    CriticalWeights critical();

    /** {@return mass at which the plain hull just floats, with what lies on it and in it: no gas, the hollow flooded} */
    double limitMass();

    /** {@return mass at which the rim of a dry hollow goes under; empty for solid shapes} */
    OptionalDouble boatLimitMass();

    /** {@return what the piece could carry at the drop before it sinks, gas and wetting included; negative where it goes down} */
    Interval spareAtDrop();

    /** {@return the one of the two limits that decides} */
    GoverningLimit limit();

    /** {@return what all this comes to} */
    FloatVerdict verdict();

    /** {@return the measurement that would tell most; empty where none would tell much, or without draws} */
    Optional<MeasureNext> next();

    /** {@return the ways it floats as it is, likeliest first; empty where it sinks as it is} */
    List<FloatingAttitude> attitudes();

    /** {@return chances of a piece taken at random; empty where no draws were asked for} */
    Optional<Probability> probability();

    /** {@return when it comes up, s, of the draws that rise later; empty where fewer than 40 of them do} */
    Optional<Interval> riseTime();

    /** {@return when 1 % of it is left, s; empty in still water, and of a piece that does not fizz or hardly} */
    Optional<Interval> fizzTime();

    /** {@return share of the fizz of the powders that is gone before the bath, 0 to 1; empty in still water and without a recipe} */
    Optional<Interval> fizzLost();

    /** {@return weight to aim for; empty where the question has no spread of the fill} */
    Optional<BatchAim> aim();

    /** {@return what decides the spare, largest total first} */
    List<Driver> drivers();

    /** {@return what measurements did; empty where there are none} */
    Optional<MeasurementEffect> narrowing();

    /** {@return what the reader must know, in the order in which it is told} */
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
    default Optional<BatchShare> share() {
        boolean single =
                question().making() instanceof Weighed weighed && weighed.hand().isEmpty();
        return probability().isPresent() && !single ? Optional.of(critical().batch()) : Optional.empty();
    }

    /** {@return the words for the probability that it floats to the end; empty without draws} */
    default Optional<Likelihood> likelihoodToTheEnd() {
        return probability().isPresent()
                ? Optional.of(Likelihood.of(probability().get().floatsToTheEnd()))
                : Optional.empty();
    }

    /** {@return the words for the probability that it floats at once; empty without draws} */
    default Optional<Likelihood> likelihood() {
        return probability().isPresent()
                ? Optional.of(Likelihood.of(probability().get().floatsAtOnce()))
                : Optional.empty();
    }
}
