package org.fizzhull.validation.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.result.FloatCheck;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/**
 * Questions are answered alike wherever they are answered: a map over the predictor on an engine for many machines, here
 * with two threads of one. Expected values: the same questions on one thread. What it cost is printed.
 */
class ManyMachinesTest {
    private static final int MILLION = 1_000_000;
    private static final int PARTS = 16;
    private static final List<String> SHAPES = List.of(
            "sphere(diameter=65 mm)",
            "dome(diameter=80 mm)",
            "puck(diameter=70 mm, height=30 mm)",
            "egg(length=70 mm, diameter=50 mm)",
            "ring(diameter=90 mm, tube=30 mm)",
            "block(length=60 mm, width=40 mm, height=30 mm)",
            "cone(diameter=60 mm, height=70 mm)",
            "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
            "heart(width=70 mm, height=28 mm)",
            "bowl(diameter=90 mm, wall=15 mm)");

    /** Piece number i: a shape of the list, and a weight from 900 to 1,100 kg/m3 that is nobody else's. */
    private static Question question(List<Shape> shapes, int i) {
        Shape shape = shapes.get(i % shapes.size());
        return Question.weighed(shape, (900 + 200.0 * i / MILLION) * shape.volume());
    }

    /** The bits of every answer, so that equal means to the last one. */
    private static long bits(FloatCheck.Floats floats) {
        long bits = Double.doubleToRawLongBits(floats.spareAtDrop());
        return bits * 4 + (floats.atOnce() ? 2 : 0) + (floats.toTheEnd() ? 1 : 0);
    }

    /** One check a shape and a part, then a voyage a piece. */
    private static List<Long> answers(List<Shape> shapes, Iterable<Integer> pieces) {
        Map<String, FloatCheck> checks = shapes.stream()
                .collect(Collectors.toMap(Shape::text, shape -> FloatPredictor.standard()
                        .check(Question.weighed(shape, 1000 * shape.volume()))));
        List<Long> answers = new ArrayList<>();
        for (int i : pieces) {
            Shape shape = shapes.get(i % shapes.size());
            double mass = (900 + 200.0 * i / MILLION) * shape.volume();
            answers.add(bits(checks.get(shape.text()).floats(mass)));
        }
        return answers;
    }

    private static SparkConf local() {
        return new SparkConf()
                .setAppName("fizzhull")
                .setMaster("local[2]")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "localhost")
                .set("spark.driver.bindAddress", "127.0.0.1");
    }

    @Test
    void aMillionCheapQuestions() {
        List<Shape> shapes = SHAPES.stream().map(ShapeText::read).toList();
        List<Integer> pieces = IntStream.range(0, MILLION).boxed().toList();
        long start = System.nanoTime();
        List<Long> alone = answers(shapes, pieces);
        double onOne = (System.nanoTime() - start) / 1e9;
        try (JavaSparkContext engine = new JavaSparkContext(local())) {
            start = System.nanoTime();
            List<Long> shared = engine.parallelize(pieces, PARTS)
                    .mapPartitions(part -> {
                        List<Integer> mine = new ArrayList<>();
                        part.forEachRemaining(mine::add);
                        return answers(shapes, mine).iterator();
                    })
                    .collect();
            double onMany = (System.nanoTime() - start) / 1e9;
            assertThat(shared.equals(alone)).as("the same bits").isTrue();
            System.out.printf("a million questions: %.1f s on one thread, %.1f s on the engine%n", onOne, onMany);
        }
    }

    /** Questions and chances travel whole: a forecast with draws says the same there. */
    @Test
    void questionsThatTravel() {
        List<Shape> shapes = SHAPES.stream().map(ShapeText::read).toList();
        List<Question> questions = IntStream.range(0, 40)
                .mapToObj(i -> question(shapes, i * 25_001 % MILLION))
                .toList();
        Sampling sampling = new Sampling(1, 512);
        List<Object> alone = new ArrayList<>();
        FloatPredictor predictor = FloatPredictor.standard().with(sampling);
        questions.forEach(asked -> alone.add(predictor.outcome(asked)));
        try (JavaSparkContext engine = new JavaSparkContext(local())) {
            List<Object> shared = new ArrayList<>(engine.parallelize(questions, 4)
                    .map(asked -> FloatPredictor.standard().with(sampling).outcome(asked))
                    .collect());
            assertThat(shared).isEqualTo(alone);
        }
    }
}
