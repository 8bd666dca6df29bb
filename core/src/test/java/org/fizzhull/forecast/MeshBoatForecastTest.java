package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.BoxBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A mesh that is a bowl is forecast as the bowl is. ANALYTIC: the closed forms of the bowl. */
class MeshBoatForecastTest {
    private static final Bowl BOWL = Bowl.ofDiameterAndWall(0.09, 0.015);

    /** 48 facets around hold 0.3 % less; its depth profiles are measured. */
    private static final MeshShape MESH = MeshShape.of("a.stl", "mm", ShapeMeshes.of(BOWL, 48));

    /** The same with the bowl's own depth profiles and more facets, so that the hulls alone differ. */
    private static final MeshShape FINE = MeshShape.of("a.stl", "mm", ShapeMeshes.of(BOWL, 128), BOWL::depthProfile);

    /** Light, where it may float flooded, a boat far from its limit of 189.5 g, near it, and over it. */
    @ParameterizedTest
    @CsvSource({"130, true", "150, true", "180, true", "200, true", "130, false", "150, false"})
    void floats(double mass, boolean placed) {
        same(ask(BOWL, mass, placed), ask(MESH, mass, placed), 0.005, 0.03);
        same(ask(BOWL, mass, placed), ask(FINE, mass, placed), 0.001, 0.005);
    }

    /** Where the chance falls by 0.07 a gram, 0.3 % of the limit is much: the coarse mesh is heavier for its size. */
    @Test
    void floatsNearItsLimit() {
        Forecast exact = ask(BOWL, 185, true);
        double heavier = MESH.hullVolume() / BOWL.hullVolume();
        Forecast mesh = ask(MESH, 185 * heavier, true);
        assertThat(mesh.probability().orElseThrow().floatsAtOnce())
                .isCloseTo(exact.probability().orElseThrow().floatsAtOnce(), within(0.02));
        // below the limit, where most stay dry: at half the middle of the times lies between those that fill and those
        // not
        same(ask(BOWL, 184, true), ask(FINE, 184, true), 0.001, 0.01);
    }

    private static Forecast ask(Shape shape, double mass, boolean placed) {
        Question question = Question.weighed(shape, grams(mass));
        assertThat(question.into()).isEqualTo(Question.IntoBath.PLACED);
        return FloatPredictor.standard()
                .with(new Sampling(1, 512))
                .forecast(placed ? question : question.into(Question.IntoBath.DROPPED));
    }

    private static void same(Forecast exact, Forecast mesh, double hull, double times) {
        double limit = exact.boatLimitMass().orElseThrow();
        assertThat(mesh.limitMass()).isCloseTo(exact.limitMass(), within(hull * exact.limitMass()));
        assertThat(mesh.boatLimitMass().orElseThrow()).isCloseTo(limit, within(hull * limit));
        assertThat(mesh.spareAtDrop().median()).isCloseTo(exact.spareAtDrop().median(), within(hull * limit));
        Probability p = exact.probability().orElseThrow();
        Probability q = mesh.probability().orElseThrow();
        // half a gram is a few hundredths of chance where half of the pieces float
        double chance = 20 * hull;
        assertThat(q.floatsAtOnce()).isCloseTo(p.floatsAtOnce(), within(chance));
        assertThat(q.sinksLater().orElseThrow()).isCloseTo(p.sinksLater().orElseThrow(), within(chance));
        assertThat(q.risesLater().orElseThrow()).isCloseTo(p.risesLater().orElseThrow(), within(chance));
        Interval time = exact.fizzTime().orElseThrow();
        assertThat(mesh.fizzTime().orElseThrow().median()).isCloseTo(time.median(), within(times * time.median()));
        assertThat(mesh.attitudes()).hasSameSizeAs(exact.attitudes());
        for (int i = 0; i < exact.attitudes().size(); i++) {
            FloatingAttitude a = exact.attitudes().get(i);
            FloatingAttitude b = mesh.attitudes().get(i);
            assertThat(b.cavity()).isEqualTo(a.cavity());
            assertThat(b.up().z()).isCloseTo(a.up().z(), within(1e-4));
            assertThat(b.draft()).isCloseTo(a.draft(), within(1.5 * hull * 0.045));
            assertThat(b.freeboard()).isCloseTo(a.freeboard(), within(1.5 * hull * 0.045));
            assertThat(b.gm()).isCloseTo(a.gm(), within(5e-4));
            assertThat(b.rimDips().isPresent()).isEqualTo(a.rimDips().isPresent());
            if (a.rimDips().isPresent()) {
                assertThat(b.rimDips().getAsDouble()).isCloseTo(a.rimDips().getAsDouble(), within(2 * hull));
            }
        }
        assertThat(codes(mesh.notices())).containsExactlyInAnyOrderElementsOf(codes(exact.notices()));
    }

    /** Codes but those of the facets, and of single draws: a mesh draws the error of its depth profile too. */
    private static List<String> codes(List<Notice> notices) {
        return notices.stream()
                .map(Notice::code)
                .filter(code -> !code.startsWith("mesh-") && !code.equals("not-monotone"))
                .toList();
    }

    /** The full voyage: the same events, and the wall lasts as long; the mesh weighs less as its hull is smaller. */
    @ParameterizedTest
    @ValueSource(doubles = {150, 186})
    void fizzes(double mass) {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .build());
        FizzForecast exact = fizz(BOWL, mass, blend);
        FizzForecast mesh = fizz(MESH, mass * MESH.hullVolume() / BOWL.hullVolume(), blend);
        Voyage a = exact.voyage();
        Voyage b = mesh.voyage();
        assertThat(b.outcome()).isEqualTo(a.outcome());
        assertThat(b.sinksLater()).isEqualTo(a.sinksLater());
        assertThat(b.fizzTime()).isCloseTo(a.fizzTime(), within(0.03 * a.fizzTime()));
        assertThat(first(b).kind()).isEqualTo(first(a).kind());
        assertThat(first(b).time()).isCloseTo(first(a).time(), within(0.02 * a.fizzTime()));
        assertThat(mesh.fizzTime().median())
                .isCloseTo(
                        exact.fizzTime().median(),
                        within(0.03 * exact.fizzTime().median()));
    }

    private static Voyage.Event first(Voyage voyage) {
        return voyage.events().get(0);
    }

    private static FizzForecast fizz(Shape shape, double mass, Blend blend) {
        Question question = Question.of(shape, new Making.Weighed(grams(mass), Optional.empty(), Optional.of(blend)));
        return FizzPredictor.standard().with(new Sampling(1, 128)).forecast(question);
    }

    /** A tray with its pocket off its middle leans and is no boat above its limit; a tall cup tips, and says so. */
    @Test
    void leansAndTips() {
        MeshShape tray = MeshShape.of(
                "a.stl",
                "mm",
                new BoxBodies()
                        .add(-40, -30, 0, 40, 30, 40)
                        .take(-30, -20, 10, 20, 20, 40)
                        .mesh(),
                BOWL::depthProfile);
        Forecast light = ask(tray, 140, true);
        assertThat(codes(light.notices())).contains("boat").doesNotContain("boat-tips");
        FloatingAttitude rest = light.attitudes().get(0);
        assertThat(rest.cavity()).isEqualTo(FloatingAttitude.Cavity.DRY);
        assertThat(rest.up().x()).isBetween(-0.25, -0.1);
        double limit = light.boatLimitMass().orElseThrow();
        Forecast heavy = ask(tray, 1000 * limit + 3, true);
        assertThat(heavy.attitudes()).isEmpty();
        assertThat(heavy.probability().orElseThrow().floatsAtOnce())
                .isLessThan(light.probability().orElseThrow().floatsAtOnce() - 0.3);
        MeshShape cup = MeshShape.of(
                "a.stl",
                "mm",
                new BoxBodies()
                        .add(-15, -15, 0, 15, 15, 90)
                        .take(-10, -10, 10, 10, 10, 90)
                        .mesh(),
                BOWL::depthProfile);
        Forecast tall = ask(cup, 65, true);
        assertThat(codes(tall.notices())).contains("boat-tips").doesNotContain("boat");
        assertThat(tall.question().into()).isEqualTo(Question.IntoBath.DROPPED);
    }
}
