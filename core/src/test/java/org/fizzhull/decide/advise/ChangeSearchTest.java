package org.fizzhull.decide.advise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.fizzhull.decide.Design;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeChange;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** The search with one made-up adjustment of one level: what it tells is told once. */
class ChangeSearchTest {
    private static final Sampling DRAWS = new Sampling(1, 1024);
    private final Appraiser appraiser = new Appraiser(
            piece(165).shape(), FloatPredictor.standard(), FloatPredictor.standard(), DRAWS, Workers.CALLER);

    /** An adjustment of one level, of which a function says what becomes of a design. */
    private record Constructed(Change.Step.Kind kind, UnaryOperator<Design> change) implements Adjustment {
        @Override
        public int levels() {
            return 1;
        }

        @Override
        public double effort(int level) {
            return 1;
        }

        @Override
        public Changed at(Design design, int level) {
            Change.Step.Setting setting = new Change.Step.Setting.Amount(0.1, Unit.GRAM);
            return new Changed(change.apply(design), new Change.Step(kind, "", setting, setting));
        }
    }

    private static Adjustment to(Design changed) {
        return new Constructed(Change.Step.Kind.WEIGHT, any -> changed);
    }

    /** Makes 142 g of the planned design, and of one that was changed already a piece that does not fill its mould. */
    private static Adjustment apart(Change.Step.Kind kind, Design planned) {
        return new Constructed(kind, design -> piece(design.equals(planned) ? 142 : 10));
    }

    private static Design piece(double grams) {
        return AdviserTest.filled("sphere(diameter=65 mm)", grams, AdviserTest.CLAY);
    }

    private ChangeSearch search(Design design, double goal) {
        return new ChangeSearch(appraiser, design, new Adviser.Goal(goal), appraiser.appraise(design));
    }

    /** By definition: a goal between the chance from few draws and that from all is reached by the few only. */
    @Test
    void aChangeThatOnlyFewDrawsThinkEnoughIsToldOnce() {
        for (int grams = 130; grams < 150; grams++) {
            Design lighter = piece(grams);
            double few = appraiser.chance(lighter, 256);
            double all = appraiser.appraise(lighter).chance();
            if (few > all && all > 0.3) {
                List<Change> changes = search(piece(165), (few + all) / 2).changes(List.of(to(lighter)));
                assertThat(changes).hasSize(1);
                assertThat(changes.get(0).reachesGoal()).isFalse();
                return;
            }
        }
        throw new AssertionError("no weight at which 256 draws are more hopeful than all");
    }

    /** A much lighter piece with more scent floats, breaks a limit, and is told once. */
    @Test
    void aForgoneChangeIsToldOnce() {
        IngredientTable table = IngredientTable.standard();
        Design scented = piece(110)
                .of(RecipeChange.read("lemon fragrance +5 g", Measures.METRIC).applyTo(AdviserTest.CLAY, table));
        ChangeSearch search = search(piece(165), 0.5);
        assertThat(search.changes(List.of(to(scented)))).isEmpty();
        assertThat(search.forgone()).hasSize(1);
    }

    /**
     * Two changes that each help, and that together make a fill no mould holds: the pair is left out, the rest is told (by
     * definition of a proposal).
     */
    @Test
    void aPairThatCannotBeMadeIsLeftOut() {
        Design base = piece(165);
        List<Adjustment> both =
                List.of(apart(Change.Step.Kind.WEIGHT, base), apart(Change.Step.Kind.DRYING_TIME, base));
        List<Change> changes = search(base, 0.9999).changes(both);
        assertThat(changes)
                .hasSize(2)
                .allSatisfy(change -> assertThat(change.steps()).hasSize(1));
    }
}
