package org.fizzhull.forecast.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** The sentences the physics owes: each is said where it applies, and nowhere else. */
class FizzNoticesTest {
    private static final Sphere BALL = Sphere.ofDiameter(millimetres(65));

    /**
     * By hand: Kell's water is 5.239 kg/m3 denser at 20 C than at 38 C (998.204 and 992.965), 0.75 g for 143.8 cm3;
     * exp(-30000/8.3145 (1/293.15 - 1/311.15)) = 0.49.
     */
    @Test
    void coldWaterRaisesTheLimitAndLowersTheGas() {
        Question warm = Question.weighed(BALL, grams(138));
        Question cold = warm.in(Bath.at(celsius(20)));
        assertThat(codes(warm)).doesNotContain("cold-water");
        assertThat(text(cold, "cold-water"))
                .contains("0.8 g higher than in 38 C water", "49 % of the speed", "more water");
        // slower gas lets in more water: some of it, and less than the pores of the ball hold
        double water = Double.parseDouble(text(cold, "cold-water").replaceAll(".*about ([0-9.]+) g more.*", "$1"));
        assertThat(water).isBetween(0.1, 15.0);
        assertThat(codes(Question.still(BALL, grams(138)).in(Bath.at(celsius(20)))))
                .doesNotContain("cold-water");
    }

    /**
     * ANALYTIC: with its flat side dry a hemisphere lasts until (1 - e/R)^3 = 0.01, e = 0.785 R; with every side wet
     * a cap of height R - 2e of a ball of radius R - e is left, (1 - 2x)^2 (2 - x)/2 = 0.01 at x = e/R = 0.4433. A puck
     * 70 x 28 mm: 24.75 and 13.63 mm.
     */
    @Test
    void thatAFlatSideKeepsUpIsSaid() {
        Dome dome = Dome.ofDiameter(millimetres(80));
        assertThat(codes(Question.weighed(dome, grams(125)))).contains("side-up");
        assertThat(text(Question.weighed(dome, grams(125)), "side-up")).contains("43 % shorter");
        assertThat(codes(Question.weighed(BALL, grams(138)))).doesNotContain("side-up");
        Puck puck = Puck.ofDiameterAndHeight(millimetres(70), millimetres(28));
        assertThat(text(Question.weighed(puck, grams(100)), "side-up")).contains("45 % shorter");
    }

    @Test
    void aSmallTestBallFloatsWhereTheBigOneSinks() {
        double density = 138 / (BALL.volume() * 1e6) * 1e3;
        Sphere small = Sphere.ofDiameter(millimetres(25));
        assertThat(codes(Question.weighed(small, density * small.volume()))).contains("small-piece");
        assertThat(codes(Question.weighed(BALL, grams(138)))).doesNotContain("small-piece");
    }

    /** A loss of half is told, one of a twentieth is not; what is not known of a weighed piece is not said. */
    @Test
    void aPieceThatReactedIsLighterAndFizzesBadly() {
        Blend blend = blend("10 g");
        double fresh = blend.moles().gas() / (1 + blend.liquid().staying());
        assertThat(text(dried(blend, fresh, 0.5), "reacted")).contains("lost part of its fizz", "fizzes less");
        assertThat(codes(dried(blend, fresh, 0.95))).doesNotContain("reacted");
        assertThat(codes(Question.of(BALL, new Making.Weighed(grams(138), Optional.empty(), Optional.of(blend)))))
                .doesNotContain("reacted", "mix-beyond");
    }

    /** A mix without acid gives no gas in water: that is told first, and nothing of how it fizzes. */
    @Test
    void aMixWithoutAcidIsToldFirst() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("corn starch", "60 g")
                .build());
        Question question = Question.of(BALL, new Making.Weighed(grams(138), Optional.empty(), Optional.of(blend)));
        assertThat(codes(question)).startsWith("no-fizz").doesNotContain("recession-at-end", "reacted");
    }

    @Test
    void moreOilThanIsKnownIsSaid() {
        assertThat(codes(Question.of(
                        BALL, new Making.Weighed(grams(138), Optional.empty(), Optional.of(blend("40 g"))))))
                .contains("mix-beyond");
    }

    private static Question dried(Blend blend, double fresh, double left) {
        Piece.Makeup makeup = new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, left * fresh).withFizzLeft(left);
        return Question.of(
                BALL, new Making.Weighed(grams(138), Optional.empty(), Optional.of(blend), Optional.of(makeup)));
    }

    private static Blend blend(String oil) {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", oil)
                .build());
    }

    private static List<Notice> notices(Question question) {
        return FloatPredictor.standard()
                .with(new Sampling(1, 0))
                .forecast(question)
                .notices();
    }

    private static List<String> codes(Question question) {
        return NoticeSearch.codes(notices(question));
    }

    private static String text(Question question, String code) {
        return NoticeSearch.text(notices(question), code);
    }
}
