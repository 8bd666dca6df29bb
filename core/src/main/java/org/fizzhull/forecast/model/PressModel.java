package org.fizzhull.forecast.model;

import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.draw.MixedDraw;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.pressing.powder.EarlyReaction;
import org.fizzhull.pressing.powder.LiquidScan;
import org.fizzhull.pressing.powder.MixingRoom;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.DropBalance;
import org.jspecify.annotations.Nullable;

/**
 * One pressed piece per draw: its damp mass as the output, everything else of it in columns. A {@link Moulded.Pressed}
 * takes the draw's pressure, a {@link Moulded.Filled} the draw's mass and asks for the pressure behind it. Used by
 * {@link org.fizzhull.forecast.PressPredictor}. Pressure and wall are those of the mould as it is entered, the mass is
 * that of the mould as it truly is. One instance serves one thread. Equations: docs/physics/packing.md.
 */
public final class PressModel implements Model {
    /** Column of the pressure at the top of the mould, Pa. */
    public static final int PRESSURE = 0;
    /** Column of the solid fraction, 0 to 1. */
    public static final int SOLID_FRACTION = 1;
    /** Column of the damp mass, kg. */
    public static final int MASS = 2;
    /** Column of the force of the hand on the whole face, N. */
    public static final int FORCE = 3;
    /** Column of the saturation of the pores with liquid, 0 to 1. */
    public static final int SATURATION = 4;
    /** Column of the strength of the damp piece, Pa. */
    public static final int STRENGTH = 5;
    /** Column of how the piece feels: 0 it crumbles, 1 it holds, 2 it is too wet. */
    public static final int FEEL = 6;
    /** Number of columns. */
    public static final int WIDTH = 7;

    /** A fill weighs something in the rarest draw of a wide spread, kg. */
    private static final double LEAST = 1e-6;

    /** How the piece is made: a fill or a pressed piece. */
    private final Moulded making;
    /** Uncertain inputs of a press. */
    private final Factors factors;
    /** Mixes the draws of the recipe. */
    private final MixedDraw mixed;
    /** The mould, filled as the making says. */
    private final MouldDimensions mould;
    /** Reaction before the bath by the recipe's middle amounts. */
    private final EarlyReaction reaction;
    /** Air in which the piece will dry. */
    private final MixingRoom room;
    /** Columns that are filled, one place for each draw. */
    private final double[][] columns;
    /** Collects how other amounts of liquid would feel; null for none. */
    private final @Nullable LiquidScan scan;
    /**
     * Damp mass of the last values, kg: of a fill what was weighed in, also where the mould holds no more than a part of it, as in
     * every other forecast of that fill; its pressure is then the highest.
     */
    private double mass;
    /** The mix of the last values. */
    private Press press;
    /** The piece of the last values. */
    private Pressed piece;

    /**
     * Writes into the columns, one row per draw.
     *
     * @param making how the piece is made
     * @param shape form of the piece
     * @param factors the uncertain inputs and their priors
     * @param room air that the piece will dry in
     * @param columns columns to be filled, each with one place per draw
     */
    public PressModel(Making making, Shape shape, Factors factors, MixingRoom room, double[][] columns) {
        this(making, shape, factors, room, columns, null);
    }

    /**
     * The same, and how other amounts of liquid would feel.
     *
     * @param making how the piece is made
     * @param shape form of the piece
     * @param factors the uncertain inputs and their priors
     * @param room air that the piece will dry in
     * @param columns columns to be filled, each with one place per draw
     * @param scan collects how other amounts of liquid would feel; null for none
     */
    public PressModel(
            Making making,
            Shape shape,
            Factors factors,
            MixingRoom room,
            double[][] columns,
            @Nullable LiquidScan scan) {
        this.making = Moulded.of(making);
        this.scan = scan;
        this.factors = factors;
        this.room = room;
        this.columns = columns;
        Blend blend = this.making.blend();
        mould = this.making.mould(shape);
        mixed = new MixedDraw(blend);
        reaction = EarlyReaction.standard(blend);
        press = Press.of(blend);
        piece = made(factors.medians());
    }

    /**
     * {@return the rows of a press: all that the piece asks in the bath, then what decides how it feels} So draw i weighs
     * what it weighs in every other answer about the piece.
     *
     * @param base the table whose rows take the place of the usual ones
     * @param shape form of the piece
     * @param making how the piece is made
     */
    public static Factors factors(Factors base, Shape shape, Making making) {
        return base.askedOfPress(Question.of(shape, making));
    }

    @Override
    public double at(double[] inputs) {
        piece = made(inputs);
        return mass;
    }

    @Override
    public void keep(int row) {
        columns[PRESSURE][row] = piece.topPressure();
        columns[SOLID_FRACTION][row] = piece.solidFraction();
        columns[MASS][row] = mass;
        columns[FORCE][row] = piece.handForce();
        columns[SATURATION][row] = piece.saturation();
        columns[STRENGTH][row] = piece.strength();
        columns[FEEL][row] = switch (piece.feel()) {
            case CRUMBLES -> 0;
            case HOLDS -> 1;
            case TOO_WET -> 2;
        };
        if (scan != null) {
            scan.write(row, press, piece.topPressure(), mould, piece.feel());
        }
    }

    /** The piece of a row of values, SI. */
    private Pressed made(double[] inputs) {
        Draw draw = Draw.of(factors.rows(), inputs);
        MakingDraw made = draw.making();
        double ratio = DropBalance.volumeRatio(mould.surface(), mould.volume(), draw.sizeError());
        DryingParameters usual = DryingParameters.standard();
        double rate = made.drying().filmRate() / usual.filmRate();
        double yield = made.drying().promptYield() / usual.promptYield();
        MixedDraw.Mix mix = mixed.of(made);
        EarlyReaction early = made.amounts().length == 0 ? reaction : EarlyReaction.standard(mix.blend());
        press = Press.of(mix.blend(), mix.powders(), made.pressing()).in(room, early.scaled(yield, rate));
        if (making instanceof Moulded.Pressed pressed) {
            Pressed drawn = press.pressDraw(pressed.pressure() * made.pressRatio() * made.pressRepeat(), mould);
            mass = ratio * drawn.dampMass();
            return drawn;
        }
        Moulded.Filled filled = (Moulded.Filled) making;
        mass = Math.max(LEAST, filled.dampMass() + draw.massError());
        return press.fillDraw(mass / ratio, mould);
    }
}
