package org.fizzhull.decide.advise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.decide.Design;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the advice promises, held against the predictor itself: expected values are the goal that was asked for and the
 * definition of each field.
 */
class AdviserTest {
    private static final Sampling DRAWS = new Sampling(1, 512);
    static final Recipe CLAY = ExampleRecipes.harbourClay(IngredientTable.standard());

    static Design filled(String shape, double grams, Recipe recipe) {
        Shape mould = ShapeText.read(shape);
        return new Design(
                Optional.of(recipe),
                mould,
                new Design.Filling.Fill(grams / 1e3, Optional.of(Priors.normal(0, 2e-3))),
                Optional.empty(),
                Bath.at(311.15),
                mould.hollow().isPresent() ? Question.IntoBath.PLACED : Question.IntoBath.DROPPED,
                false,
                Measured.CALIPERS,
                Scale.usual(grams / 1e3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {145, 152, 165})
    void everyChangeThatReachesTheGoalReachesItWhenAskedAgain(double grams) {
        Advice advice = Adviser.standard()
                .with(DRAWS)
                .advise(filled("sphere(diameter=65 mm)", grams, CLAY), Adviser.Goal.nineOfTen());

        assertThat(advice.best()).isPresent();
        for (Change change : advice.changes()) {
            double again = FloatPredictor.standard()
                    .with(DRAWS)
                    .forecast(change.design().question())
                    .probability()
                    .orElseThrow()
                    .floatsToTheEnd();
            assertThat(again)
                    .as("%s", change.steps())
                    .isEqualTo(change.appraisal().chance());
            assertThat(change.reachesGoal()).isEqualTo(again >= 0.9);
        }
    }

    @Test
    void thoseThatReachTheGoalComeFirstAndTheSmallestOfThemFirst() {
        List<Change> changes = Adviser.standard()
                .with(DRAWS)
                .advise(filled("sphere(diameter=65 mm)", 155, CLAY), Adviser.Goal.nineOfTen())
                .changes();
        for (int i = 1; i < changes.size(); i++) {
            Change one = changes.get(i - 1);
            Change two = changes.get(i);
            assertThat(one.reachesGoal() || !two.reachesGoal()).isTrue();
            if (one.reachesGoal() == two.reachesGoal()) {
                assertThat(one.effort()).isLessThanOrEqualTo(two.effort());
            }
        }
    }

    @Test
    void nothingIsChangedWhereTheGoalIsReached() {
        Advice advice = Adviser.standard()
                .with(DRAWS)
                .advise(filled("sphere(diameter=65 mm)", 100, CLAY), Adviser.Goal.nineOfTen());
        assertThat(advice.need()).isEqualTo(Advice.Need.NOTHING);
        assertThat(advice.changes()).isEmpty();
    }

    @Test
    void whatIsLockedStaysAsItIs() {
        Advice advice = Adviser.standard()
                .with(DRAWS)
                .keeping(Set.of("kaolin", "table salt", "corn starch", "slsa", "cocoa butter", "witch hazel"))
                .advise(filled("sphere(diameter=65 mm)", 150, CLAY), Adviser.Goal.nineOfTen());
        for (Change change : advice.changes()) {
            assertThat(change.design().recipe().orElseThrow().dry()).isEqualTo(CLAY.dry());
            assertThat(change.design().recipe().orElseThrow().wet()).isEqualTo(CLAY.wet());
        }
    }

    @Test
    void fragranceNeverRises() {
        Recipe lemon = ExampleRecipes.lemon(IngredientTable.standard());
        double before = lemon.part("lemon fragrance").orElseThrow().mass() / lemon.mass();
        Advice advice = Adviser.standard()
                .with(DRAWS)
                .advise(filled("bowl(diameter=90 mm, wall=8 mm)", 115, lemon), Adviser.Goal.nineOfTen());
        for (Change change : advice.changes()) {
            Recipe mix = change.design().recipe().orElseThrow();
            assertThat(mix.part("lemon fragrance").orElseThrow().mass() / mix.mass())
                    .isLessThan(1.011 * before);
        }
    }

    /** How a mould dries is found once, whatever else of the design has changed, and by the definition of a standing not for another. */
    @Test
    void aMouldTriedAgainDriesAsBefore() {
        Design rack = filled("sphere(diameter=65 mm)", 140, CLAY)
                .dried(DryingConditions.open(RoomAir.of(294.15, 0.5), 172_800));
        var another = new MouldAdjustment(Change.Step.Kind.MOULD_KIND, List.of(ShapeText.read("dome(diameter=80 mm)")));

        Standing.Openings first = openings(another, rack);

        assertThat(openings(another, rack.filled(new Design.Filling.Fill(0.13, Optional.empty()))))
                .isSameAs(first);
        DryingConditions on = rack.drying().orElseThrow();
        var tray = new DryingConditions(
                on.air(), on.room(), Standing.TRAY, on.fan(), on.open(), on.wrap(), on.wrapped(), on.storage());
        assertThat(openings(another, rack.dried(tray)).standing()).isEqualTo(Standing.TRAY);
    }

    private static Standing.Openings openings(Adjustment adjustment, Design design) {
        return adjustment.at(design, 1).design().openings().orElseThrow();
    }
}
