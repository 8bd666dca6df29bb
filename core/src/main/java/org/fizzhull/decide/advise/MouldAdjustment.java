package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Step.Setting;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;

/**
 * Another mould: of the same kind, five millimetres larger or smaller a level, or one of another kind. The same fill goes into
 * a larger mould of the same kind, and lies looser there; in any other mould it is packed as densely as before, so that its
 * weight goes with the volume. A press stays the same press. Not for a finished piece, which is out of its mould.
 *
 * @param kind {@code MOULD_SIZE} or {@code MOULD_KIND}
 * @param moulds the mould of each level
 */
record MouldAdjustment(Step.Kind kind, List<Shape> moulds) implements Adjustment {
    @Override
    public int levels() {
        return moulds.size();
    }

    @Override
    public double effort(int level) {
        // assumed: a mould has to be bought or found
        return kind == Step.Kind.MOULD_SIZE ? 6.0 * level : 12.0;
    }

    @Override
    public Optional<Changed> at(Design design, int level) {
        // a larger mould of the same kind takes the same fill; any other one a fill of the same density
        Shape mould = moulds.get(level - 1);
        double volumes = mould.volume() / design.shape().volume();
        double ratio = kind == Step.Kind.MOULD_SIZE && volumes > 1 ? 1 : volumes;
        try {
            Design changed = design.in(mould).filled(scaled(design.filling(), ratio, mould));
            // refuses a weight that no piece of this shape has
            changed.question();
            Step step = new Step(kind, "", new Setting.Word(design.shape().text()), new Setting.Word(mould.text()));
            return Optional.of(new Changed(changed, step));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** The filling of another mould: weights times the ratio, a press as it is, halves or plunger as usual for the shape. */
    private static Design.Filling scaled(Design.Filling filling, double ratio, Shape mould) {
        if (filling instanceof Design.Filling.Fill fill) {
            return new Design.Filling.Fill(grams(fill.mass(), ratio), fill.hand());
        }
        if (filling instanceof Design.Filling.Press press) {
            return new Design.Filling.Press(
                    press.pressure(), press.spread(), org.fizzhull.pressing.MouldDimensions.Filling.usual(mould));
        }
        throw new IllegalArgumentException("a finished piece is out of its mould");
    }

    /** Nobody weighs a new fill to less than a gram. */
    private static double grams(double mass, double ratio) {
        return ratio == 1 ? mass : Math.rint(1e3 * mass * ratio) / 1e3;
    }
}
