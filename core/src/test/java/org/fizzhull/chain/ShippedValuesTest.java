package org.fizzhull.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedShape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Written and read again, a value is equal to what it was, and is answered alike. */
class ShippedValuesTest {
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard().with(new Sampling(1, 128));
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));

    static Object shipped(Object value) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return in.readObject();
        }
    }

    private static void same(Object value) throws Exception {
        assertThat(shipped(value)).isEqualTo(value).hasSameHashCodeAs(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sphere(diameter=65 mm, seam=2 mm)",
                "dome(diameter=80 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                "puck(diameter=70 mm, height=30 mm, edge=5 mm)",
                "egg(length=70 mm, diameter=50 mm)",
                "ring(diameter=90 mm, tube=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm, edge=4 mm)",
                "cone(diameter=60 mm, height=70 mm, top=20 mm)",
                "capsule(length=80 mm, diameter=35 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "heart(width=70 mm, height=28 mm)",
                "filled(water=143 g, like=puck)"
            })
    void questionsOfEveryKindOfShape(String text) throws Exception {
        Shape shape = ShapeText.read(text);
        Question asked = Question.weighed(shape, 990 * shape.volume() + shape.insetMass());
        same(asked);
        Question there = (Question) shipped(asked);
        assertThat(PREDICTOR.check(there).floats())
                .isEqualTo(PREDICTOR.check(asked).floats());
    }

    @Test
    void shapesOfFiles() throws Exception {
        same(MeshShape.of(
                "heart.stl",
                "mm",
                Heart.ofWidthAndHeight(millimetres(70), millimetres(28)).mesh()));
        same(RevolvedShape.of(
                "egg.csv",
                Profile2D.builder().arc(0.035, 0, 0.025, 0.035, 1, 0, 0.07).build()));
    }

    @Test
    void loadedPieces() throws Exception {
        same(Loaded.with(BALL, new Topping("salt", 0.006, 2165, 0.55)));
    }

    @Test
    void piecesThatWereMade() throws Exception {
        DryingConditions conditions = DryingConditions.open(RoomAir.of(celsius(21), 0.5), 86400);
        same(conditions);
        same(ChainTest.LEMON);
        same(Question.of(
                BALL,
                new Moulded.Filled(
                        ChainTest.LEMON, grams(137), Optional.of(Priors.normal(0, grams(3))), conditions.plan(BALL))));
        same(Question.of(
                BALL,
                new Moulded.Pressed(
                        ChainTest.LEMON, 30e3, 1.6, MouldDimensions.Filling.usual(BALL), conditions.plan(BALL))));
        same(Question.weighed(BALL, grams(138)).spread(Priors.normal(0, grams(3))));
    }

    @Test
    void parameters() throws Exception {
        for (Object each : List.of(
                FizzParameters.standard(),
                VoyageParameters.standard(),
                DryingParameters.standard(),
                PressingParameters.standard(),
                Factors.standard(),
                Sampling.standard(),
                WeighedPiece.byHand(grams(146), 30e3).in(BALL))) {
            same(each);
        }
        Observations seen = Observations.none().rose(TimedPiece.rose(95).weighing(grams(150)));
        assertThat(shipped(seen)).usingRecursiveComparison().isEqualTo(seen);
    }

    @Test
    void forecasts() throws Exception {
        Question asked = Question.weighed(BALL, grams(142)).spread(Priors.normal(0, grams(3)));
        for (Forecast forecast : List.of(
                PREDICTOR.forecast(asked),
                PREDICTOR.with(new Sampling(1, 0)).forecast(asked.in(Bath.at(celsius(36)))),
                PREDICTOR
                        .with(Observations.none().rose(TimedPiece.rose(95).weighing(grams(150))))
                        .forecast(asked))) {
            same(forecast);
        }
        same(PREDICTOR.outcome(asked));
        same(PREDICTOR.floats(BALL, grams(138)));
    }
}
