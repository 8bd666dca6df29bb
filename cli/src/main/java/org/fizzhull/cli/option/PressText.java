package org.fizzhull.cli.option;

import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;

/**
 * How hard a mould is pressed, as it is typed: a word such as {@code firm}, a pressure such as {@code 30 kPa}, or the weight that is
 * leant on the mould, such as {@code 12 kg}. Immutable.
 */
final class PressText {
    /** Beyond it, kg, no bench press for such moulds goes. */
    private static final double MOST_LEANT = 5000;

    /** As the highest pressure that may be typed, Pa. */
    private static final double MOST_PRESSURE = 2e6;

    private static final Allowed PRESSURE = Allowed.aboveUpTo(0, 2000, Unit.KILOPASCAL);
    private static final Allowed LEANT = Allowed.aboveUpTo(0, MOST_LEANT, Unit.KILOGRAM);

    private final String option;
    private final String text;

    /** A pressure or a mass, SI. */
    private final Amount how;

    private final boolean byHand;

    private PressText(String option, String text, Amount how, boolean byHand) {
        this.option = option;
        this.text = text;
        this.how = how;
        this.byHand = byHand;
    }

    static PressText read(String option, String text) {
        Optional<PressWord> word = word(option, text);
        if (word.isPresent()) {
            Amount pressure = Amount.exact(Dimension.PRESSURE, word.get().pressure());
            return new PressText(option, text, pressure, true);
        }
        Amount any = QuantityText.parseAny(option, text, Measures.US_LEGAL, Dimension.PRESSURE, Dimension.MASS);
        Allowed range = any.dimension() == Dimension.PRESSURE ? PRESSURE : LEANT;
        return new PressText(option, text, range.parse(option, text), false);
    }

    private static Optional<PressWord> word(String option, String text) {
        if (text.isEmpty() || !Character.isLetter(text.charAt(0))) {
            return Optional.empty();
        }
        try {
            return Optional.of(PressWord.named(text));
        } catch (Refusal refusal) {
            throw refusal.of(option);
        }
    }

    /**
     * The pressure at the top of the mould, Pa; of a weight leant on its whole face p = m g/A.
     *
     * @param mould asked for its face where a weight is leant on it
     */
    double pressure(Supplier<Shape> mould) {
        if (how.dimension() == Dimension.PRESSURE) {
            return how.value();
        }
        double pressure = how.value() * PhysicalConstants.GRAVITY / mould.get().planArea();
        if (!(pressure <= MOST_PRESSURE)) {
            throw new Refusal(
                    "out-of-range",
                    option,
                    text + " on this mould, " + Math.round(pressure / 1e3) + " kPa",
                    "at most 2000 kPa",
                    "A person leaning on a mould of this size brings a few kilograms to about 40 kg to bear.");
        }
        return pressure;
    }

    /** One sigma factor of the lognormal pressure: that of a hand for a word, else of the entered spread. */
    double factor() {
        if (byHand) {
            return WeighedPiece.HAND;
        }
        double share = how.standardDeviation() / how.value();
        return Math.exp(Math.sqrt(Math.log1p(share * share)));
    }

    /** Whether a word says it: then it repeats as a hand does, not as a press that shows its pressure. */
    boolean byHand() {
        return byHand;
    }
}
