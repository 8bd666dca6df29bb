package org.fizzhull.forecast.question;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * What is asked of a {@link org.fizzhull.forecast.FloatPredictor} and its siblings: a piece, a bath, and how well both
 * are known. Immutable; each method returns a changed copy.
 *
 * <pre>{@code
 * Question bought = Question.weighed(ball, Units.grams(138)).in(Bath.at(Units.celsius(38))).measured(Measured.NOMINAL);
 * Question batch = Question.weighed(ball, Units.grams(138)).spread(Priors.normal(0, Units.grams(2)));
 * Question made = Question.of(ball, new Moulded.Filled(blend, Units.grams(140), Optional.empty(), plan));
 * Question plain = Question.still(ball, Units.grams(138)); // hydrostatics alone
 * }</pre>
 *
 * <p>Defaults: a bath of 38 C, hollow shapes placed and others dropped, a size taken with calipers, a kitchen scale.
 * The less well size and weight are known, the wider the answer ({@link Measured}, {@link Scale}).
 *
 * @param shape form of the piece, with what lies on it and in it
 * @param making how the piece was made, and so what is known of it
 * @param bath the water
 * @param into how it goes in
 * @param stillWater true to leave out everything that fizzes: pure hydrostatics
 * @param measured how the size of the mould is known
 * @param scale on which the piece or the fill was weighed
 */
public record Question(
        Shape shape, Making making, Bath bath, IntoBath into, boolean stillWater, Measured measured, Scale scale)
        implements Serializable {

    /** Bath temperature where none is given, K. */
    public static final double DEFAULT_TEMPERATURE = Units.celsius(38);

    /** A pressed piece is denser than this, kg/m3. */
    public static final double LIGHTEST_PIECE = PieceLimits.LIGHTEST;

    /** A pressed piece is at most this dense, kg/m3. */
    public static final double HEAVIEST_PIECE = PieceLimits.HEAVIEST;

    /** A body in still water is at most this dense, kg/m3. */
    public static final double DENSEST_BODY = PieceLimits.DENSEST;

    /**
     * Refuses a mass on the scale that no pressed piece of this volume has.
     *
     * @param shape form of the piece
     * @param making how the piece was made, and so what is known of it
     * @param bath the water
     * @param into how it goes in
     * @param stillWater true to leave out everything that fizzes: pure hydrostatics
     * @param measured how the size of the mould is known
     * @param scale on which the piece or the fill was weighed
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for such a mass, for a scale that shows it in hardly a
     *     step, or for a spread that reaches below nothing
     */
    public Question {
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(making, "making");
        Objects.requireNonNull(bath, "bath");
        Objects.requireNonNull(into, "into");
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(scale, "scale");
        if (making instanceof Making.Weighed weighed) {
            PieceLimits.check(shape, weighed.mass(), stillWater);
            scale.check(weighed.mass() - shape.insetMass());
            if (weighed.hand().isPresent()) {
                PieceLimits.checkSpread(shape, weighed.mass(), weighed.hand().get());
            }
        }
    }

    /**
     * {@return a question about a weighed piece, with the defaults: a 38 C bath, hollow shapes placed and others
     * dropped, a size taken with calipers (for a size from a catalogue set {@link Measured#NOMINAL}), a kitchen
     * scale}
     *
     * @param shape form of the piece
     * @param mass mass on the scale, kg
     */
    public static Question weighed(Shape shape, double mass) {
        return of(shape, Making.Weighed.of(mass));
    }

    /**
     * {@return a question about any body in still water, without fizz; defaults as in {@link #weighed}}
     *
     * @param shape form of the piece
     * @param mass mass on the scale, kg
     */
    public static Question still(Shape shape, double mass) {
        return of(shape, Making.Weighed.of(mass), true);
    }

    /**
     * {@return a question about a piece made in any way; defaults as in {@link #weighed}}
     *
     * @param shape form of the piece
     * @param making how the piece was made, and so what is known of it
     */
    public static Question of(Shape shape, Making making) {
        return of(shape, making, false);
    }

    private static Question of(Shape shape, Making making, boolean stillWater) {
        IntoBath into = shape.hollow().isPresent() ? IntoBath.PLACED : IntoBath.DROPPED;
        Bath bath = Bath.at(DEFAULT_TEMPERATURE);
        return new Question(shape, making, bath, into, stillWater, Measured.CALIPERS, Scale.usual(weight(making)));
    }

    /** What was put on the scale, kg; NaN for a piece pressed by pressure. */
    private static double weight(Making making) {
        if (making instanceof Making.Weighed weighed) {
            return weighed.mass();
        }
        return making instanceof Moulded.Filled filled ? filled.dampMass() : Double.NaN;
    }

    /**
     * {@return this question with the piece weighed on another scale}
     *
     * @param other the scale
     */
    public Question on(Scale other) {
        return new Question(shape, making, bath, into, stillWater, measured, other);
    }

    /**
     * {@return this question with another bath}
     *
     * @param other the bath
     */
    public Question in(Bath other) {
        return new Question(shape, making, other, into, stillWater, measured, scale);
    }

    /**
     * {@return this question with another bath: {@link #in}, in languages where that is a keyword}
     *
     * @param other the bath
     */
    public Question inBath(Bath other) {
        return in(other);
    }

    /**
     * {@return this question with a spread of the mass across the batch, around 0, kg; for a piece on the scale}
     *
     * @param aroundZero spread of the masses around their mean, kg
     * @throws IllegalArgumentException for a piece that is not on the scale
     */
    public Question spread(Prior aroundZero) {
        Given.all("aroundZero", aroundZero);
        if (!(making instanceof Making.Weighed weighed)) {
            throw new IllegalArgumentException("the spread of a made piece belongs to its making");
        }
        Making.Weighed batch =
                new Making.Weighed(weighed.mass(), Optional.of(aroundZero), weighed.blend(), weighed.dried());
        return new Question(shape, batch, bath, into, stillWater, measured, scale);
    }

    /**
     * {@return the question with the piece put into the bath another way}
     *
     * @param way how it goes in
     */
    public Question into(IntoBath way) {
        return new Question(shape, making, bath, way, stillWater, measured, scale);
    }

    /**
     * {@return this question with the mould's size known another way}
     *
     * @param how how the size is known
     */
    public Question measured(Measured how) {
        return new Question(shape, making, bath, into, stillWater, how, scale);
    }

    /**
     * {@return this question with another mass on the scale, kg}
     *
     * @param kilograms mass, kg
     */
    public Question weighing(double kilograms) {
        return new Question(shape, making.weighing(kilograms), bath, into, stillWater, measured, scale);
    }

    /**
     * How a piece goes into the bath, as it is asked; {@link org.fizzhull.voyage.Release} is what a voyage makes of it. It
     * matters for hollow shapes alone.
     */
    public enum IntoBath {
        /** Set down gently, open side up: a hollow stays dry while its rim is above the water. */
        PLACED("placed"),
        /** Let go: a hollow floods. */
        DROPPED("dropped");

        /** Word of the option and key in results, stable. */
        private final String word;

        IntoBath(String word) {
            this.word = word;
        }

        /** {@return the word of the option} */
        public String word() {
            return word;
        }
    }
}
