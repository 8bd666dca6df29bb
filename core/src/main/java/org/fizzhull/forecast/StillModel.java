package org.fizzhull.forecast;

import org.fizzhull.uncertainty.Model;

/** The spare in still water as a function of the uncertain inputs, and beside it the mass of each draw, kg. */
final class StillModel implements Model {
    private final DropModel drop;
    private final double[] masses;

    StillModel(Posed posed, double[] masses) {
        drop = new DropModel(posed.question(), posed.factors());
        this.masses = masses;
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        masses[row] = drop.mass();
    }
}
