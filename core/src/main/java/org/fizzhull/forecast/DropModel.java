package org.fizzhull.forecast;

import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Model;
import org.fizzhull.voyage.DropBalance;

/** The spare at the drop, kg, as a function of the uncertain inputs of one question. */
final class DropModel implements Model {
    private final Question question;
    private final Factors factors;
    private final DropBalance balance;
    private final double insetMass;
    private final double temperature;
    private final boolean boat;

    DropModel(Question question, Factors factors) {
        Shape shape = question.shape();
        this.question = question;
        this.factors = factors;
        balance = new DropBalance(shape, question.bath());
        insetMass = shape.insetMass();
        temperature = question.bath().temperature();
        boat = shape.hollow().isPresent() && question.into() == IntoBath.PLACED;
    }

    @Override
    public double at(double[] inputs) {
        Draw draw = factors.at(inputs);
        double mass = question.mass() + draw.massError();
        double kelvin = temperature + draw.temperatureError();
        double ratio = balance.volumeRatio(draw.sizeError());
        double flooded = question.stillWater()
                ? balance.still(mass, kelvin, ratio)
                : balance.fizzing(
                        mass, insetMass, kelvin, ratio, draw.surfaceRatio(), draw.makeup(), draw.fizz(), draw.voyage());
        return boat ? Math.max(flooded, balance.boat(mass, kelvin, ratio)) : flooded;
    }
}
