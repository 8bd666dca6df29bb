package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;

/**
 * BY DEFINITION: at the solved size the piece comes up when it was seen to; OTHER METHOD: p(x) x |d ln x/dt| from a straight line
 * through the rise times 3 % of the size to both sides.
 */
class RiseTimeSolverTest {
    private static final Question QUESTION = Question.weighed(Sphere.ofDiameter(0.065), 0.15);
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(QUESTION, Factors.standard());
    private static final Factors FACTORS = PREPARED.factors();
    private static final int BUBBLE = FACTORS.column(Input.BUBBLE_SIZE);
    private static final Prior PRIOR = FACTORS.solved(Input.BUBBLE_SIZE);
    private static final TimedPiece ROSE = TimedPiece.rose(95);

    private final TimedVoyage voyage = new TimedVoyage(PREPARED, OptionalDouble.empty());

    private RiseTimeSolver solver(TimedPiece piece) {
        RiseTimeSolver solver = new RiseTimeSolver(voyage, piece, BUBBLE, PRIOR);
        solver.measure(0.5, 0.5);
        return solver;
    }

    private double rise(double[] inputs, double size) {
        double[] at = inputs.clone();
        at[BUBBLE] = size;
        return voyage.rise(at);
    }

    @Test
    void theSolvedSizeMeetsTheTime() {
        SplittableRandom random = new SplittableRandom(5);
        RiseTimeSolver solver = solver(ROSE);
        assertThat(solver.column()).isEqualTo(BUBBLE);
        int met = 0;
        for (int i = 0; i < 40; i++) {
            double[] inputs = SomeInputs.of(FACTORS, random);
            double before = inputs[BUBBLE];
            double weight = solver.solve(inputs, false);
            double size = inputs[BUBBLE];
            if (weight == Double.NEGATIVE_INFINITY) {
                assertThat(size).isEqualTo(before);
                continue;
            }
            met++;
            assertThat(rise(inputs, size)).isCloseTo(95, within(0.02 * 95));
            double sooner = rise(inputs, 1.03 * size);
            double later = rise(inputs, size / 1.03);
            if (sooner > 30 && later < 1000 && Math.abs(Math.log((later - 95) / (95 - sooner))) < 0.3) {
                double slope = (later - sooner) / (2 * Math.log(1.03));
                double expected = PRIOR.logDensity(size) + Math.log(size) - Math.log(slope);
                assertThat(weight).isCloseTo(expected, within(0.15));
            }
            // begun near the root it is the same root
            double[] near = inputs.clone();
            near[BUBBLE] = 1.02 * size;
            assertThat(solver.solve(near, true)).isCloseTo(weight, within(0.1));
            assertThat(near[BUBBLE]).isCloseTo(size, within(2e-3 * size));
        }
        assertThat(met).isGreaterThan(20);
    }

    /** Where a size 1 % larger already floats at once, the slope is that towards smaller sizes alone. */
    @Test
    void besideTheJumpToFloatingTheSlopeIsOneSided() {
        SplittableRandom random = new SplittableRandom(9);
        RiseTimeSolver solver = solver(TimedPiece.rose(21));
        int beside = 0;
        for (int i = 0; i < 100; i++) {
            double[] inputs = SomeInputs.of(FACTORS, random);
            double weight = solver.solve(inputs, false);
            double size = inputs[BUBBLE];
            if (weight == Double.NEGATIVE_INFINITY || rise(inputs, 1.01 * size) > 0) {
                continue;
            }
            beside++;
            double slope = (rise(inputs, size * Math.exp(-0.01)) - rise(inputs, size)) / 0.01;
            assertThat(weight).isCloseTo(PRIOR.logDensity(size) + Math.log(size) - Math.log(slope), within(0.05));
        }
        assertThat(beside).isGreaterThan(50);
    }

    /** BY DEFINITION: a width seen 5 mm off the solved one, one deviation, takes half off the logarithm of the weight. */
    @Test
    void theWidthThatWasSeenWeighs() {
        double[] inputs = FACTORS.medians();
        double plain = solver(ROSE).solve(inputs, false);
        voyage.rise(inputs);
        double width = voyage.width();
        assertThat(width).isBetween(0.01, 0.065);
        assertThat(solver(ROSE.leaving(width)).solve(FACTORS.medians(), false)).isCloseTo(plain, within(1e-4));
        assertThat(solver(ROSE.leaving(width + 0.005)).solve(FACTORS.medians(), false))
                .isCloseTo(plain - 0.5, within(1e-3));
        assertThat(solver(ROSE.leaving(width - 0.01)).solve(FACTORS.medians(), false))
                .isCloseTo(plain - 2, within(1e-3));
    }

    /** BY DEFINITION: a true time one deviation later, 4 s and 5 % of 95 s, is met by a smaller size. */
    @Test
    void theErrorOfTheTimeIsDrawn() {
        RiseTimeSolver solver = solver(ROSE);
        solver.measure(0.8413447460685429, 0.5);
        double[] inputs = FACTORS.medians();
        solver.solve(inputs, false);
        double later = 95 + Math.hypot(4, 4.75);
        assertThat(voyage.rise(inputs)).isCloseTo(later, within(1e-3 * later));
    }

    /** A piece much lighter than water floats at once whatever clings to it; a time within 20 s is no rise. */
    @Test
    void noSizeGivesSuchARise() {
        TimedVoyage light = new TimedVoyage(PREPARED, OptionalDouble.of(0.1));
        RiseTimeSolver solver = new RiseTimeSolver(light, ROSE, BUBBLE, PRIOR);
        solver.measure(0.5, 0.5);
        double[] inputs = FACTORS.medians();
        assertThat(solver.solve(inputs, false)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(FACTORS.medians());
        RiseTimeSolver early = solver(TimedPiece.rose(20.5).within(1));
        early.measure(0.3, 0.5);
        assertThat(early.solve(inputs, false)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(FACTORS.medians());
        TimedVoyage heavy = new TimedVoyage(PREPARED, OptionalDouble.of(0.22));
        RiseTimeSolver never = new RiseTimeSolver(heavy, ROSE, BUBBLE, PRIOR);
        never.measure(0.5, 0.5);
        assertThat(never.solve(inputs, false)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(FACTORS.medians());
    }
}
