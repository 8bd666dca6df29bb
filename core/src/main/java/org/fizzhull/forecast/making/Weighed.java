package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.prior.Draw;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.SerialForm;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
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
    public List<Factor> factors() {
        List<Factor> rows = new ArrayList<>(4);
        if (blend.isPresent() && dried.isPresent()) {
            rows.addAll(MakingPriors.makeup(blend.get(), dried.get()));
        } else {
            rows.addAll(blend.isPresent() ? MakingPriors.makeup(blend.get()) : MakingPriors.usualMakeup());
        }
        rows.addAll(MakingPriors.scale(mass));
        if (hand.isPresent()) {
            rows.add(MakingPriors.hand(hand.get()));
        }
        return rows;
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
    public Maker maker(Shape shape) {
        double least = shape.insetMass() + LEAST_BODY;
        Additives others = Additives.of(blend);
        return new Maker() {
            @Override
            public Piece make(Draw draw, double volumeRatio) {
                double drawn = Math.max(least, mass + draw.massError());
                return new Piece(shape, drawn, draw.makeup().with(others));
            }
        };
    }

    @Override
    public Weighed weighing(double kilograms) {
        return new Weighed(kilograms, hand, blend, dried);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
