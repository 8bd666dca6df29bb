package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import org.fizzhull.drying.factor.DryingShapeFactor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hull;
import org.fizzhull.medium.Bath;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A shape and a hull of an embedder, which the library cannot know by their classes, get the same answers as the kind they
 * stand for. Expected values: those of that kind, since the same body must give the same answer (analytic).
 */
class OwnShapeTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sphere(diameter=65 mm)",
                "puck(diameter=70 mm, height=30 mm)",
                "dome(diameter=80 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)"
            })
    void aShapeBehindAnotherClassIsTheSameBody(String text) {
        Shape known = ShapeText.read(text);
        Shape own = behind(known);
        double mass = 0.9 * 1000 * known.volume();
        FloatPredictor predictor = FloatPredictor.standard().with(new Sampling(1, 256));

        Forecast expected = predictor.forecast(Question.weighed(known, mass).in(Bath.at(311.15)));
        Forecast found = predictor.forecast(Question.weighed(own, mass).in(Bath.at(311.15)));

        assertThat(found.probability()).isEqualTo(expected.probability());
        assertThat(found.fizzTime()).isEqualTo(expected.fizzTime());
        assertThat(found.spareAtDrop()).isEqualTo(expected.spareAtDrop());
        assertThat(found.attitudes()).isEqualTo(expected.attitudes());
        assertThat(DryingShapeFactor.of(own, DepthProfile.Exposure.TRAY))
                .isEqualTo(DryingShapeFactor.of(known, DepthProfile.Exposure.TRAY));
    }

    private static Shape behind(Shape shape) {
        return (Shape) Proxy.newProxyInstance(
                Shape.class.getClassLoader(), new Class<?>[] {Shape.class}, (proxy, method, args) -> {
                    if (method.getName().equals("bare")) {
                        return proxy;
                    }
                    if (method.getName().equals("hull")) {
                        return shape.hull().map(OwnShapeTest::behind);
                    }
                    return call(shape, method, args);
                });
    }

    private static Hull behind(Hull hull) {
        return (Hull) Proxy.newProxyInstance(
                Hull.class.getClassLoader(),
                new Class<?>[] {Hull.class},
                (proxy, method, args) -> call(hull, method, args));
    }

    private static Object call(Object target, Method method, Object[] args) throws Throwable {
        try {
            return method.invoke(target, args);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
