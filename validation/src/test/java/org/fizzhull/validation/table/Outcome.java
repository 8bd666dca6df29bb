package org.fizzhull.validation.table;

import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * A row beside what the library and, for a live row, the other program compute.
 *
 * @param check the row
 * @param expected its value, in its unit
 * @param ours the value of the library, in its unit
 */
public record Outcome(Check check, double expected, double ours) {

    /** Runs the computations of a row. An input that no computation asks for is refused. */
    public static Outcome of(Check check, Bindings bindings) {
        double ours = run(check, bindings.ours());
        double expected = check.isLive() ? run(check, bindings.others()) : check.expected();
        Set<String> unread = check.inputs().unread();
        if (!unread.isEmpty()) {
            throw new IllegalStateException(check.id() + ": inputs nobody reads: " + unread);
        }
        return new Outcome(check, expected, ours);
    }

    double deviation() {
        return ours - expected;
    }

    /** What is wrong, or an empty text. A NaN anywhere is wrong. */
    public String problem() {
        if (Double.isNaN(ours) || Double.isNaN(expected)) {
            return "not a number: expected " + expected + ", ours " + ours;
        }
        boolean agrees = Math.abs(deviation()) <= check.tolerance();
        if (!check.isDisagreement()) {
            return agrees
                    ? ""
                    : "expected " + expected + " +- " + check.tolerance() + " " + check.unit() + ", ours " + ours;
        }
        if (agrees) {
            return "is marked as a disagreement but agrees: expected " + expected + ", ours " + ours;
        }
        boolean asDocumented = Math.abs(ours - check.disagrees()) <= check.tolerance();
        return asDocumented ? "" : "disagrees otherwise than documented: " + check.disagrees() + ", now " + ours;
    }

    private static double run(Check check, Map<String, ToDoubleFunction<Inputs>> computations) {
        ToDoubleFunction<Inputs> computation = computations.get(check.binding());
        if (computation == null) {
            throw new IllegalStateException(check.id() + ": nothing computes it");
        }
        return computation.applyAsDouble(check.inputs());
    }
}
