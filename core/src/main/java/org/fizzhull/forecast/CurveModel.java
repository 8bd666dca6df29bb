package org.fizzhull.forecast;

import org.fizzhull.pressing.Mould;
import org.fizzhull.pressing.Powders;
import org.fizzhull.pressing.Press;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Model;

/** The damp mass of one draw at each of several pressures. */
final class CurveModel implements Model {
    private final Blend blend;
    private final Mould mould;
    private final Factors factors;
    private final double[] pressures;
    private final double[][] columns;
    private final Powders table;
    private final double[] masses;

    CurveModel(Blend blend, Mould mould, Factors factors, double[] pressures, double[][] columns) {
        this.blend = blend;
        this.mould = mould;
        this.factors = factors;
        this.pressures = pressures;
        this.columns = columns;
        table = Powders.of(blend);
        masses = new double[pressures.length];
    }

    @Override
    public double at(double[] inputs) {
        MakingDraw made = factors.at(inputs).making();
        Press press = Press.of(blend, table.with(blend, made.densities()), made.pressing());
        double ratio = press.meanOverTop(mould);
        for (int i = 0; i < pressures.length; i++) {
            masses[i] = press.dampDensity(press.solidFraction(pressures[i] * ratio)) * mould.volume();
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
