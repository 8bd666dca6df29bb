package org.fizzhull.decide.advise;

import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.inGrams;

import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.quantity.Unit;

/**
 * Less damp mix in the mould, or a lighter finished piece, on the marks of the scale: whole steps, down to four fifths of what
 * it was.
 *
 * @param mass what it was, kg
 * @param step of the scale, kg
 */
record WeightAdjustment(double mass, double step) implements Adjustment {
    /** Less than this share of the fill is another piece, not a change. */
    private static final double MOST_LESS = 0.2;

    /** A weight this near a mark, in steps, stands on it. */
    private static final double ON_MARK = 1e-6;

    /** Parts of a gram to which a proposal is rounded. */
    private static final double PARTS = 1e6;

    @Override
    public Change.Step.Kind kind() {
        return Change.Step.Kind.WEIGHT;
    }

    @Override
    public int levels() {
        return Math.max(1, (int) (MOST_LESS * mass / step));
    }

    @Override
    public double effort(int level) {
        // the unit of the scale: a gram in a hundred counts 1
        return 100 * level * step / mass;
    }

    @Override
    public Changed at(Design design, int level) {
        // what can be typed: the last bits of a product are not part of a proposal
        double marks = Math.ceil(mass / step - ON_MARK) - level;
        double less = grams(Math.rint(inGrams(marks * step) * PARTS) / PARTS);
        Design.Filling lighter = lighter(design.filling(), less);
        Change.Step told =
                new Change.Step(kind(), "", new Setting.Amount(mass, Unit.GRAM), new Setting.Amount(less, Unit.GRAM));
        Design changed = design.filled(lighter);
        // refuses a weight that no piece of this shape has
        changed.question();
        return new Changed(changed, told);
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
