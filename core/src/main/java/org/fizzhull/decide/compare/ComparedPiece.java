package org.fizzhull.decide.compare;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.Mould;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Likelihood;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * A row of a {@link Comparison}. Immutable.
 *
 * @param candidate mould, making and bath
 * @param made what comes out of the mould
 * @param bathed what becomes of it in the bath
 * @param standing its rank among the others, and how sure that is
 * @param notices what the reader must know of this row and not of all
 */
public record ComparedPiece(
        Candidate candidate, MadePiece made, BathedPiece bathed, RowRank standing, List<Notice> notices) {

    /**
     * Copies the list.
     *
     * @param candidate mould, making and bath
     * @param made what comes out of the mould
     * @param bathed what becomes of it in the bath
     * @param standing its rank among the others, and how sure that is
     * @param notices what the reader must know of this row and not of all
     */
    public ComparedPiece {
        notices = List.copyOf(notices);
    }

    /** {@return the mould} */
    public Mould mould() {
        return candidate.mould();
    }

    /** {@return the shape, with toppings and what is pressed in} */
    public Shape shape() {
        return candidate.question().shape();
    }

    /** {@return what it is made of, where a recipe is known} */
    public Optional<Recipe> recipe() {
        return candidate.question().making().mix().map(Blend::recipe);
    }

    /** {@return the chance that a piece floats to the end, in the worst bath where there are several} */
    public double floats() {
        return bathed.probability().floatsToTheEnd();
    }

    /** {@return the words of likelihood for {@link #floats}} */
    public Likelihood likelihood() {
        return Likelihood.of(floats());
    }

    /** {@return surface over volume, 1/m} */
    public double surfaceToVolume() {
        return shape().surface() / shape().volume();
    }
}
