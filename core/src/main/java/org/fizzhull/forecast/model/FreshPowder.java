package org.fizzhull.forecast.model;

import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;

/**
 * The dry powder that went into the piece of a question, by the central values.
 *
 * <p>From it follow the reagents of the bath ({@link org.fizzhull.forecast.FizzForecast}).
 *
 * @param blend its mix
 * @param mass of powder, kg
 */
public record FreshPowder(Blend blend, double mass) {
    /**
     * {@return the fresh powder of a making with a recipe; a weighed piece is taken to have lost all that can leave it}
     *
     * @param question what is asked
     * @param asked the uncertain inputs of the question
     * @param piece the central piece
     */
    public static FreshPowder of(Question question, Factors asked, Piece piece) {
        Making making = question.making();
        if (making instanceof Making.Weighed weighed) {
            Blend blend = weighed.blend().orElseThrow();
            return new FreshPowder(blend, piece.bodyMass() / MakingPriors.driedPerPowder(blend));
        }
        Moulded made = Moulded.of(making);
        Packing.Packed packed = Packing.of(made, question.shape()).of(Draw.of(asked.rows(), asked.medians()), 1);
        return new FreshPowder(
                made.blend(),
                packed.solidFraction() * packed.trueDensity() * question.shape().volume());
    }
}
