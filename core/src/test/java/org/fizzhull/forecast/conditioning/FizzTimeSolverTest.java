package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;

/**
 * OTHER METHOD: the fizz time is walked over the whole range of the speed in steps of 0.02 of its logarithm; wherever it passes
 * the measured time, p(v) v |d ln v/dt| is taken from that step. No root is solved for there.
 */
class FizzTimeSolverTest {
    private static final double TIME = 180;
    private static final double STEP = 0.02;
    private static final Case BALL = new Case(Sphere.ofDiameter(0.065), 0.142);

    /** A speed, m/s, at which the time passes the measured one, and its part of the weight. */
    private record Passing(double speed, double weight) {}

    /** A weighed piece with its solver and the walk. */
    private static final class Case {
        final Factors factors;
        final int speed;
        final int bubble;
        final Prior prior;
        final TimedVoyage voyage;
        final FizzTimeSolver solver;

        Case(Shape shape, double mass) {
            PreparedQuestion prepared = PreparedQuestion.of(Question.weighed(shape, mass), Factors.standard());
            factors = prepared.factors();
            speed = factors.column(Input.RECESSION);
            bubble = factors.column(Input.BUBBLE_SIZE);
            prior = factors.solved(Input.RECESSION);
            voyage = new TimedVoyage(prepared, OptionalDouble.empty());
            solver = solver(Optional.empty());
        }

        FizzTimeSolver solver(Optional<LiftSolver> lift) {
            return new FizzTimeSolver(voyage, TimedPiece.fizzed(TIME), speed, prior, lift);
        }

        double[] drawn(SplittableRandom random) {
            return factors.priors().stream()
                    .mapToDouble(input -> input.quantile(random.nextDouble(0.02, 0.98)))
                    .toArray();
        }

        List<Passing> passings(double[] inputs) {
            List<Passing> found = new ArrayList<>();
            double[] at = inputs.clone();
            double middle = Math.log(prior.median());
            double before = Double.NaN;
            for (double log = middle - 1.5; log < middle + 1.5; log += STEP) {
                at[speed] = Math.exp(log);
                double time = voyage.fizz(at);
                // a jump of 10 s in one step is no root
                if (before > TIME != time > TIME && Math.abs(time - before) < 10) {
                    double root = Math.exp(log - STEP * (time - TIME) / (time - before));
                    double density = Math.exp(prior.logDensity(root));
                    found.add(new Passing(root, density * root * STEP / Math.abs(time - before)));
                }
                before = time;
            }
            return found;
        }
    }

    @Test
    void theWeightIsThatOfTheRoot() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 16; i++) {
            double[] inputs = BALL.drawn(random);
            Passing only = BALL.passings(inputs).get(0);
            double[] solved = inputs.clone();
            double weight = BALL.solver.solve(solved, TIME, 0.5);
            assertThat(BALL.voyage.fizz(solved)).isCloseTo(TIME, within(6e-4 * TIME));
            assertThat(solved[BALL.speed]).isCloseTo(only.speed(), within(2e-3 * only.speed()));
            // slopes over one step and over another differ where the voyage is cut into cells
            assertThat(Math.exp(weight)).isCloseTo(only.weight(), within(0.1 * only.weight()));
            solved[BALL.speed] = inputs[BALL.speed];
            assertThat(solved).as("nothing else moves").containsExactly(inputs);
        }
    }

    /**
     * A puck near its limit: fast enough it floats on the gas it makes and lasts longer on its dry top, so that a slow sunk and a
     * fast floating piece are gone after the same time. Their weights add up; the slower one is taken for small choices.
     */
    @Test
    void twoRootsAddUpAndOneIsChosen() {
        Case puck = new Case(Puck.ofDiameterAndHeight(0.07, 0.028), 0.1038);
        SplittableRandom random = new SplittableRandom(11);
        double[] inputs = puck.drawn(random);
        while (puck.passings(inputs).size() != 2) {
            inputs = puck.drawn(random);
        }
        Passing slow = puck.passings(inputs).get(0);
        Passing fast = puck.passings(inputs).get(1);
        double sum = slow.weight() + fast.weight();
        double share = slow.weight() / sum;
        double[] at = inputs.clone();
        assertThat(Math.exp(puck.solver.solve(at, TIME, 0))).isCloseTo(sum, within(0.1 * sum));
        for (double choice : new double[] {0, 0.8 * share}) {
            puck.solver.solve(at, TIME, choice);
            assertThat(at[puck.speed]).isCloseTo(slow.speed(), within(0.01 * slow.speed()));
        }
        for (double choice : new double[] {1 - 0.8 * (1 - share), 1}) {
            puck.solver.solve(at, TIME, choice);
            assertThat(at[puck.speed]).isCloseTo(fast.speed(), within(0.01 * fast.speed()));
        }
    }

    @Test
    void noSpeedGivesSuchATime() {
        double[] inputs = BALL.factors.medians();
        assertThat(BALL.solver.solve(inputs, 0, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(BALL.solver.solve(inputs, -1, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(BALL.factors.medians());
        // gone in a second, or after eleven days: no face recedes at such speeds
        assertThat(BALL.solver.solve(BALL.factors.medians(), 1, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(BALL.solver.solve(BALL.factors.medians(), 1e6, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** Tables: half of a normal law lies below its middle, 84.134 % below one deviation more; 3 s and 3 % of 180 s are 6.18 s. */
    @Test
    void theTruthLiesAroundWhatWasTimed() {
        assertThat(BALL.solver.truth(0.5)).isCloseTo(TIME, within(1e-9));
        assertThat(BALL.solver.truth(0.8413447460685429)).isCloseTo(TIME + Math.hypot(3, 5.4), within(1e-6));
    }

    /** Puts a known bubble size in at each speed, with a weight that is known. */
    private record Known(double size, double weight) implements LiftSolver {
        @Override
        public int column() {
            return BALL.bubble;
        }

        @Override
        public void measure(double error, double choice) {}

        @Override
        public double solve(double[] inputs, boolean near) {
            inputs[BALL.bubble] = size;
            return weight;
        }
    }

    /** BY DEFINITION: what a lift pins at each speed counts as if it had stood there, and its weight multiplies. */
    @Test
    void aLiftIsSolvedAtEachSpeed() {
        double[] pinned = BALL.factors.medians();
        pinned[BALL.bubble] *= 0.8;
        double size = pinned[BALL.bubble];
        assertThat(BALL.passings(pinned)).hasSize(1);
        double alone = BALL.solver.solve(pinned, TIME, 0.5);
        for (double weight : new double[] {0, -3, 2}) {
            double[] both = BALL.factors.medians();
            FizzTimeSolver with = BALL.solver(Optional.of(new Known(size, weight)));
            assertThat(with.solve(both, TIME, 0.5)).isCloseTo(alone + weight, within(0.01));
            assertThat(both[BALL.bubble]).isEqualTo(size);
            assertThat(both[BALL.speed]).isCloseTo(pinned[BALL.speed], within(1e-3 * pinned[BALL.speed]));
        }
        FizzTimeSolver none = BALL.solver(Optional.of(new Known(size, Double.NEGATIVE_INFINITY)));
        assertThat(none.solve(BALL.factors.medians(), TIME, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
    }
}
