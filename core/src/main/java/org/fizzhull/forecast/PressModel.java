package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.DryingParameters;
import org.fizzhull.pressing.EarlyReaction;
import org.fizzhull.pressing.MixingRoom;
import org.fizzhull.pressing.Mould;
import org.fizzhull.pressing.Press;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Model;

/** One pressed piece a draw: its damp mass as the output, everything else of it in columns. */
final class PressModel implements Model {
    static final int PRESSURE = 0;
    static final int SOLID_FRACTION = 1;
    static final int MASS = 2;
    static final int FORCE = 3;
    static final int SATURATION = 4;
    static final int STRENGTH = 5;
    static final int FEEL = 6;
    static final int WIDTH = 7;

    /** A fill weighs something in the rarest draw of a wide spread, kg. */
    private static final double LEAST = 1e-6;

    private final Making making;
    private final Factors factors;
    private final MixedDraw mixed;
    private final Mould mould;
    private final EarlyReaction reaction;
    private final MixingRoom room;
    private final double[][] columns;
    private Pressed piece;

    /** Writes into the columns, one row a draw. */
    PressModel(Making making, Shape shape, Factors factors, MixingRoom room, double[][] columns) {
        this.making = making;
        this.factors = factors;
        this.room = room;
        this.columns = columns;
        Blend blend = blend(making);
        mould = mould(making, shape);
        mixed = new MixedDraw(blend);
        reaction = EarlyReaction.standard(blend);
        piece = made(factors.medians());
    }

    static Blend blend(Making making) {
        if (making instanceof PressedMould pressed) {
            return pressed.blend();
        } else if (making instanceof FilledMould filled) {
            return filled.blend();
        }
        throw new IllegalArgumentException("a piece on the scale tells nothing of a press");
    }

    static Mould mould(Making making, Shape shape) {
        return Mould.of(shape, filling(making, shape));
    }

    /** How it is pressed, where that was said; else the usual way of the shape. */
    static Mould.Filling filling(Making making, Shape shape) {
        return making instanceof PressedMould pressed ? pressed.filling() : Mould.Filling.usual(shape);
    }

    /** The rows of a press: powders, press and feel, and of a fill the scale and the hand. */
    static Factors factors(Factors base, Making making) {
        List<Factor> rows = new ArrayList<>();
        rows.addAll(MakingPriors.powders(blend(making)));
        rows.addAll(MakingPriors.amounts(blend(making)));
        rows.addAll(MakingPriors.pressing(making instanceof PressedMould p ? p.pressSpread() : 1));
        rows.addAll(MakingPriors.feel());
        if (making instanceof FilledMould filled) {
            rows.addAll(MakingPriors.scale(filled.dampMass()));
            filled.hand().ifPresent(hand -> rows.add(MakingPriors.hand(hand)));
        }
        return base.over(rows);
    }

    @Override
    public double at(double[] inputs) {
        piece = made(inputs);
        return piece.dampMass();
    }

    @Override
    public void keep(int row) {
        columns[PRESSURE][row] = piece.topPressure();
        columns[SOLID_FRACTION][row] = piece.solidFraction();
        columns[MASS][row] = piece.dampMass();
        columns[FORCE][row] = piece.handForce();
        columns[SATURATION][row] = piece.saturation();
        columns[STRENGTH][row] = piece.strength();
        columns[FEEL][row] = switch (piece.feel()) {
            case CRUMBLES -> 0;
            case HOLDS -> 1;
            case TOO_WET -> 2;
        };
    }

    private Pressed made(double[] inputs) {
        Draw draw = factors.at(inputs);
        MakingDraw made = draw.making();
        double rate = made.drying().filmRate() / DryingParameters.standard().filmRate();
        MixedDraw.Mix mix = mixed.of(made);
        EarlyReaction early = made.amounts().length == 0 ? reaction : EarlyReaction.standard(mix.blend());
        Press press = Press.of(mix.blend(), mix.powders(), made.pressing()).in(room, early.scaled(1, rate));
        if (making instanceof PressedMould pressed) {
            return press.pressDraw(pressed.pressure() * made.pressRatio() * made.pressRepeat(), mould);
        }
        FilledMould filled = (FilledMould) making;
        return press.fillDraw(Math.max(LEAST, filled.dampMass() + draw.massError()), mould);
    }
}
