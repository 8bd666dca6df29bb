package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.piece.Makeup;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.SerialForm;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Prior;

/**
 * A piece on the scale as it goes into the bath. Its weight is known to the scale; what its makeup (true density, fizz
 * left) is known from stands in the other components, from none to a recipe and its drying. Immutable.
 *
 * @param mass of the whole piece, kg
 * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
 * @param blend what it is made of, where a recipe is given
 * @param dried what the recipe has become, where it is known how it was dried ({@link org.fizzhull.forecast.WaterLeft})
 */
public record Weighed(double mass, Optional<Prior> hand, Optional<Blend> blend, Optional<Makeup> dried)
        implements Making, Serializable {
    /**
     * Refuses what is missing; a question refuses a mass that its shape cannot have.
     *
     * @param mass of the whole piece, kg
     * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
     * @param blend what it is made of, where a recipe is given
     * @param dried what the recipe has become, where it is known how it was dried ({@link org.fizzhull.forecast.WaterLeft})
     */
    public Weighed {
        Given.all("hand, blend, dried", hand, blend, dried);
    }

    /** Physical limit by which the rarest draws of a wide spread are cut, kg: a piece weighs something. */
    public static final double LEAST_BODY = 1e-6;

    /**
     * A piece of which nothing is known since it was pressed.
     *
     * @param mass of the whole piece, kg
     * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
     * @param blend what it is made of, where a recipe is given
     */
    public Weighed(double mass, Optional<Prior> hand, Optional<Blend> blend) {
        this(mass, hand, blend, Optional.empty());
    }

    /**
     * {@return one weighed piece of unknown recipe, kg}
     *
     * @param mass of the whole piece, kg
     */
    public static Weighed of(double mass) {
        return new Weighed(mass, Optional.empty(), Optional.empty());
    }

    @Override
    public Optional<Blend> mix() {
        return blend;
    }

    @Override
    public DryingPlan plan() {
        return DryingPlan.none();
    }

    @Override
    public boolean isDried() {
        return dried.isPresent();
    }

    @Override
    public Weighed weighing(double kilograms) {
        return new Weighed(kilograms, hand, blend, dried);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
