package org.fizzhull.forecast;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.model.BatchAim;
import org.fizzhull.forecast.model.BatchShare;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.SerialForm;

/**
 * The answer to a {@link Question}, by a {@link FloatPredictor}. Masses in kg, volumes in m3, surfaces in m2, times in
 * s.
 *
 * <p>An {@link Interval} is the median with the 2.5 and 97.5 % points over the draws, or one point for central values.
 * Two kinds of uncertainty are kept apart: {@link #probability} is for a piece taken at random, {@link #share} tells
 * what share of one batch floats and how unsure that share is. Immutable; safe to share between threads; serializable.
 * {@code org.fizzhull.answer.FloatAnswer} has the keys and units of a forecast as data.
 *
 * @param question what was asked, as it was judged: a boat that tips counts as dropped
 * @param factors the uncertain inputs that were drawn
 * @param sampling number of draws and seed
 * @param piece the piece as it goes into the bath, by the central values; of a made piece with the weight of the middle
 *     draw
 * @param mass interval of the predicted weight of a made piece, across the draws; empty for a weighed one
 * @param critical the heaviest weight that floats, draw by draw; one draw for central values
 * @param limitMass mass at which the plain hull just floats, with what lies on it and in it: no gas, the hollow flooded
 * @param boatLimitMass mass at which the rim of a dry hollow goes under; empty for solid shapes
 * @param spareAtDrop what the piece could carry at the drop before it sinks, gas and wetting included; negative where
 *     it goes down
 * @param limit the one of the two limits that decides
 * @param verdict what all this comes to
 * @param next the measurement that would tell most; empty where none would tell much, or without draws
 * @param attitudes the ways it floats as it is, likeliest first; empty where it sinks as it is
 * @param probability chances of a piece taken at random; empty where no draws were asked for
 * @param riseTime when it comes up, s, of the draws that rise later; empty where fewer than 40 of them do
 * @param fizzTime when 1 % of it is left, s; empty in still water, and of a piece that does not fizz or hardly
 * @param fizzLost share of the fizz of the powders that is gone before the bath, 0 to 1; empty in still water and
 *     without a recipe
 * @param aim weight to aim for; empty where the question has no spread of the fill
 * @param drivers what decides the spare, largest total first
 * @param narrowing what measurements did; empty where there are none
 * @param notices what the reader must know, in the order in which it is told
 */
public record Forecast(
        Question question,
        Factors factors,
        Sampling sampling,
        Piece piece,
        Optional<Interval> mass,
        CriticalWeights critical,
        double limitMass,
        OptionalDouble boatLimitMass,
        Interval spareAtDrop,
        GoverningLimit limit,
        FloatVerdict verdict,
        Optional<MeasureNext> next,
        List<FloatingAttitude> attitudes,
        Optional<Probability> probability,
        Optional<Interval> riseTime,
        Optional<Interval> fizzTime,
        Optional<Interval> fizzLost,
        Optional<BatchAim> aim,
        List<Driver> drivers,
        Optional<MeasurementEffect> narrowing,
        List<Notice> notices)
        implements Serializable {

    /**
     * Copies the lists.
     *
     * @param question what was asked
     * @param factors the uncertain inputs that were drawn
     * @param sampling how it was drawn
     * @param piece the piece as it goes into the bath, by the central values
     * @param mass interval of the predicted weight of a made piece, across the draws; empty for a weighed one
     * @param critical the heaviest weight that floats, draw by draw; one draw for central values
     * @param limitMass mass at which the plain hull just floats, with what lies on it and in it: no gas, the hollow
     *     flooded
     * @param boatLimitMass mass at which the rim of a dry hollow goes under; empty for solid shapes
     * @param spareAtDrop what the piece could carry at the drop before it sinks, gas and wetting included
     * @param limit the one of the two limits that decides
     * @param verdict what all this comes to
     * @param next the measurement that would tell most; empty where none would tell much, or without draws
     * @param attitudes the ways it floats as it is, likeliest first; empty where it sinks as it is
     * @param probability empty where no draws were asked for
     * @param riseTime when it comes up, s, of the draws that rise later; empty where too few do
     * @param fizzTime when 1 % of it is left, s; empty in still water
     * @param fizzLost share of the fizz of the powders that is gone before the bath; empty in still water and without a
     *     recipe
     * @param aim empty where the question has no spread of the fill
     * @param drivers what decides the spare, largest total first
     * @param narrowing what measurements did; empty where there are none
     * @param notices what the reader must know
     */
    public Forecast {
        attitudes = List.copyOf(attitudes);
        drivers = List.copyOf(drivers);
        notices = List.copyOf(notices);
    }

    /**
     * {@return the gas per entering water, a check ({@link org.fizzhull.fizz.Gas#perEnteringWater}), by the central
     * values just under the surface of a fizzing bath}
     */
    public double gasPerEnteringWater() {
        return EnteringWater.gas(question.bath(), piece);
    }

    /** {@return the limit that decides less the mass, kg; negative for a piece that is over} */
    public double spare() {
        return limit.spare();
    }

    /** {@return whether it fizzes at all, by the central values; empty where the mix is not known, and in still water} */
    public Optional<Effervescence> effervescence() {
        return question.stillWater()
                ? Optional.empty()
                : question.making()
                        .mix()
                        .map(mix -> Effervescence.of(mix.moles(), piece.makeup().gasCapacity()));
    }

    /**
     * {@return the share of the batch that floats to the end; empty without draws, and for a single weighed piece}
     */
    public Optional<BatchShare> share() {
        boolean single =
                question.making() instanceof Weighed weighed && weighed.hand().isEmpty();
        return probability.isPresent() && !single ? Optional.of(critical.batch()) : Optional.empty();
    }

    /** {@return the words for the probability that it floats to the end; empty without draws} */
    public Optional<Likelihood> likelihoodToTheEnd() {
        return probability.isPresent()
                ? Optional.of(Likelihood.of(probability.get().floatsToTheEnd()))
                : Optional.empty();
    }

    /** {@return the words for the probability that it floats at once; empty without draws} */
    public Optional<Likelihood> likelihood() {
        return probability.isPresent()
                ? Optional.of(Likelihood.of(probability.get().floatsAtOnce()))
                : Optional.empty();
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
