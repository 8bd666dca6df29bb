package org.fizzhull.decide.advise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.shape.Shape;

/**
 * Another mould: of the same kind, five millimetres larger or smaller a level, or one of another kind. The same fill goes into
 * a larger mould of the same kind, and lies looser there; in any other mould it is packed as densely as before, so that its
 * weight goes with the volume. A press stays the same press. Not for a finished piece, which is out of its mould.
 *
 * <p>How a mould dries takes up to a second to find, and pairs of adjustments ask for the same mould again: it is kept. One
 * instance serves one search on one thread.
 */
final class MouldAdjustment implements Adjustment {
    /** {@code MOULD_SIZE} or {@code MOULD_KIND}. */
    private final Change.Step.Kind kind;
    /** The mould of each level. */
    private final List<Shape> moulds;
    /** The openings found so far, by mould. */
    private final Map<Shape, Standing.Openings> found = new HashMap<>();

    MouldAdjustment(Change.Step.Kind kind, List<Shape> moulds) {
        this.kind = kind;
        this.moulds = List.copyOf(moulds);
    }

    @Override
    public Change.Step.Kind kind() {
        return kind;
    }

    @Override
    public int levels() {
        return moulds.size();
    }

    @Override
    public double effort(int level) {
        // assumed: a mould has to be bought or found
        return kind == Change.Step.Kind.MOULD_SIZE ? 6.0 * level : 12.0;
    }

    @Override
    public Changed at(Design design, int level) {
        // a larger mould of the same kind takes the same fill; any other one a fill of the same density
        Shape mould = moulds.get(level - 1);
        double volumes = mould.volume() / design.shape().volume();
        double ratio = kind == Change.Step.Kind.MOULD_SIZE && volumes > 1 ? 1 : volumes;
        Design changed = in(design, mould).filled(scaled(design.filling(), ratio, mould));
        // refuses a weight that no piece of this shape has
        changed.question();
        Change.Step step =
                new Change.Step(kind, "", new Setting.Word(design.shape().text()), new Setting.Word(mould.text()));
        return new Changed(changed, step);
    }

    /** The design in another mould, whose openings are found once for a standing. */
    private Design in(Design design, Shape mould) {
        Optional<Standing.Openings> known = Optional.ofNullable(found.get(mould))
                .filter(openings ->
                        design.drying().stream().anyMatch(conditions -> conditions.standing() == openings.standing()));
        Design changed = known.isPresent() ? design.in(mould, known) : design.in(mould);
        changed.openings().ifPresent(openings -> found.put(mould, openings));
        return changed;
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
