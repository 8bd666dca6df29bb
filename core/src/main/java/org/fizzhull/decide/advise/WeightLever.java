package org.fizzhull.decide.advise;

import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Step.Setting;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * Less damp mix in the mould, or a lighter finished piece, gram by gram, down to four fifths of what it was.
 *
 * @param mass fill or finished weight as it is, kg
 */
record WeightLever(double mass) implements Lever {
    /** Kilograms in a gram: a rung. */
    private static final double GRAM = 1e-3;

    /** Largest share of the weight to be left out: with less it would be another piece, not a change (assumed). */
    private static final double MOST_LESS = 0.2;

    @Override
    public Step.Kind kind() {
        return Step.Kind.WEIGHT;
    }

    @Override
    public int rungs() {
        return Math.max(1, (int) (MOST_LESS * mass / GRAM));
    }

    @Override
    public double effort(int rung) {
        // the unit of the scale: a gram in a hundred counts 1
        return 100 * rung * GRAM / mass;
    }

    @Override
    public Optional<Changed> at(Design design, int rung) {
        double less = mass - rung * GRAM;
        try {
            Design.Filling lighter = lighter(design.filling(), less);
            Step step = new Step(kind(), "", new Setting.Amount(mass, Unit.GRAM), new Setting.Amount(less, Unit.GRAM));
            Design changed = design.filled(lighter);
            // refuses a weight that no piece of this shape has
            changed.question();
            return Optional.of(new Changed(changed, step));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** The same kind of filling with another mass, kg. */
    private static Design.Filling lighter(Design.Filling filling, double mass) {
        if (filling instanceof Design.Filling.Finished finished) {
            return new Design.Filling.Finished(mass, finished.hand(), finished.dried());
        }
        Design.Filling.Fill fill = (Design.Filling.Fill) filling;
        return new Design.Filling.Fill(mass, fill.hand());
    }
}
