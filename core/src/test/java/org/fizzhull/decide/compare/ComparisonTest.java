package org.fizzhull.decide.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.Mould;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions.Filling;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** Comparisons whose outcome is known from the laws or by hand, and the rule of choice. */
class ComparisonTest {
    private static final Comparer FEW = Comparer.standard().with(new Sampling(1, 256));
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String PUCK = "puck(diameter=70 mm, height=30 mm, edge=5 mm)";
    private static final String BOWL = "bowl(diameter=90 mm, wall=15 mm)";
    private static final Recipe PLAIN = recipe("200 g");

    private static Recipe recipe(String bicarbonate) {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("plain")
                .dry("sodium bicarbonate", bicarbonate)
                .dry("citric acid", "100 g")
                .wet("water", "2 g")
                .price("sodium bicarbonate", "3 / kg")
                .price("citric acid", "6 / kg")
                .build();
    }

    private static Comparison.Candidate pressed(String shapeText, Recipe recipe) {
        Shape shape = ShapeText.read(shapeText);
        DryingPlan plan =
                DryingConditions.open(RoomAir.of(celsius(21), 0.5), 2 * 86400.0).plan(shape);
        return Comparison.Candidate.of(
                Question.of(shape, new Moulded.Pressed(Blend.of(recipe), 30e3, 1.6, Filling.usual(shape), plan)));
    }

    private static Comparison.Candidate dense(String shapeText, double density) {
        Shape shape = ShapeText.read(shapeText);
        Making making =
                new Making.Weighed(density * shape.volume() + shape.insetMass(), Optional.empty(), Optional.empty());
        return Comparison.Candidate.of(Question.of(shape, making));
    }

    private static Comparison compared(Comparison.SortBy sort, Comparison.Candidate... candidates) {
        return FEW.compare(List.of(candidates), List.of(), sort, Workers.Progress.SILENT);
    }

    /** Archimedes: of one shape the lighter floats better, in every state of the world. */
    @Test
    void theLighterOfOneShapeIsBest() {
        Comparison table = compared(Comparison.SortBy.FLOAT, dense(BALL, 1050), dense(BALL, 900));
        assertThat(table.verdict()).isEqualTo(Comparison.Verdict.BEST);
        ComparedPiece best = table.best().orElseThrow();
        assertThat(best.candidate().question().making())
                .isEqualTo(dense(BALL, 900).question().making());
        assertThat(best.standing().betterThanNext()).hasValue(1);
        assertThat(best.standing().regret()).isCloseTo(0, within(1e-12));
        ComparedPiece other = table.rows().get(1);
        assertThat(other.standing().betterThanNext()).isEmpty();
        // against the best in each state it loses what the chances differ by
        assertThat(other.standing().regret()).isCloseTo(best.floats() - other.floats(), within(1e-9));
    }

    /** Common practice, no source: bowls float best; by the law a dry hollow displaces more. */
    @Test
    void aBowlFloatsBetterThanABallOfTheSameMix() {
        Comparison table = compared(Comparison.SortBy.FLOAT, pressed(BALL, PLAIN), pressed(BOWL, PLAIN));
        assertThat(table.best().orElseThrow().shape().kind()).isEqualTo("bowl");
        assertThat(table.rows().get(0).made().special())
                .contains(MadePiece.Special.BOAT)
                .doesNotContain(MadePiece.Special.TWO_HALVES);
        assertThat(table.rows().get(1).made().special()).contains(MadePiece.Special.TWO_HALVES);
    }

    /** Archimedes, by the call that embedders meet first: of two balls in water that one floats which is lighter than water. */
    @Test
    void oneCallComparesByTheStandardPriors() {
        Comparison table =
                Comparison.of(List.of(dense(BALL, 1300), dense(BALL, 800)), List.of(), Comparison.SortBy.FLOAT);
        assertThat(table.sampling()).isEqualTo(Sampling.standard());
        assertThat(table.best().orElseThrow().floats()).isGreaterThan(0.9);
        assertThat(table.rows().get(1).floats()).isLessThan(0.01);
    }

    @Test
    void twoOfTheSameAreTooCloseToCall() {
        Comparison table = compared(Comparison.SortBy.FLOAT, dense(BALL, 980), dense(BALL, 980));
        assertThat(table.verdict()).isEqualTo(Comparison.Verdict.TOO_CLOSE);
        assertThat(table.best()).isEmpty();
        assertThat(table.level()).hasSize(2);
        assertThat(table.rows().get(0).standing().betterThanNext()).hasValue(0.5);
        assertThat(table.rows().get(0).standing().chanceOfBest()).isCloseTo(0.5, within(1e-9));
    }

    /** By hand: 200 g at 3 and 100 g at 6 a kilogram are 1.20 for 302 g; 2 % stick to the bowl. */
    @Test
    void batchAndCostAreThoseOfTheRecipe() {
        ComparedPiece row =
                compared(Comparison.SortBy.COST, pressed(BALL, PLAIN)).rows().get(0);
        double damp = row.made().dampMass().orElseThrow().median();
        assertThat(row.made().perBatch()).hasValue((int) (0.302 / (1.02 * damp)));
        assertThat(row.made().costEach()).hasValueCloseTo(1.2 * 1.02 * damp / 0.302, within(1e-9));
    }

    @Test
    void sortedByCostTheCheaperStandsFirst() {
        Comparison table = compared(Comparison.SortBy.COST, pressed(BALL, PLAIN), pressed(BALL, recipe("250 g")));
        double first = table.rows().get(0).made().costEach().orElseThrow();
        assertThat(first).isLessThan(table.rows().get(1).made().costEach().orElseThrow());
    }

    /** A smaller body of the same mix has less far to dry, and to fizz: more surface for its volume. */
    @Test
    void theSmallerDriesSoonerAndTheLargerFizzesLonger() {
        String small = "sphere(diameter=40 mm)";
        Comparison.Candidate[] both = {dense(small, 800), dense(BALL, 800)};
        assertThat(compared(Comparison.SortBy.FIZZ, both).rows().get(0).shape().text())
                .isEqualTo(BALL);
        Comparison dry = compared(Comparison.SortBy.DRY, pressed(BALL, PLAIN), pressed(small, PLAIN));
        assertThat(dry.rows().get(0).shape().text()).isEqualTo(small);
        assertThat(dry.rows().get(0).made().ready().orElseThrow().median())
                .isLessThan(dry.rows().get(1).made().ready().orElseThrow().median());
    }

    @Test
    void whatSinksIsNotBestBecauseItIsCheap() {
        Comparison table = compared(Comparison.SortBy.FIZZ, dense(BALL, 1300), dense(PUCK, 1300));
        assertThat(table.verdict()).isEqualTo(Comparison.Verdict.NONE_FLOATS);
        assertThat(table.best()).isEmpty();
    }

    /** Air damper than the solution in the mix takes water up: nothing dries. */
    @Test
    void inDampAirNoneDries() {
        Shape shape = ShapeText.read(BOWL);
        DryingPlan plan = DryingConditions.open(RoomAir.of(celsius(21), 0.98), 2 * 86400.0)
                .plan(shape);
        Making making = new Moulded.Pressed(Blend.of(PLAIN), 10e3, 1.6, Filling.usual(shape), plan);
        Comparison.Candidate damp = Comparison.Candidate.of(Question.of(shape, making));
        Comparison table = compared(Comparison.SortBy.DRY, damp, damp);
        assertThat(table.rows().get(0).made().ready()).isEmpty();
        assertThat(table.best()).isEmpty();
        assertThat(table.verdict()).isEqualTo(Comparison.Verdict.NONE_DRIES);
    }

    @Test
    void nineOfTenFloatAtTheWeightToAimFor() {
        ComparedPiece row =
                compared(Comparison.SortBy.FLOAT, dense(BALL, 1000)).rows().get(0);
        double aim = row.bathed().aim().orElseThrow();
        ComparedPiece aimed = compared(
                        Comparison.SortBy.FLOAT, dense(BALL, aim / row.shape().volume()))
                .rows()
                .get(0);
        // the scale's own reading blurs it a little
        assertThat(aimed.floats()).isCloseTo(0.9, within(0.02));
    }

    @Test
    void ofSeveralBathsTheWorstCounts() {
        Comparison.Candidate ball = dense(BALL, 985);
        Comparison table = FEW.compare(
                List.of(ball), Comparison.NamedBath.homes(), Comparison.SortBy.FLOAT, Workers.Progress.SILENT);
        ComparedPiece.InBath bathed = table.rows().get(0).bathed();
        assertThat(bathed.each()).hasSize(5);
        double least = bathed.each().stream()
                .mapToDouble(ComparedPiece.InBath.InNamedBath::floats)
                .min()
                .orElseThrow();
        assertThat(table.rows().get(0).floats()).isEqualTo(least);
        Comparison.NamedBath worst = bathed.worst().orElseThrow();
        Comparison alone = compared(
                Comparison.SortBy.FLOAT,
                new Comparison.Candidate(ball.mould(), ball.question().in(worst.bath())));
        assertThat(alone.rows().get(0).floats()).isEqualTo(least);
    }

    @Test
    void whatIsNotKnownIsNotSortedBy() {
        assertThatThrownBy(() -> compared(Comparison.SortBy.COST, dense(BALL, 900)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("sort"));
        assertThatThrownBy(() -> compared(Comparison.SortBy.DRY, dense(BALL, 900)))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void itCanBeStopped() {
        assertThatThrownBy(() -> FEW.compare(
                        List.of(dense(BALL, 900)), List.of(), Comparison.SortBy.FLOAT, (done, all) -> false))
                .isInstanceOf(CancellationException.class);
    }

    /** The balls by pi d^3 / 6; the count is that of the list of sizes the trade uses. */
    @Test
    void theGenericMouldsAreWhatTheirNamesSay() {
        List<Mould> moulds = Mould.catalogue();
        assertThat(moulds).hasSize(63);
        assertThat(moulds.stream().map(Mould::name).distinct()).hasSize(63);
        int balls = 0;
        for (Mould mould : moulds) {
            String[] words = mould.name().split(" ", -1);
            if (words.length == 3 && words[0].equals("ball")) {
                double d = mould.shape().extents().width();
                assertThat(mould.shape().volume()).isCloseTo(Math.PI * d * d * d / 6, within(1e-12));
                assertThat(d * 1e3).as(mould.name()).isCloseTo(Double.parseDouble(words[1]), within(0.2));
                balls++;
            }
        }
        assertThat(balls).isEqualTo(16);
    }
}
