package org.fizzhull.forecast.prepared;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;
import org.jspecify.annotations.Nullable;

/**
 * How the weights of the pieces of one batch scatter around their mean, all that is common to the batch being as one
 * draw has it: by the hand that fills and the reading of the scale, or by one press against the next.
 *
 * <p>The distribution stands in entered weight x (of a fill: damp kilograms; of a press: the logarithm of the
 * pressure); {@link #gain} turns it into kilograms of the piece as it goes into the bath. With m_c the critical weight
 * of a draw, m the mean weight of the batch there and g the gain, both of the draw, the share of the batch that floats
 * is
 *
 * <pre>  share = P(x - mean &lt; (m_c - m)/g) = {@link #below}((m_c - m)/g)</pre>
 *
 * <p>Two independent spreads are folded by points: eight equally likely values of the reading of the scale, each with
 * the whole distribution of the hand. So a share is a smooth function of the weight, without a draw of single pieces.
 * One scatter serves one thread, but for what it says of the distribution. Used by
 * {@link org.fizzhull.forecast.result.CriticalWeights}.
 */
public final class Scatter implements Serializable {
    private static final long serialVersionUID = 1;

    /** Points that stand for the narrower of two spreads. */
    private static final int NODES = 8;

    /**
     * Least growth of ln weight with ln pressure: a piece pressed as dense as it gets weighs the same for any pressure.
     */
    private static final double LEAST_SLOPE = 1e-6;

    /** Probability beyond which no piece is looked for. */
    private static final double RAREST = 1e-10;

    /** Factor of the pressure between the two presses from which the slope is taken. */
    private static final double HARDER = 1.1;

    /** How the pieces are made. */
    private final Making making;
    /** Form of the pieces. */
    private final Shape shape;

    /**
     * Distribution of the hand or the scale, kg, or of one press over the usual one, a factor; empty where there is
     * none.
     */
    private final transient Optional<Prior> wide;

    /** Presses a draw again, for the slope; of pressed pieces only. */
    private final transient Optional<Packing> packing;
    /** Equally likely readings of the scale around the true weight, kg; a single 0 where they are not folded. */
    private final double[] narrow;
    /** Largest distance from the mean, kg of entered weight; 0 for a press. */
    private final double widest;

    private Scatter(Making making, Shape shape, Optional<Prior> wide, double[] narrow, double widest) {
        this.making = making;
        this.shape = shape;
        this.wide = wide;
        this.narrow = narrow;
        this.widest = widest;
        packing =
                making instanceof Moulded.Pressed pressed ? Optional.of(Packing.of(pressed, shape)) : Optional.empty();
    }

    /**
     * {@return the scatter of a question with its rows}
     *
     * @param prepared the prepared question
     */
    public static Scatter of(PreparedQuestion prepared) {
        Making making = prepared.question().making();
        Shape shape = prepared.question().shape();
        double[] none = {0};
        if (making instanceof Moulded.Pressed) {
            return new Scatter(making, shape, prior(prepared, Input.PRESS_REPEAT), none, 0);
        }
        Optional<Prior> hand = prior(prepared, Input.HAND);
        Optional<Prior> reading = prior(prepared, Input.SCALE);
        double reach = reach(hand) + reach(reading);
        return hand.isPresent()
                ? new Scatter(making, shape, hand, reading.map(Scatter::nodes).orElse(none), reach)
                : new Scatter(making, shape, reading, none, reach);
    }

    /** Written as what it was made of, since {@code Optional} is not serializable. */
    private Object writeReplace() {
        return new Written(making, shape, wide.orElse(null), narrow, widest);
    }

    /** What is written of a scatter. */
    private record Written(
            Making making, Shape shape, @Nullable Prior wide, double[] narrow, double widest) implements Serializable {
        private Object readResolve() {
            return new Scatter(making, shape, Optional.ofNullable(wide), narrow, widest);
        }
    }

    /** Largest distance from 0 of a prior's values, in its unit; 0 for none. */
    private static double reach(Optional<Prior> prior) {
        return prior.isPresent()
                ? Math.max(
                        Math.abs(prior.get().quantile(RAREST)),
                        Math.abs(prior.get().quantile(1 - RAREST)))
                : 0;
    }

    /** Prior of an input of the question, where it has a row. */
    private static Optional<Prior> prior(PreparedQuestion prepared, Input input) {
        return prepared.factors().row(input).map(Factor::prior);
    }

    /** Equally likely values that stand for a prior. */
    private static double[] nodes(Prior prior) {
        double[] nodes = new double[NODES];
        for (int k = 0; k < NODES; k++) {
            nodes[k] = prior.quantile((k + 0.5) / NODES);
        }
        return nodes;
    }

    /**
     * {@return whether another batch scatters alike: the same entered mean and the same spreads}
     *
     * @param other scatter of another question
     */
    public boolean alike(Scatter other) {
        return entered() == other.entered()
                && wide.equals(other.wide)
                && Arrays.equals(narrow, other.narrow)
                && widest == other.widest;
    }

    /**
     * {@return the share of the pieces that lie less than so much above the mean, in entered weight}
     *
     * @param above distance above the mean, in entered weight
     */
    public double below(double above) {
        double sum = 0;
        for (double node : narrow) {
            sum += cumulative(above - node);
        }
        return sum / narrow.length;
    }

    /** Share of the wider distribution below a distance from the mean; of a press the distance is a logarithm. */
    private double cumulative(double value) {
        if (wide.isEmpty()) {
            return value > 0 ? 1 : 0;
        }
        return wide.get().cumulative(packing.isPresent() ? Math.exp(value) : value);
    }

    /** {@return the mean that was entered, kg; of a press the weight has none and 0 stands for it} */
    public double entered() {
        if (making instanceof Making.Weighed weighed) {
            return weighed.mass();
        }
        return making instanceof Moulded.Filled filled ? filled.dampMass() : 0;
    }

    /**
     * {@return whether it is one piece on the scale, whose reading is off by what each draw says, and not a batch}
     */
    public boolean single() {
        return making instanceof Making.Weighed weighed && weighed.hand().isEmpty();
    }

    /** {@return whether a person chooses the entered weight, as of a fill or a weighed piece} */
    public boolean chosen() {
        return !(making instanceof Moulded.Pressed);
    }

    /**
     * {@return how far another entered mean, kg, lies above the question's own}
     *
     * @param entered entered mean, kg
     */
    public double more(double entered) {
        return chosen() ? entered - entered() : 0;
    }

    /** {@return how far pieces lie from the mean at most: none lies farther from the mean, kg of entered weight} */
    public double widest() {
        return widest;
    }

    /**
     * {@return the mean weight of the pieces of a draw's batch as they go into the bath, kg}
     *
     * @param draw one draw of everything uncertain
     * @param mass mass of the piece of the draw, kg
     * @param inset part of it that does not fizz, kg
     */
    public double mean(Draw draw, double mass, double inset) {
        if (making instanceof Moulded.Filled filled) {
            double fill = filled.dampMass();
            return inset + (mass - inset) * (fill + draw.batchMassError()) / (fill + draw.massError());
        }
        if (making instanceof Making.Weighed weighed) {
            return weighed.mass() + draw.batchMassError();
        }
        return inset + (mass - inset) * Math.exp(-slope(draw) * Math.log(draw.pressRepeat()));
    }

    /**
     * {@return how much heavier a piece of the draw goes into the bath for a heavier entered weight, kg per unit of it}
     *
     * @param draw one draw of everything uncertain
     * @param mass mass of the piece of the draw, kg
     * @param inset part of it that does not fizz, kg
     */
    public double gain(Draw draw, double mass, double inset) {
        if (making instanceof Moulded.Filled filled) {
            return (mass - inset) / (filled.dampMass() + draw.massError());
        }
        return making instanceof Making.Weighed ? 1 : slope(draw) * (mass - inset);
    }

    /**
     * Growth of the logarithm of the weight with that of the pressure in a draw, d ln m/d ln P, over presses 10 % to
     * both sides.
     */
    private double slope(Draw draw) {
        Packing pressed = packing.orElseThrow();
        double again = draw.pressRepeat();
        double loose = pressed.of(draw.pressedAgain(again / HARDER), 1).solidFraction();
        double dense = pressed.of(draw.pressedAgain(again * HARDER), 1).solidFraction();
        return Math.max(LEAST_SLOPE, Math.log(dense / loose) / (2 * Math.log(HARDER)));
    }
}
