package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.hours;
import static org.fizzhull.quantity.Units.millimetres;
import static org.fizzhull.quantity.Units.percent;

import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.chain.Mix;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What an embedder hands in through an open interface ({@link Shape}, {@link Prior}, {@link Workers}) and that is wrong is
 * refused by every predictor alike. Expected: the refusals that the predictors' documentation promises.
 */
class HostileInputTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Sampling FEW = new Sampling(1, 128);

    /** Every way in, of a shape and a dried fill of 137 g, with priors and workers. */
    static Stream<Arguments> doors() {
        return Stream.of(
                Arguments.of("float", (Door) (shape, priors, workers) -> FloatPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .forecast(Question.of(shape, fill()))),
                Arguments.of("float outcome", (Door) (shape, priors, workers) -> FloatPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .outcome(Question.weighed(shape, grams(137)))),
                Arguments.of("fizz", (Door) (shape, priors, workers) -> FizzPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .forecast(Question.of(shape, fill()))),
                Arguments.of("dry", (Door) (shape, priors, workers) -> DryPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .forecast(shape, fill())),
                Arguments.of("press", (Door) (shape, priors, workers) -> PressPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .forecast(shape, fill())),
                Arguments.of("press piece", (Door) (shape, priors, workers) -> PressPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .piece(shape, fill())),
                Arguments.of("joint", (Door) (shape, priors, workers) -> JointPredictor.standard()
                        .with(FEW)
                        .with(priors)
                        .with(workers)
                        .forecast(List.of(Question.of(shape, fill())), List.of(), Workers.Progress.SILENT)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doors")
    void aShapeWhoseHullIsNotItsVolumeIsRefused(String name, Door door) {
        assertRefused(() -> door.ask(with("volume", 1.2 * BALL.volume()), Factors.standard(), Workers.CALLER), "shape");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doors")
    void aShapeWithoutAVolumeOrASurfaceIsRefused(String name, Door door) {
        for (double none : new double[] {Double.NaN, 0, -1, Double.POSITIVE_INFINITY}) {
            assertRefused(() -> door.ask(with("surface", none), Factors.standard(), Workers.CALLER), "shape");
        }
    }

    /** No number comes out where a part of the draws has none: not the median, and not the millionth, but one in between. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("doors")
    void aPriorThatIsNoNumberInPlacesIsRefused(String name, Door door) {
        Input asked = switch (name) {
            case "press", "press piece" -> Input.BRIDGE_EFFICIENCY;
            case "dry" -> Input.FILM_RATE;
            default -> Input.RECESSION;
        };
        Factors priors = Factors.standard()
                .with(new Factor(asked, new Holed(usual(asked)), new Source("x", "x", Source.Seen.ASSUMED)));
        assertThatThrownBy(() -> door.ask(BALL, priors, Workers.CALLER))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("prior")
                .hasMessageContaining("NaN");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doors")
    void workersThatReturnBeforeTheWorkIsDoneAreFound(String name, Door door) {
        Workers none = (tasks, task) -> {};
        Workers allButOne = (tasks, task) -> {
            for (int i = 1; i < tasks; i++) {
                task.run(i);
            }
        };
        for (Workers early : List.of(none, allButOne)) {
            assertThatThrownBy(() -> door.ask(BALL, Factors.standard(), early))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("workers");
        }
    }

    @Test
    void theChainRefusesAShapeWhoseHullIsNotItsVolume() {
        Shape wrong = with("volume", 1.2 * BALL.volume());
        assertRefused(() -> Mix.of(lemon()).fill(wrong, grams(137)), "shape");
        assertRefused(() -> Mix.of(lemon()).press(wrong, 30e3), "shape");
    }

    private static void assertRefused(ThrowingCallable call, String field) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo(field));
    }

    private static Prior usual(Input input) {
        return Stream.concat(
                        Factors.standard().asked(Question.of(BALL, fill())).rows().stream(),
                        MakingPriors.feel().stream())
                .filter(row -> row.input() == input)
                .findFirst()
                .orElseThrow()
                .prior();
    }

    private static Making fill() {
        DryingPlan plan = DryingConditions.open(RoomAir.of(celsius(21), percent(55)), hours(36))
                .plan(BALL);
        return new Moulded.Filled(Blend.of(lemon()), grams(137), Optional.empty(), plan);
    }

    /** The ball, but for one number. */
    private static Shape with(String method, double value) {
        return (Shape) Proxy.newProxyInstance(
                Shape.class.getClassLoader(),
                new Class<?>[] {Shape.class},
                (p, m, args) ->
                        m.getName().equals("bare") ? p : m.getName().equals(method) ? value : m.invoke(BALL, args));
    }

    static Recipe lemon() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .build();
    }

    /** One way in. */
    @FunctionalInterface
    interface Door {
        Object ask(Shape shape, Factors priors, Workers workers);
    }

    /** A prior without a value between its 70 and 71 % points. */
    private record Holed(Prior usual) implements Prior {
        @Override
        public double quantile(double u) {
            return u > 0.70 && u < 0.71 ? Double.NaN : usual.quantile(u);
        }

        @Override
        public double logDensity(double value) {
            return usual.logDensity(value);
        }
    }
}
