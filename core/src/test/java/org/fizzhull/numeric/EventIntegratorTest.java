package org.fizzhull.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** ANALYTIC: motions with a closed form. */
class EventIntegratorTest {
    private static final double G = 9.80665;
    private static final double TERMINAL = 0.5;

    /** A fall against a drag that grows with the square of the speed: u = U tanh(g t/U), x = (U^2/g) ln cosh(g t/U). */
    private static final EventIntegrator.Equation FALL = (t, y, rate) -> {
        rate[0] = y[1];
        rate[1] = G * (1 - y[1] * Math.abs(y[1]) / (TERMINAL * TERMINAL));
    };

    @Test
    void quadraticDragIsFollowedAtEveryChosenTime() {
        double[] y = {0, 0};
        Taken taken = new Taken(0.01);
        integrator(1e-9).run(FALL, 0, y, 0.5, List.of(), taken);
        assertThat(taken.times).hasSize(51);
        for (int i = 0; i < taken.times.size(); i++) {
            double s = G * taken.times.get(i) / TERMINAL;
            assertThat(taken.states.get(i)[1]).isCloseTo(TERMINAL * Math.tanh(s), within(1e-8));
            assertThat(taken.states.get(i)[0])
                    .isCloseTo(TERMINAL * TERMINAL / G * Math.log(Math.cosh(s)), within(1e-8));
        }
    }

    @Test
    void theFirstEventThatRisesStopsIt() {
        double[] y = {0, 0};
        double depth = 0.1;
        List<EventIntegrator.Event> events =
                List.of((t, s) -> s[0] - 1, (t, s) -> s[0] - depth, (t, s) -> depth / 2 - s[0]);
        EventIntegrator.Stop stop = integrator(1e-9).run(FALL, 0, y, 9, events, new Taken(1));
        double cosh = Math.exp(G * depth / (TERMINAL * TERMINAL));
        double exact = TERMINAL / G * Math.log(cosh + Math.sqrt(cosh * cosh - 1));
        assertThat(stop.event()).isEqualTo(1);
        assertThat(stop.time()).isCloseTo(exact, within(1e-8));
        assertThat(y[0]).isCloseTo(depth, within(1e-9));
    }

    /** ANALYTIC: x = g t^2/2 is 0 at the start and above it ever after: it rises at once, not never. */
    @Test
    void whatIsAtZeroAndRisesStopsItAtOnce() {
        for (double start : new double[] {0, 45383.789717397674}) {
            EventIntegrator.Stop stop = integrator(1e-9)
                    .run(FALL, start, new double[2], start + 9, List.of((t, s) -> s[0]), new Taken(1e9));
            assertThat(stop.event()).isZero();
            // x is above the rounding of the clock after a few of its steps
            assertThat(stop.time()).isCloseTo(start, within(1e-7));
        }
    }

    @Test
    void withoutAnEventItRunsToItsEnd() {
        EventIntegrator.Stop stop = integrator(1e-9).run(FALL, 0, new double[2], 0.3, List.of(), new Taken(1));
        assertThat(stop).isEqualTo(new EventIntegrator.Stop(0.3, -1));
    }

    @Test
    void aTighterToleranceIsNearerToTheTruth() {
        double coarse = error(1e-3);
        double fine = error(1e-6);
        assertThat(fine).isLessThan(coarse / 10);
    }

    private static double error(double tolerance) {
        double[] y = {1, 0};
        EventIntegrator.Equation spring = (t, s, rate) -> {
            rate[0] = s[1];
            rate[1] = -s[0];
        };
        integrator(tolerance).run(spring, 0, y, 40 * Math.PI, List.of(), new Taken(1e3));
        return Math.hypot(y[0] - 1, y[1]);
    }

    private static EventIntegrator integrator(double tolerance) {
        return new EventIntegrator(10, new double[] {tolerance, tolerance}, tolerance, 0.05);
    }

    private static final class Taken implements EventIntegrator.Sampler {
        private final double step;
        private final List<Double> times = new ArrayList<>();
        private final List<double[]> states = new ArrayList<>();

        Taken(double step) {
            this.step = step;
        }

        @Override
        public double next() {
            return times.size() * step;
        }

        @Override
        public void take(double t, double[] y) {
            times.add(t);
            states.add(y.clone());
        }
    }
}
