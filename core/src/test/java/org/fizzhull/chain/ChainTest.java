package org.fizzhull.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Optional;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** Expected values: a forecast without draws of the same piece, and balances that hold by definition. */
class ChainTest {
    static final Blend LEMON = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
            .name("Lighthouse lemon")
            .dry("sodium bicarbonate", "300 g")
            .dry("citric acid anhydrous", "150 g")
            .dry("corn starch", "60 g")
            .wet("sweet almond oil", "10 g")
            .wet("water", "4 g")
            .build());
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Bath BATH = Bath.at(celsius(37));
    private static final DryingConditions RACK = DryingConditions.open(RoomAir.of(celsius(21), 0.5), 36 * 3600);
    private static final Sampling NONE = new Sampling(1, 0);

    private static DriedPiece dried() {
        return new Mix(LEMON).fill(BALL, grams(137)).dry(RACK);
    }

    @Test
    void isTheForecastWithoutDraws() {
        DriedPiece dried = dried();
        Moulded.Filled making = new Moulded.Filled(LEMON, grams(137), Optional.empty(), RACK.plan(BALL));
        Question asked = Question.of(BALL, making).in(BATH);
        assertThat(dried.question().in(BATH)).isEqualTo(asked);
        assertThat(dried.piece())
                .isEqualTo(FloatPredictor.standard().with(NONE).forecast(asked).piece());
        assertThat(dried.voyage(BATH))
                .isEqualTo(FizzPredictor.standard().with(NONE).forecast(asked).voyage());
    }

    /** By definition: what acts on the fizzing surface is in the mix, and drying takes none of it away. */
    @Test
    void oilAndStarchArriveInTheBath() {
        Additives mixed = Additives.of(LEMON);
        assertThat(mixed.oil()).isCloseTo(10.0 / 510, within(1e-12));
        assertThat(mixed.starch()).isCloseTo(60.0 / 510, within(1e-12));
        assertThat(dried().piece().makeup().additives()).isEqualTo(mixed);
        assertThat(new Mix(LEMON).fill(BALL, grams(137)).piece().makeup().additives())
                .isEqualTo(mixed);
    }

    /** By definition: what is missing after drying is water and carbon dioxide. */
    @Test
    void nothingIsLostOnTheWay() {
        DriedPiece dried = dried();
        assertThat(dried.damp().mass()).isCloseTo(grams(137), within(1e-12));
        double water = grams(137) * 4 / 524;
        assertThat(dried.mass()).isBetween(grams(137) - water - grams(2), grams(137) - grams(0.1));
        assertThat(dried.fizzLeft()).isBetween(0.9, 1.0);
        assertThat(dried.readyAfter()).isPresent();
        assertThat(dried.course().dampMass()).isCloseTo(grams(137), within(1e-9));
    }

    /** Crystals lie on the scale before and after. */
    @Test
    void crystalsStay() {
        Shape geode = Geode.ofDiameterWallAndCrystals(millimetres(80), millimetres(14), grams(20));
        DampPiece damp = new Mix(LEMON).fill(geode, grams(105));
        assertThat(damp.mass()).isCloseTo(grams(125), within(1e-12));
        assertThat(damp.piece().mass()).isBetween(grams(123), grams(125));
        assertThat(damp.dry(RACK).mass()).isBetween(grams(122), grams(125));
    }

    @Test
    void equalPastsMakeEqualPieces() {
        Mix mix = new Mix(LEMON);
        assertThat(mix).isEqualTo(Mix.of(LEMON.recipe()));
        assertThat(dried()).isEqualTo(dried()).hasSameHashCodeAs(dried());
        assertThat(dried().damp()).isEqualTo(mix.fill(BALL, grams(137))).isNotEqualTo(mix.fill(BALL, grams(138)));
        assertThat(dried()).isNotEqualTo(mix.fill(BALL, grams(137)).dry(RACK.openFor(3600)));
        assertThat(dried().voyage(BATH))
                .isEqualTo(dried().voyage(BATH))
                .isNotEqualTo(dried().voyage(Bath.at(celsius(38))));
    }

    /** Pressing as hard as a fill was found to take makes that fill. */
    @Test
    void pressAndFillAreOneThing() {
        Mix mix = new Mix(LEMON);
        DampPiece pressed = mix.press(BALL, PressWord.FIRM.pressure());
        DampPiece filled = mix.fill(BALL, pressed.mass());
        assertThat(filled.pressed().topPressure()).isCloseTo(PressWord.FIRM.pressure(), within(30.0));
        assertThat(pressed.dry(RACK).mass()).isCloseTo(filled.dry(RACK).mass(), within(grams(0.01)));
    }

    /** A boat carries more than what is flooded. */
    @Test
    void theWayIntoTheBathIsHandedOn() {
        Shape bowl = Bowl.ofDiameterAndWall(millimetres(90), millimetres(15));
        DriedPiece piece = new Mix(LEMON).fill(bowl, grams(150)).dry(RACK);
        assertThat(piece.voyage(BATH).floatsToTheEnd()).isTrue();
        assertThat(piece.voyage(BATH, Question.IntoBath.DROPPED).floatsToTheEnd())
                .isFalse();
    }

    @Test
    void refusesWhatIsNoPiece() {
        assertThatThrownBy(() -> new Mix(LEMON).fill(BALL, grams(400))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Mix(LEMON).fill(BALL, grams(10))).isInstanceOf(Refusal.class);
    }
}
