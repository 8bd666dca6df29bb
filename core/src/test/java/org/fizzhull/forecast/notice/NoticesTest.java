package org.fizzhull.forecast.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalShares;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.factory.Shapes;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: each sentence of a question is told where it applies, and nowhere else; limits BY HAND. */
class NoticesTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final FloatPredictor CENTRAL = FloatPredictor.standard().with(new Sampling(1, 0));

    private static List<String> codes(Question question) {
        return NoticeSearch.codes(CENTRAL.forecast(question).notices());
    }

    /** Still water is told, and there nothing of fizz. */
    @Test
    void stillWater() {
        assertThat(codes(Question.still(BALL, 0.13))).contains("still-water").doesNotContain("usual-mix");
        assertThat(codes(Question.weighed(BALL, 0.13))).contains("usual-mix").doesNotContain("still-water");
    }

    /** By hand: half a per cent of what the ball displaces, 143.79 cm3 of water of 38 C (Kell: 992.965 kg/m3), is 0.71 g. */
    @Test
    void tooCloseToCall() {
        double displaced = 992.965 * Math.PI / 6 * Math.pow(0.065, 3);
        for (double share : new double[] {-0.0052, -0.0048, 0.0048, 0.0052}) {
            boolean close = Math.abs(share) < 0.005;
            assertThat(codes(Question.still(BALL, (1 + share) * displaced)).contains("too-close-to-call"))
                    .isEqualTo(close);
        }
        // mix and what is inside displace the ball together
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 20e-6));
        assertThat(codes(Question.still(loaded, 1.004 * displaced))).contains("too-close-to-call");
        assertThat(codes(Question.still(loaded, 1.006 * displaced))).doesNotContain("too-close-to-call");
    }

    @Test
    void whatAPieceCarries() {
        Shape salted = Loaded.with(BALL, new Topping("salt", 0.004, 2165, 0.55));
        assertThat(codes(Question.weighed(salted, 0.13))).contains("on-top").doesNotContain("inside", "inside-heavy");
        Shape cork = Loaded.with(BALL, new Inset(0.003, 8e-6));
        assertThat(codes(Question.weighed(cork, 0.13)))
                .contains("inside")
                .doesNotContain("on-top", "inside-heavy", "inside-large");
        Shape stone = Loaded.with(BALL, new Inset(0.008, 3e-6));
        assertThat(codes(Question.weighed(stone, 0.13))).contains("inside", "inside-heavy");
        assertThat(codes(Question.still(stone, 0.13))).contains("inside").doesNotContain("inside-heavy");
        assertThat(codes(Question.weighed(BALL, 0.13))).doesNotContain("inside", "on-top", "crystals");
        // a ball of 40 cm3 is 42 mm across: it sticks out of a puck 28 mm high
        Shape puck = Shapes.puck(0.07, 0.028);
        Shape large = Loaded.with(puck, new Inset(0.03, 40e-6));
        assertThat(codes(Question.weighed(large, 0.12))).contains("inside-large");
    }

    @Test
    void crystalsBoatsAndEstimatedSurfaces() {
        Shape geode = Shapes.geode(0.09, 0.015, 0.03);
        assertThat(codes(Question.weighed(geode, 0.15))).contains("crystals");
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        assertThat(codes(Question.weighed(bowl, 0.12).into(Question.IntoBath.PLACED)))
                .contains("boat");
        assertThat(codes(Question.weighed(bowl, 0.12).into(Question.IntoBath.DROPPED)))
                .doesNotContain("boat");
        assertThat(codes(Question.weighed(BALL, 0.13).into(Question.IntoBath.PLACED)))
                .doesNotContain("boat");
        assertThat(codes(Question.weighed(Shapes.filled(0.143, "sphere"), 0.13)))
                .contains("surface-estimated");
        assertThat(codes(Question.weighed(BALL, 0.13))).doesNotContain("surface-estimated");
    }

    /** Pieces that are put away, or in a rigid vessel, come with the caution about jars. */
    @Test
    void jars() {
        RoomAir room = RoomAir.of(Units.celsius(21), 0.5);
        DryingConditions open = DryingConditions.open(room, 2 * 86400.0);
        Wrap jar = Wrap.named("jar").orElseThrow();
        DryingConditions rigid =
                new DryingConditions(room, Optional.empty(), Standing.RACK, false, 86400, jar, 86400, Optional.empty());
        DryingConditions stored = new DryingConditions(
                room,
                Optional.empty(),
                Standing.RACK,
                false,
                86400,
                Wrap.NONE,
                0,
                Optional.of(new DryingConditions.Storage(86400, room)));
        assertThat(codes(filled(open))).doesNotContain("sealed-jars-burst", "jar-pressure");
        assertThat(codes(filled(rigid))).contains("sealed-jars-burst", "jar-pressure");
        assertThat(codes(filled(stored))).contains("sealed-jars-burst", "jar-pressure");
        // by hand: n R T / V at 294.15 K in a litre less the ball, n of the dry mix, in bar to a tenth
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        double dry = CENTRAL.forecast(filled(rigid)).piece().mass()
                / (1 + blend.liquid().staying());
        double bar = blend.moles().gas() * dry * 8.314462618 * 294.15 / (1e-3 - BALL.volume()) / 1e5;
        String told = CENTRAL.forecast(filled(rigid)).notices().stream()
                .filter(notice -> notice.code().equals("jar-pressure"))
                .findFirst()
                .orElseThrow()
                .text();
        double said = Double.parseDouble(told.replaceAll(".*all of it ([0-9.]+) bar.*", "$1"));
        assertThat(Math.abs(said - bar)).isLessThan(0.06);
    }

    private static Question filled(DryingConditions conditions) {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        return Question.of(BALL, new Moulded.Filled(blend, 0.146, Optional.empty(), conditions.plan(BALL)));
    }

    /** Of 1,000 draws so many met something; one in two hundred at an end of the range is not worth a word, one more is. */
    @Test
    void whatTheSearchMet() {
        assertThat(met(0, 5, 5)).isEmpty();
        assertThat(met(1, 0, 0)).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("not-monotone");
            assertThat(notice.text()).contains("In 1 of 1000 draws");
        });
        assertThat(met(0, 6, 0)).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("above-range");
            assertThat(notice.text()).contains("In 6 of 1000 draws even the heaviest pressed piece floats");
        });
        assertThat(met(0, 0, 6)).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("below-range");
            assertThat(notice.text()).contains("In 6 of 1000 draws even the lightest pressed piece sinks");
        });
        assertThat(met(7, 8, 9)).extracting(Notice::code).containsExactly("not-monotone", "above-range", "below-range");
    }

    private static List<Notice> met(int bent, int above, int below) {
        return Notices.critical(new CriticalShares(
                below / 1000.0, bent / 1000.0, above / 1000.0, OptionalDouble.empty(), OptionalDouble.empty()));
    }

    /** A mix of one's own, weighed: not the usual one. */
    @Test
    void aKnownMixIsNotTheUsualOne() {
        RoomAir room = RoomAir.of(Units.celsius(21), 0.5);
        assertThat(codes(filled(DryingConditions.open(room, 86400)))).doesNotContain("usual-mix");
        assertThat(Notices.NO_AIM.code()).isEqualTo(Notices.BENT.code());
    }
}
