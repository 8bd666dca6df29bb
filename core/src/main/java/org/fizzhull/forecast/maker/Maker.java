package org.fizzhull.forecast.maker;

import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Additives;
import org.fizzhull.shape.Shape;

/**
 * Makes the piece of one draw, as a {@link Making} says. May keep scratch space: one maker serves one thread.
 */
public interface Maker {
    /**
     * {@return the piece as it goes into the bath, in the shape as entered}
     *
     * @param draw of everything uncertain
     * @param volumeRatio true volume of the mould over the entered one; the mass is that of the true piece
     */
    Piece make(Draw draw, double volumeRatio);

    /**
     * {@return what makes the piece of each draw} A weighed piece has the mass of the scale and the makeup of the draw; a
     * filled or pressed one is packed ({@link Packing}) and dried ({@link PlannedDrying}).
     *
     * @param making how the piece came to be
     * @param shape form of the piece, as entered
     */
    static Maker of(Making making, Shape shape) {
        Given.all("making, shape", making, shape);
        return making instanceof Making.Weighed weighed
                ? of(weighed, shape)
                : new PlannedDrying(shape, making.plan()).maker(Packing.of(making, shape));
    }

    private static Maker of(Making.Weighed weighed, Shape shape) {
        double least = shape.insetMass() + Making.Weighed.LEAST_BODY;
        Additives others = Additives.of(weighed.blend());
        return (draw, volumeRatio) -> {
            double drawn = Math.max(least, weighed.mass() + draw.massError());
            return new Piece(shape, drawn, draw.makeup().with(others));
        };
    }
}
