package org.fizzhull.forecast.making;

import java.util.Optional;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.SerialForm;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * A damp mass of a mix pressed into the mould, then dried. How hard it was pressed does not matter: with the mass m,
 * the volume V of the mould, the true density rho_s of the powders and the liquid ratio w of the draw, the solid
 * fraction is
 *
 * <pre>  phi = m/(V rho_s (1 + w))</pre>
 *
 * <p>so that of the powders' densities only the true ones are drawn: the weight is nearly certain, the porosity
 * follows. Immutable.
 *
 * @param blend powders and liquid by the recipe's middle amounts
 * @param dampMass pressed into the mould, kg
 * @param hand spread of that mass across a batch, around 0, kg; empty for a single piece
 * @param plan what happens between press and bath
 */
public record FilledMould(Blend blend, double dampMass, Optional<Prior> hand, DryingPlan plan) implements Moulded {
    /**
     * Refuses what is missing, and what is no number.
     *
     * @param blend powders and liquid by the recipe's middle amounts
     * @param dampMass pressed into the mould, kg
     * @param hand spread of that mass across a batch, around 0, kg; empty for a single piece
     * @param plan what happens between press and bath
     */
    public FilledMould {
        Given.all("blend, hand, plan", blend, hand, plan);
        Given.finite("damp mass", dampMass);
    }

    @Override
    public MouldDimensions.Filling filling(Shape shape) {
        return MouldDimensions.Filling.usual(shape);
    }

    @Override
    public FilledMould weighing(double kilograms) {
        return new FilledMould(blend, kilograms, hand, plan);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
