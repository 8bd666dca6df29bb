package org.fizzhull.validation.table;

import org.fizzhull.evidence.Source.Seen;

/**
 * One row of a table of checks.
 *
 * @param table package the row belongs to, the name of its file
 * @param id unique in all tables; what stands before the slash names the binding: {@code kell/38C}
 * @param what what is compared, for people
 * @param inputs what the computation is given, {@code name=value} parts joined by semicolons
 * @param expected the value, NaN where a program computes it while the test runs ({@code live} in the file)
 * @param unit unit of expected, tolerance and of what the binding returns
 * @param tolerance largest difference allowed, absolute
 * @param whyTolerance reason of that tolerance
 * @param origin who says so
 * @param sourceKey key in sources.csv
 * @param seen how the value was met
 * @param disagrees what the library gives where it is known to disagree, NaN where it agrees
 * @param whyDisagrees reason of the disagreement, empty where it agrees
 */
public record Check(
        String table,
        String id,
        String what,
        Inputs inputs,
        double expected,
        String unit,
        double tolerance,
        String whyTolerance,
        Origin origin,
        String sourceKey,
        Seen seen,
        double disagrees,
        String whyDisagrees) {

    /** What names the binding. */
    String binding() {
        int slash = id.indexOf('/');
        return slash < 0 ? id : id.substring(0, slash);
    }

    boolean isLive() {
        return Double.isNaN(expected);
    }

    public boolean isDisagreement() {
        return !whyDisagrees.isEmpty();
    }
}
