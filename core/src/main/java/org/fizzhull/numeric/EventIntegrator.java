package org.fizzhull.numeric;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/**
 * Integrates an ordinary differential equation dy/dt = f(t, y) until an end or until the first of some events, by the
 * 5(4) method of Dormand and Prince with step control and dense output: between events that follow each other within a
 * few steps it asks for half of what their 8(5,3) does. A thin layer over the general library's integrator.
 * <pre>{@code
 * EventIntegrator fall = new EventIntegrator(0.1, new double[] {1e-9, 1e-9}, 1e-9, 0.01);
 * double[] y = {1, 0};   // height, m, and speed, m/s
 * EventIntegrator.Stop end = fall.run(
 *         (t, s, rate) -> { rate[0] = s[1]; rate[1] = -9.80665; }, 0, y, 10, List.of((t, s) -> -s[0]), noSamples);
 * double time = end.time();   // sqrt(2/g): the ground
 * }</pre>
 *
 * <p>Range: equations that are smooth between events and not stiff. Error: the tolerances, for each step; events to
 * 1e-11 of the unit of time. An event function that rises through 0 and falls again between two evaluations is missed.
 * Used by {@code voyage}. One instance serves one thread.
 */
public final class EventIntegrator {
    /** Shortest step, in the unit of time; a run shorter than four of them may take a quarter of itself. */
    private static final double SHORTEST_STEP = 1e-10;

    /** Accuracy of the time of an event. A step shorter than this passes over an event: it lies below the shortest. */
    private static final double EVENT_ACCURACY = 1e-11;

    /** Iterations for the time of one event. */
    private static final int MOST_HALVINGS = 100;

    /** Evaluations of the right-hand side after which a run ends with an exception. */
    private static final int MOST_EVALUATIONS = 1_000_000;

    /** Longest step, in the unit of time. */
    private final double longestStep;
    /** Absolute tolerance of each part of the state, in its unit. */
    private final double[] absolute;
    /** Relative tolerance. */
    private final double relative;
    /** Longest time between two evaluations of the events. */
    private final double eventCheck;

    /** The right-hand side. */
    public interface Equation {
        /**
         * Writes dy/dt at t. Must not keep or change y.
         *
         * @param t time, in the unit of the equation
         * @param y state; must be neither kept nor changed
         * @param dydt where the rates are written, as many as states
         */
        void rate(double t, double[] y, double[] dydt);
    }

    /** Something that stops the integration. */
    public interface Event {
        /**
         * {@return a continuous function of the state; the event is where it rises through 0}
         *
         * @param t time
         * @param y state; must be neither kept nor changed
         */
        double at(double t, double[] y);
    }

    /** Takes the solution at chosen times. */
    public interface Sampler {
        /** {@return the next time at which the solution is to be taken; times up to now are taken now} */
        double next();

        /**
         * The solution at that time; the array may be reused: copy it to keep it.
         *
         * @param t time
         * @param y state at that time; must not be kept
         */
        void take(double t, double[] y);
    }

    /**
     * How a run ended.
     *
     * @param time of the end
     * @param event number of the event that stopped it, or -1 at the end time
     */
    public record Stop(double time, int event) {}

    /**
     * An integrator with these steps and tolerances.
     *
     * @param longestStep longest step, in the unit of time, above 0
     * @param absolute absolute tolerance of each part of the state, in its unit, above 0
     * @param relative relative tolerance of every part, above 0
     * @param eventCheck longest time between two evaluations of the events, above 0
     * @throws IllegalArgumentException where any of them is not above 0
     */
    public EventIntegrator(double longestStep, double[] absolute, double relative, double eventCheck) {
        boolean positive = longestStep > 0 && relative > 0 && eventCheck > 0;
        for (double tolerance : absolute) {
            positive &= tolerance > 0;
        }
        if (!positive) {
            throw new IllegalArgumentException(
                    "steps and tolerances are positive: longest step " + longestStep + ", absolute "
                            + Arrays.toString(absolute) + ", relative " + relative + ", event check " + eventCheck);
        }
        this.longestStep = longestStep;
        this.absolute = absolute.clone();
        this.relative = relative;
        this.eventCheck = eventCheck;
    }

    /**
     * Runs from t0 with the state y, which holds the final state on return, to t1 or the first event.
     *
     * @param equation right-hand side
     * @param t0 start
     * @param y state at the start; holds the final state on return
     * @param t1 end, after the start
     * @param events functions of the state that end the run where they rise through 0
     * @param sampler receives the solution at the times given by its {@link Sampler#next}
     * @return when the run ended, and by which event, if by one
     * @throws IllegalStateException where a million evaluations do not reach the end
     * @throws IllegalArgumentException where the tolerances ask for a step below the shortest
     */
    public Stop run(Equation equation, double t0, double[] y, double t1, List<Event> events, Sampler sampler) {
        double shortest = Math.min(SHORTEST_STEP, (t1 - t0) / 4);
        double[] relatives = new double[absolute.length];
        Arrays.fill(relatives, relative);
        DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(shortest, longestStep, absolute, relatives);
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        int[] stopped = {-1};
        for (int i = 0; i < events.size(); i++) {
            integrator.addEventHandler(
                    new Rising(events.get(i), i, stopped), eventCheck, EVENT_ACCURACY, MOST_HALVINGS);
        }
        integrator.addStepHandler(new Samples(sampler));
        double end = integrator.integrate(new Adapted(equation, y.length), t0, y, t1, y);
        return new Stop(end, stopped[0]);
    }

    /** The equation in the form of the general library. */
    private record Adapted(Equation equation, int dimension) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return dimension;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] dydt) {
            equation.rate(t, y, dydt);
        }
    }

    /** An event in the form of the general library: only a rise through 0 stops the run. */
    private record Rising(Event event, int number, int[] stopped) implements EventHandler {
        @Override
        public void init(double t0, double[] y0, double t) {}

        /** At exactly 0 it has not risen yet: the library would look for the sign just after, and miss the event. */
        @Override
        public double g(double t, double[] y) {
            double value = event.at(t, y);
            return value == 0 ? -Double.MIN_NORMAL : value;
        }

        @Override
        public Action eventOccurred(double t, double[] y, boolean increasing) {
            if (increasing) {
                stopped[0] = number;
                return Action.STOP;
            }
            return Action.CONTINUE;
        }

        @Override
        public void resetState(double t, double[] y) {}
    }

    /** Passes the solution inside a step to the sampler, by dense output. */
    private record Samples(Sampler sampler) implements StepHandler {
        @Override
        public void init(double t0, double[] y0, double t) {}

        @Override
        public void handleStep(StepInterpolator interpolator, boolean isLast) {
            double from = interpolator.getPreviousTime();
            double to = interpolator.getCurrentTime();
            for (double t = sampler.next(); t <= to; t = sampler.next()) {
                interpolator.setInterpolatedTime(Math.max(t, from));
                sampler.take(Math.max(t, from), interpolator.getInterpolatedState());
            }
        }
    }
}
