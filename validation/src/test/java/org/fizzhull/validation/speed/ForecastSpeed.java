package org.fizzhull.validation.speed;

import java.util.concurrent.TimeUnit;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.sampling.SobolBlock;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Whole forecasts of 4,096 draws on one thread, Sobol indices and later fates included, and the points they start from. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ForecastSpeed {
    private static final int POINTS = 512;

    private final FloatPredictor predictor = FloatPredictor.standard();
    private final Question ball = Question.weighed(Sphere.ofDiameter(Units.millimetres(65)), Units.grams(142));
    private final Question dome = Question.weighed(Dome.ofDiameter(Units.millimetres(80)), Units.grams(134));
    private final double[] point = new double[32];

    /** Ball of 65 mm and 142 g, which may float or not. */
    @Benchmark
    public Forecast ball() {
        return predictor.forecast(ball);
    }

    /** Dome of 80 mm and 134 g, whose attitudes are searched. */
    @Benchmark
    public Forecast dome() {
        return predictor.forecast(dome);
    }

    /** One block of 512 scrambled points in 32 dimensions; the sum of the last one. */
    @Benchmark
    public double sobolBlock() {
        SobolBlock block = new SobolBlock(point.length, 1, 0);
        for (int i = 0; i < POINTS; i++) {
            block.next(point);
        }
        double sum = 0;
        for (double x : point) {
            sum += x;
        }
        return sum;
    }
}
