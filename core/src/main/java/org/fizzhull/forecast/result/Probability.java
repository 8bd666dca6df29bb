package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.quantity.SerialForm;

/**
 * What becomes of a piece, as probabilities. Floats at once, rises later and stays down sum to 1; what is not computed
 * is empty. Each stands for a piece taken at random: what is not known of the whole batch is in it too
 * ({@link BatchShare} keeps the two apart).
 *
 * @param floatsToTheEnd it floats at once and stays up until a tenth of its dissolving mass is left, toppings and
 *     crystals not counted; never above floatsAtOnce
 * @param floatsAtOnce it is at the surface 20 s after it was let go
 * @param error one standard error of floatsAtOnce, from the draws
 * @param risesLater it comes up after that with at least 10 % of its mass left
 * @param staysDown neither
 * @param sinksLater part of floatsAtOnce that goes under again before 1 % of it is left
 */
public record Probability(
        double floatsToTheEnd,
        double floatsAtOnce,
        double error,
        OptionalDouble risesLater,
        OptionalDouble staysDown,
        OptionalDouble sinksLater)
        implements Serializable {

    /**
     * Refuses what is no probability, NaN included.
     *
     * @param floatsToTheEnd it floats at once and stays up until a tenth of its dissolving mass is left, toppings and
     *     crystals not counted; never above floatsAtOnce
     * @param floatsAtOnce it is at the surface 20 s after it was let go
     * @param error one standard error of floatsAtOnce, from the draws
     * @param risesLater it comes up after that with at least 10 % of its mass left
     * @param staysDown neither
     * @param sinksLater part of floatsAtOnce that goes under again before 1 % of it is left
     */
    public Probability {
        check("floats to the end", floatsToTheEnd);
        check("floats at once", floatsAtOnce);
        check("rises later", risesLater.orElse(0));
        check("stays down", staysDown.orElse(0));
        check("sinks later", sinksLater.orElse(0));
        if (!(error >= 0)) {
            throw new IllegalArgumentException("a standard error is 0 or more, not " + error);
        }
        if (floatsToTheEnd > floatsAtOnce) {
            throw new IllegalArgumentException(
                    "floats to the end, " + floatsToTheEnd + ", is a part of floats at once, " + floatsAtOnce);
        }
    }

    private static void check(String what, double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException(what + ": a probability lies between 0 and 1, not " + probability);
        }
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
