package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.shape.Shape;

/**
 * One pressed piece of the same mix, weighed damp, straight from the mould: it tells how the mix answers to pressing,
 * of which nothing is published below 1 MPa. A first piece leaves a sixth of the spread of the next weight, two to five
 * hardly less (docs/physics/uncertainty.md, "A weighed piece"); see {@link #and}. Immutable.
 *
 * <pre>{@code
 * WeighedPiece seen = WeighedPiece.byHand(Units.grams(150), PressWord.FIRM.pressure());
 * PressForecast next = PressPredictor.standard().with(seen).forecast(ball, making);
 * }</pre>
 *
 * @param dampMass kg
 * @param deviation one standard deviation of that mass, kg; half a gram for a kitchen scale
 * @param pressure at the top of the mould, Pa
 * @param pressSpread one sigma factor between that pressure and the true one, 1 where it was measured
 * @param repeat one sigma factor from one press to the next
 * @param shape of its mould; empty for the mould that is asked about
 * @param others further pieces of the same mix and, where pressed by hand, by the same hand
 */
public record WeighedPiece(
        double dampMass,
        double deviation,
        double pressure,
        double pressSpread,
        double repeat,
        Optional<Shape> shape,
        List<WeighedPiece> others)
        implements Serializable {
    /** Factor between a hand's pressure and the word for it (docs/physics/packing.md, 6). */
    public static final double HAND = 1.6;

    /** Factor from one press of the same hand to the next (assumed). */
    public static final double HAND_AGAIN = 1.15;

    /** Factor from one press to the next where the press shows its pressure (assumed). */
    public static final double GAUGE_AGAIN = 1.05;

    /**
     * Refuses what no piece weighs.
     *
     * @param dampMass kg
     * @param deviation of that mass, kg; half a gram for a kitchen scale
     * @param pressure at the top of the mould, Pa
     * @param pressSpread one sigma factor between that pressure and the true one, 1 where it was measured
     * @param repeat one sigma factor from one press to the next
     * @param shape of its mould; empty for the mould that is asked about
     * @param others further pieces of the same mix and, where pressed by hand, by the same hand
     * @throws Refusal {@code out-of-range} for a mass or pressure that is not above 0
     * @throws IllegalArgumentException for a spread that is none
     */
    public WeighedPiece {
        Given.all("shape, others", shape, others);
        if (!(dampMass > 0 && Double.isFinite(dampMass))) {
            throw new Refusal("out-of-range", "weighed", dampMass + " kg", "more than 0 kg", "Weigh it damp.");
        }
        if (!(pressure > 0)) {
            throw new Refusal(
                    "out-of-range", "weighed", pressure + " Pa", "more than 0 Pa", "Say how hard it was pressed.");
        }
        if (!(deviation > 0 && pressSpread >= 1 && repeat >= 1)) {
            throw new IllegalArgumentException("a weighed piece needs spreads");
        }
        others = List.copyOf(others);
    }

    /**
     * {@return a piece pressed by a hand as hard as a word says, Pa; weighed on a kitchen scale, kg; in the mould asked
     * about}
     *
     * @param dampMass kg
     * @param pressure at the top of the mould, Pa
     */
    public static WeighedPiece byHand(double dampMass, double pressure) {
        return new WeighedPiece(
                dampMass, Scale.usual(dampMass).deviation(), pressure, HAND, HAND_AGAIN, Optional.empty(), List.of());
    }

    /**
     * {@return a piece pressed with a measured pressure, Pa, true to a factor}
     *
     * @param dampMass kg
     * @param pressure at the top of the mould, Pa
     * @param pressSpread one sigma factor between that pressure and the true one, 1 where it was measured
     */
    public static WeighedPiece byGauge(double dampMass, double pressure, double pressSpread) {
        return new WeighedPiece(
                dampMass,
                Scale.usual(dampMass).deviation(),
                pressure,
                pressSpread,
                GAUGE_AGAIN,
                Optional.empty(),
                List.of());
    }

    /**
     * {@return this weighed piece as from another mould}
     *
     * @param mould form of the piece that the mould makes
     */
    public WeighedPiece in(Shape mould) {
        Given.all("mould", mould);
        return new WeighedPiece(dampMass, deviation, pressure, pressSpread, repeat, Optional.of(mould), others);
    }

    /**
     * {@return this weighed piece and another of the same mix, with those behind it}
     *
     * @param other the piece that was weighed next
     */
    public WeighedPiece and(WeighedPiece other) {
        List<WeighedPiece> all = new ArrayList<>(others);
        all.add(other.and(List.of()));
        all.addAll(other.others);
        return and(all);
    }

    /**
     * {@return the weighing of this piece and others of the same mix}
     *
     * @param more pieces of the same mix
     */
    public WeighedPiece and(List<WeighedPiece> more) {
        return new WeighedPiece(dampMass, deviation, pressure, pressSpread, repeat, shape, more);
    }

    /** {@return whether a hand pressed it, as hard as a word says} */
    public boolean byHand() {
        return pressSpread >= HAND;
    }

    /**
     * {@return this weighed piece with the spread of the weight that was entered, kg}
     *
     * @param kilograms one standard deviation, kg
     */
    public WeighedPiece within(double kilograms) {
        return new WeighedPiece(dampMass, kilograms, pressure, pressSpread, repeat, shape, others);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
