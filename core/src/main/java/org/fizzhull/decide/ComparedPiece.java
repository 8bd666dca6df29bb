package org.fizzhull.decide;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Likelihood;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * A row of a comparison.
 *
 * @param candidate what it is
 * @param made what comes out of the mould
 * @param bathed what becomes of it in the bath
 * @param standing where it stands among the others
 * @param notices what the reader must know of this row and not of all
 */
public record ComparedPiece(
        Candidate candidate, MadePiece made, BathedPiece bathed, Standing standing, List<Notice> notices) {

    /** Copies the list. */
    public ComparedPiece {
        notices = List.copyOf(notices);
    }

    /** The mould. */
    public Mould mould() {
        return candidate.mould();
    }

    /** The shape with what it carries. */
    public Shape shape() {
        return candidate.question().shape();
    }

    /** What it is made of, where a recipe is known. */
    public Optional<Recipe> recipe() {
        return candidate.question().making().mix().map(Blend::recipe);
    }

    /** Chance that a piece floats to the end, in the worst bath where there are several. */
    public double floats() {
        return bathed.probability().floatsToTheEnd();
    }

    /** Words for it. */
    public Likelihood likelihood() {
        return Likelihood.of(floats());
    }

    /** Surface per volume, 1/m. */
    public double surfaceToVolume() {
        return shape().surface() / shape().volume();
    }
}
