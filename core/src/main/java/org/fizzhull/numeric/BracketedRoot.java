package org.fizzhull.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Root of a continuous function between two ends of opposite sign, by the bracketed method of Brent (1973): inverse
 * quadratic interpolation, secant or bisection, whichever keeps the bracket shrinking. A thin layer over the general
 * library's solver.
 * <pre>{@code
 * double root = BracketedRoot.find(x -> x * x - 2, 0, 2, 1e-12);   // 1.41421356237
 * }</pre>
 *
 * <p>Stateless. Used by {@code forecast}.
 */
public final class BracketedRoot {
    /** Evaluations after which the search is given up; Brent's method takes some tens. */
    private static final int MOST_EVALUATIONS = 200;

    private BracketedRoot() {}

    /**
     * {@return the root}
     *
     * @param function continuous between the ends
     * @param low one end, where the function has one sign or is 0
     * @param high the other end, where it has the other sign or is 0
     * @param accuracy absolute, in the unit of the argument
     * @throws IllegalArgumentException where both ends have the same sign
     * @throws IllegalStateException where 200 evaluations do not find it
     */
    public static double find(DoubleUnaryOperator function, double low, double high, double accuracy) {
        // a class of its own: for an interface as old as this one a lambda is linked anew in every process
        return new BrentSolver(accuracy).solve(MOST_EVALUATIONS, new Adapted(function), low, high);
    }

    /** The function as the solver takes it. */
    private record Adapted(DoubleUnaryOperator function) implements UnivariateFunction {
        @Override
        public double value(double x) {
            return function.applyAsDouble(x);
        }
    }
}
