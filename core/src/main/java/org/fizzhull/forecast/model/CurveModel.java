package org.fizzhull.forecast.model;

import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.draw.MixedDraw;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.DropBalance;

/**
 * The damp mass of one draw at each of several pressures: the band of the curve of a
 * {@link org.fizzhull.forecast.PressForecast}. The powders of a draw are the same along its curve. One instance serves
 * one thread; all write into the same columns, each its own rows.
 */
public final class CurveModel implements Model {
    /** The mould that is filled. */
    private final MouldDimensions mould;
    /** Uncertain inputs of a press. */
    private final Factors factors;
    /** Pressures at the top of the mould, Pa. */
    private final double[] pressures;
    /** Damp mass, kg: a column for each pressure, one place for each draw. */
    private final double[][] columns;
    /** Mixes the draws of the recipe. */
    private final MixedDraw mixed;
    /** Damp mass of the last values at each pressure, kg. */
    private final double[] masses;

    /**
     * Weighs each draw at several pressures.
     *
     * @param blend the mix
     * @param mould mould that is filled
     * @param factors the uncertain inputs of a press
     * @param pressures pressures at the top of the mould, Pa
     * @param columns filled: damp mass, kg, one column per pressure, one place per draw
     */
    public CurveModel(Blend blend, MouldDimensions mould, Factors factors, double[] pressures, double[][] columns) {
        this.mould = mould;
        this.factors = factors;
        this.pressures = pressures;
        this.columns = columns;
        mixed = new MixedDraw(blend);
        masses = new double[pressures.length];
    }

    @Override
    public double at(double[] inputs) {
        Draw draw = Draw.of(factors.rows(), inputs);
        MakingDraw made = draw.making();
        double volume = mould.volume() * DropBalance.volumeRatio(mould.surface(), mould.volume(), draw.sizeError());
        MixedDraw.Mix mix = mixed.of(made);
        Press press = Press.of(mix.blend(), mix.powders(), made.pressing());
        double ratio = press.meanOverTop(mould);
        for (int i = 0; i < pressures.length; i++) {
            masses[i] = press.dampDensity(press.solidFraction(pressures[i] * ratio)) * volume;
        }
        return masses[0];
    }

    @Override
    public void keep(int row) {
        for (int i = 0; i < masses.length; i++) {
            columns[i][row] = masses[i];
        }
    }
}
