package org.fizzhull.forecast.conditioning;

import java.util.SplittableRandom;
import org.fizzhull.forecast.question.Factors;

/** Values of all uncertain inputs, for tests of what is solved in a draw. */
final class SomeInputs {
    private SomeInputs() {}

    /** One value of each input, SI, between its 10 and 90 % points. */
    static double[] of(Factors factors, SplittableRandom random) {
        return factors.priors().stream()
                .mapToDouble(prior -> prior.quantile(random.nextDouble(0.1, 0.9)))
                .toArray();
    }
}
