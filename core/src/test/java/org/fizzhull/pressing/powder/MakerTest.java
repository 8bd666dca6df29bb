package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.recipe.RecipeChange;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.junit.jupiter.api.Test;

/** The table and the physics together, against an independent prototype and what makers say. */
class MakerTest {
    private final IngredientTable table = IngredientTable.standard();
    private final MouldDimensions ball = Sample.ball65();

    private RecipeBuilder powders() {
        return new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g");
    }

    private Recipe chain() {
        return powders()
                .wet("sweet almond oil", "10.2 g")
                .wet("water", "8.16 g")
                .build();
    }

    private static Press press(Recipe recipe) {
        return Press.of(Blend.of(recipe));
    }

    private Recipe change(String text, Recipe recipe) {
        return RecipeChange.read(text, Measures.US_LEGAL).applyTo(recipe, table);
    }

    /** Common practice, no source: clay in place of starch makes a piece heavier; pressing harder does too. */
    @Test
    void clayAndPressureMakeItHeavier() {
        Recipe clay = change("kaolin = 60 g", change("corn starch = 0 g", chain()));
        double starch = press(chain()).press(30e3, ball).dampMass();
        assertThat(press(clay).press(30e3, ball).dampMass()).isGreaterThan(1.02 * starch);
        assertThat(press(chain()).press(60e3, ball).dampMass()).isGreaterThan(1.02 * starch);
    }

    /** Common practice, no source: 400-500 g of powder takes 20-25 mL of liquid in all and holds. */
    @Test
    void aCommonBatchHolds() {
        Recipe little = new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "260 g")
                .dry("citric acid", "130 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "15 mL")
                .wet("water", "5 mL")
                .wet("lemon fragrance", "3 mL")
                .build();
        assertThat(press(little).press(30e3, ball).feel()).isEqualTo(Pressed.Feel.HOLDS);
    }

    /** Common practice, no source: dry powder crumbles, much more water is too wet, a mould barely filled does not hold. */
    @Test
    void crumblesOrTooWet() {
        assertThat(press(powders().build()).press(30e3, ball).feel()).isEqualTo(Pressed.Feel.CRUMBLES);
        assertThat(press(change("water +60 g", chain())).press(30e3, ball).feel())
                .isEqualTo(Pressed.Feel.TOO_WET);
        Pressed loose = press(chain()).fill(0.090, ball);
        assertThat(loose.feel()).isEqualTo(Pressed.Feel.CRUMBLES);
        assertThat(loose.notices()).extracting("code").contains("filled-loosely");
    }

    /** Common practice, no source: clay takes more liquid than starch before it holds. */
    @Test
    void clayTakesMoreLiquid() {
        Recipe clay = change("bentonite = 60 g", change("corn starch = 0 g", chain()));
        Pressed.LiquidWindow starchWindow = WindowScan.of(press(chain()), 30e3, ball);
        Pressed.LiquidWindow clayWindow = WindowScan.of(press(clay), 30e3, ball);
        assertThat(starchWindow.isEmpty()).isFalse();
        assertThat(clayWindow.low()).isGreaterThan(starchWindow.low());
        double inside = 0.5 * (starchWindow.low() + starchWindow.high());
        assertThat(press(chain()).withLiquid(inside).press(30e3, ball).feel()).isEqualTo(Pressed.Feel.HOLDS);
        assertThat(press(chain())
                        .withLiquid(0.98 * starchWindow.low())
                        .press(30e3, ball)
                        .feel())
                .isEqualTo(Pressed.Feel.CRUMBLES);
        assertThat(press(chain())
                        .withLiquid(1.02 * starchWindow.high())
                        .press(30e3, ball)
                        .feel())
                .isEqualTo(Pressed.Feel.TOO_WET);
    }

    /** A room as damp as the films never lets it dry, however little water: docs/physics/drying.md, 6. */
    @Test
    void aDampRoomMakesAnyWaterTooMuch() {
        Press press = press(chain());
        MixingRoom damp = new MixingRoom(0.01729, 0.75, 0.72, 2.475e-5, 2.5e-3);
        Pressed piece = press.in(damp, EarlyReaction.standard(press.blend())).press(30e3, ball);
        assertThat(piece.feel()).isEqualTo(Pressed.Feel.TOO_WET);
        assertThat(piece.notices()).extracting("code").containsExactly("reacts-before-dry");
    }

    /** ANALYTIC: 1 % of water takes 0.07 mol/kg at once; the film's Da of k 6e-5, one day, h = 0 is 0.093391. */
    @Test
    void earlyReaction() {
        Blend one = Blend.of(powders().wet("water", "5.1 g").build());
        EarlyReaction rates = new EarlyReaction(7, 6e-5, 1, 0.018015);
        assertThat(rates.prompt(one)).isCloseTo(0.07, within(1e-12));
        assertThat(rates.reactionNumber(86400)).isCloseTo(0.093391, within(2e-5));
        assertThat(EarlyReaction.standard(one).workingTime(Blend.of(powders().build())))
                .isInfinite();
        assertThat(rates.workingTime(Blend.of(powders().wet("water", "20 g").build())))
                .isZero();
        // by hand: from 1 - 0.07/xi to 0.98 at k (w + made)/xi
        double most = one.moles().gas();
        double expected = Math.log((1 - 0.07 / most) / 0.98) * most / (6e-5 * (0.01 + 0.018015 * 0.07));
        assertThat(rates.workingTime(one)).isCloseTo(expected, within(1e-6 * expected));
    }

    /** ANALYTIC: each powder alone comes back at its own loose and tapped density. */
    @Test
    void aPowderAloneKeepsItsDensities() {
        for (String name : new String[] {"sodium bicarbonate", "corn starch", "bentonite", "mica"}) {
            Press alone = press(
                    new RecipeBuilder(table, Measures.US_LEGAL).dry(name, "1 g").build());
            var powder = alone.blend().powders().get(0);
            double loose = powder.value(org.fizzhull.recipe.Property.LOOSE_DENSITY);
            double tapped = powder.value(org.fizzhull.recipe.Property.TAPPED_DENSITY);
            assertThat(alone.looseDensity()).as(name).isCloseTo(loose, within(1e-9 * loose));
            assertThat(alone.tappedDensity()).as(name).isCloseTo(tapped, within(1e-9 * tapped));
        }
    }

    /** The three example recipes are made to hold when pressed firmly in a 65 mm ball. */
    @Test
    void examplesHold() {
        for (Recipe recipe : java.util.List.of(
                ExampleRecipes.lemon(table), ExampleRecipes.harbourClay(table), ExampleRecipes.seaFoam(table))) {
            Pressed piece = press(recipe).press(30e3, ball);
            assertThat(piece.feel()).as(recipe.name()).isEqualTo(Pressed.Feel.HOLDS);
            assertThat(press(recipe).fill(piece.dampMass(), ball).topPressure()).isCloseTo(30e3, within(1.0));
        }
    }

    /** Half the variance shared: a shared score of 1 moves every loose density by sigma/sqrt 2, tapped in proportion. */
    @Test
    void densityScores() {
        Blend alone = Blend.of(new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "1 g")
                .build());
        Powders nominal = Powders.of(alone);
        Powders up = nominal.with(alone, DensityScores.shared(0, 1, 0));
        assertThat(up.beta[0] / nominal.beta[0]).isCloseTo(1 + 0.12 / Math.sqrt(2), within(1e-3));
        Powders both = nominal.with(
                alone, DensityScores.shared(0, 1, 0).withOwn(new double[] {0}, new double[] {-1}, new double[] {0}));
        assertThat(both.beta[0]).isCloseTo(nominal.beta[0], within(1e-15));
        assertThat(nominal.with(alone, DensityScores.shared(1, 0, 0)).trueDensity() / nominal.trueDensity())
                .isCloseTo(1 + 0.005 / Math.sqrt(2), within(1e-9));
    }
}
